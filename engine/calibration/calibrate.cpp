// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibrate.h"

#include "engine/calibration/calibration_steps.h"
#include "engine/calibration/circuit.h"
#include "engine/calibration/curve_prior.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace undermark {

namespace {

using namespace calibration;

// Hysteresis assumed of a curve that was only poured up, as a share of the
// calibrated litres: play of the float's arm. Common practice, no source.
constexpr double kUnknownHysteresis = 0.01;
constexpr double kUnknownHysteresisSd = 0.009;
constexpr double kLeastGapSd = 0.001;   // of one comparison of the two ways
constexpr std::size_t kMostLeftOut = 400;

std::optional<LevelCurve> curveThrough(std::span<const LevelStep> steps, double resolution)
{
    if (steps.size() < 2)
        return std::nullopt;
    const Shape shape = shapeOf(steps, resolution);
    if (isStill(steps, shape, resolution))
        return std::nullopt;
    const auto curve = LevelCurve::fromKnots(knotsOf(steps, shape));
    return curve ? std::optional(*curve) : std::nullopt;
}

// What step `i` of a curve through the others may miss it by.
double expectedMiss(const std::vector<LevelStep>& steps, std::size_t i, const LevelCurve& others,
                    double resolution)
{
    const double gap = steps[i + 1].litres - steps[i - 1].litres;
    const double below = steps[i].litres - steps[i - 1].litres;
    const double span = steps.back().litres - steps.front().litres;
    const double slope = others.litresPerSignal(Signal::of(steps[i].signal));
    const double pour = CalibrationOptions{}.pourSd.ratio() * gap;
    const double reading = slope * std::hypot(resolution / std::sqrt(12.0), steps[i].standardError);
    return std::sqrt(std::pow(shapeSd(gap, span) * shapeProfile(below / gap), 2) + pour * pour
                     + reading * reading);
}

// Each inner step against the curve drawn without it. Steps that the others' curve
// cannot see (on a stop) do not count.
std::vector<Miss> leaveOneOut(const std::vector<LevelStep>& steps, double resolution)
{
    std::vector<Miss> misses;
    const std::size_t stride = 1 + steps.size() / kMostLeftOut;
    for (std::size_t i = 1; i + 1 < steps.size(); i += stride) {
        std::vector<LevelStep> others = steps;
        others.erase(others.begin() + std::ptrdiff_t(i));
        const auto curve = curveThrough(others, resolution);
        if (!curve)
            continue;
        const LevelReading read = curve->read(Signal::of(steps[i].signal));
        if (read.bound == LevelBound::exact)
            misses.push_back({read.added.mean.litres() - steps[i].litres,
                              expectedMiss(steps, i, *curve, resolution)});
    }
    return misses;
}

std::optional<Volume> rootMeanSquare(std::span<const Miss> misses)
{
    double square = 0.0;
    for (const Miss& miss : misses)
        square += miss.litres * miss.litres;
    return misses.empty() ? std::nullopt
                          : std::optional(Volume::fromLitres(std::sqrt(square / double(misses.size()))));
}

// Litres by which a curve poured up reads above the truth on the way down: what is assumed
// of a float's play, weighed against the steps of the falling branch that the curve sees,
// each as sure as the curve is there. Nothing where there are none.
std::optional<Estimate<Volume>> hysteresisOf(const Branches& branches, const LevelCurve& up)
{
    const double span = (up.highest().added - up.lowest().added).litres();
    double weight = 1.0 / std::pow(kUnknownHysteresisSd * span, 2);
    double sum = weight * kUnknownHysteresis * span;
    bool seen = false;
    for (const LevelStep& step : branches.down) {
        const LevelReading read = up.read(Signal::of(step.signal));
        const bool isTurn = step.litres == branches.up.back().litres;
        if (read.bound != LevelBound::exact || isTurn)
            continue;
        seen = true;
        const double sd = std::max(kLeastGapSd * span, read.added.sd.litres());
        sum += (read.added.mean.litres() - step.litres) / (sd * sd);
        weight += 1.0 / (sd * sd);
    }
    if (!seen)
        return std::nullopt;
    return Estimate<Volume>{Volume::fromLitres(sum / weight), Volume::fromLitres(1.0 / std::sqrt(weight))};
}

double spanOf(std::span<const LevelStep> steps)
{
    return steps.empty() ? 0.0 : steps.back().litres - steps.front().litres;
}

// Driving goes down, so the falling branch is the curve where it is good enough:
// three steps over most of the range, or whatever there is without a rising one.
bool usesFallingBranch(const Branches& branches)
{
    const std::size_t wanted = std::min<std::size_t>(3, branches.up.size());
    return branches.up.size() < 2
        || (branches.down.size() >= std::max<std::size_t>(2, wanted)
            && spanOf(branches.down) >= 0.8 * spanOf(branches.up));
}

// Sd of one knot's litres: the pours up to it, the display's step, its readings, and,
// inside the curve, where in a flat piece the level is.
double knotSd(const CurveKnot& knot, const Flat& flat, const std::vector<LevelStep>& steps, bool isEnd,
              double resolution, double slope, CurveUncertainty& uncertainty)
{
    const auto keepLargest = [](Volume& part, double litres) {
        part = std::max(part, Volume::fromLitres(litres));
        return litres;
    };
    double weight = 0.0, errors = 0.0;
    for (std::size_t k = flat.first; k <= flat.last; ++k) {
        weight += steps[k].weight;
        errors += std::pow(steps[k].weight * steps[k].standardError, 2);
    }
    const double pour = keepLargest(uncertainty.pour, std::sqrt(steps[flat.last].pourVariance));
    const double coarse = keepLargest(uncertainty.resolution, resolution * slope / std::sqrt(12.0));
    const double reading = keepLargest(uncertainty.readings, std::sqrt(errors) / weight * slope);
    const double pooled = isEnd ? 0.0 : knot.width.litres() / std::sqrt(12.0);
    return std::sqrt(pour * pour + coarse * coarse + reading * reading + pooled * pooled);
}

// Gives each knot its spread, each gap its shape's, and the fit the largest of each part.
LevelCurve withSpread(const LevelCurve& curve, const std::vector<LevelStep>& steps, const Shape& shape,
                      double resolution, double bends, CurveUncertainty& uncertainty)
{
    std::vector<CurveKnot> knots(curve.knots().begin(), curve.knots().end());
    for (std::size_t i = 0; i < knots.size(); ++i) {
        const bool isEnd = i == 0 || i + 1 == knots.size();
        knots[i].sd = Volume::fromLitres(knotSd(knots[i], shape.flats[i], steps, isEnd, resolution,
                                                curve.litresPerSignal(knots[i].signal), uncertainty));
    }
    uncertainty.unseenStop = Volume::fromLitres(addPrior(knots, bends));
    uncertainty.shape = std::ranges::max_element(knots, {}, &CurveKnot::between)->between;
    return *LevelCurve::fromKnots(std::move(knots));
}

Result<void> check(std::span<const CalibrationPoint> points)
{
    for (const CalibrationPoint& point : points) {
        if (!isFinite(point.added) || point.added < Volume() || point.readings < 1)
            return failInput(Sentence::of(
                "calibration points need litres of 0 or more and one reading or more"));
        if (point.signalSd && !(isFinite(*point.signalSd) && *point.signalSd >= Signal()))
            return failInput(Sentence::of("the sd of a calibration reading must be 0 or more"));
    }
    const auto differs = [&points](const CalibrationPoint& p) { return p.added != points[0].added; };
    if (points.size() < 2 || std::ranges::none_of(points, differs))
        return failInput(
            Sentence::of("a calibration needs readings at two or more amounts of litres"));
    return {};
}

void sortBySeverity(std::vector<Finding>& findings)
{
    std::ranges::stable_sort(findings, std::greater(), &Finding::severity);
}

} // namespace

Estimate<Volume> assumedHysteresis(Volume span)
{
    return {kUnknownHysteresis * span, kUnknownHysteresisSd * span};
}

Result<CalibrationFit> fitCalibration(std::span<const CalibrationPoint> points,
                                      const Sender& sender, const CalibrationOptions& options)
{
    if (const auto sound = check(points); !sound)
        return fail(sound.error());
    CalibrationFit fit;
    fit.findings = circuitFindings(points, sender);
    std::vector<CalibrationPoint> usable;
    std::ranges::copy_if(points, std::back_inserter(usable), [&sender](const CalibrationPoint& p) {
        return !circuitFault(p.signal, sender);
    });
    const double resolution = resolutionOf(usable, sender);
    const Branches branches = usable.size() < 2 ? Branches{}
        : splitBranches(usable, resolution, options.pourSd);
    fit.drainedDown = usesFallingBranch(branches);
    const std::vector<LevelStep>& steps = fit.drainedDown ? branches.down : branches.up;
    if (steps.size() < 2)
        return fit;   // the circuit's findings say why
    const Shape shape = shapeOf(steps, resolution);
    Evidence evidence{points, sender,     options.loaded, branches, steps,
                      shape,  resolution, spanOf(steps),  {}};
    if (isStill(steps, shape, resolution)) {
        fit.findings.push_back(noMovementFinding(evidence));
        return fit;
    }
    const auto curve = LevelCurve::fromKnots(knotsOf(steps, shape));
    assert(curve);
    fit.direction = shape.rising ? SignalDirection::rising : SignalDirection::falling;
    const std::vector<Miss> misses = leaveOneOut(steps, resolution);
    fit.residualSd = fit.uncertainty.residual = rootMeanSquare(misses);
    fit.curve = withSpread(*curve, steps, shape, resolution, shapeScale(misses), fit.uncertainty);
    if (branches.down.size() > 1 && branches.up.size() > 1)
        if (const auto up = fit.drainedDown ? curveThrough(branches.up, resolution) : fit.curve)
            evidence.hysteresis = hysteresisOf(branches, *up);
    if (!fit.drainedDown)
        fit.readsHigh = evidence.hysteresis
            ? Estimate<Volume>{std::max(Volume(), evidence.hysteresis->mean), evidence.hysteresis->sd}
            : assumedHysteresis(Volume::fromLitres(evidence.litresSpan));
    std::ranges::move(curveFindings(evidence, fit), std::back_inserter(fit.findings));
    sortBySeverity(fit.findings);
    return fit;
}

} // namespace undermark
