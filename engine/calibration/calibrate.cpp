// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibrate.h"

#include "engine/calibration/calibration_steps.h"
#include "engine/calibration/circuit.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace undermark {

namespace {

using namespace calibration;

// Hysteresis assumed of a curve that was only poured up, as a share of the
// calibrated litres. Common practice, no source.
constexpr double kUnknownHysteresis = 0.01;
constexpr std::size_t kMostLeftOut = 400;

std::optional<LevelCurve> curveThrough(std::span<const Step> steps, double resolution)
{
    if (steps.size() < 2)
        return std::nullopt;
    const Shape shape = shapeOf(steps, resolution);
    if (isStill(steps, shape, resolution))
        return std::nullopt;
    const auto curve = LevelCurve::fromKnots(knotsOf(steps, shape));
    return curve ? std::optional(*curve) : std::nullopt;
}

// RMS litres by which inner steps miss the curve drawn without them. Steps that
// the others' curve cannot see (on a stop) do not count.
std::optional<Volume> leaveOneOut(const std::vector<Step>& steps, double resolution)
{
    double square = 0.0;
    int count = 0;
    const std::size_t stride = 1 + steps.size() / kMostLeftOut;
    for (std::size_t i = 1; i + 1 < steps.size(); i += stride) {
        std::vector<Step> others = steps;
        others.erase(others.begin() + std::ptrdiff_t(i));
        const auto curve = curveThrough(others, resolution);
        if (!curve)
            continue;
        const LevelReading read = curve->read(Signal::of(steps[i].signal));
        if (read.bound != LevelBound::exact)
            continue;
        const double miss = read.added.mean.litres() - steps[i].litres;
        square += miss * miss;
        ++count;
    }
    if (count == 0)
        return std::nullopt;
    return Volume::fromLitres(std::sqrt(square / count));
}

// Litres by which the curve poured up reads above the truth on the way down: mean
// and sd over the steps of the falling branch that it sees.
std::optional<Estimate<Volume>> hysteresisOf(const Branches& branches, double resolution)
{
    const auto up = curveThrough(branches.up, resolution);
    if (!up)
        return std::nullopt;
    std::vector<double> gaps;
    for (const Step& step : branches.down) {
        const LevelReading read = up->read(Signal::of(step.signal));
        const bool isTurn = std::ranges::find(branches.up, step.litres, &Step::litres)
                != branches.up.end() && step.litres == branches.up.back().litres;
        if (read.bound == LevelBound::exact && !isTurn)
            gaps.push_back(read.added.mean.litres() - step.litres);
    }
    if (gaps.empty())
        return std::nullopt;
    double mean = 0.0, square = 0.0;
    for (const double gap : gaps)
        mean += gap / double(gaps.size());
    for (const double gap : gaps)
        square += (gap - mean) * (gap - mean) / double(gaps.size());
    return Estimate<Volume>{Volume::fromLitres(mean), Volume::fromLitres(std::sqrt(square))};
}

double spanOf(std::span<const Step> steps)
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

// Gives each knot its spread, and the fit the largest of each part.
LevelCurve withSpread(const LevelCurve& curve, const std::vector<Step>& steps, const Shape& shape,
                      double resolution, CurveUncertainty& uncertainty)
{
    std::vector<CurveKnot> knots(curve.knots().begin(), curve.knots().end());
    const double residual = uncertainty.residual.value_or(Volume()).litres();
    const auto keepLargest = [](Volume& part, double litres) {
        part = std::max(part, Volume::fromLitres(litres));
    };
    for (std::size_t i = 0; i < knots.size(); ++i) {
        const Flat& flat = shape.flats[i];
        const double slope = curve.litresPerSignal(knots[i].signal);
        double weight = 0.0, errors = 0.0;
        for (std::size_t k = flat.first; k <= flat.last; ++k) {
            weight += steps[k].weight;
            errors += std::pow(steps[k].weight * steps[k].standardError, 2);
        }
        const double pour = std::sqrt(steps[flat.last].pourVariance);
        const double coarse = resolution * slope / std::sqrt(12.0);
        const double reading = std::sqrt(errors) / weight * slope;
        const bool isEnd = i == 0 || i + 1 == knots.size();
        const double pooled = isEnd ? 0.0 : flat.width / std::sqrt(12.0);
        keepLargest(uncertainty.pour, pour);
        keepLargest(uncertainty.resolution, coarse);
        keepLargest(uncertainty.readings, reading);
        knots[i].sd = Volume::fromLitres(std::sqrt(pour * pour + coarse * coarse + reading * reading
                                                   + pooled * pooled + residual * residual));
    }
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
    const std::vector<Step>& steps = fit.drainedDown ? branches.down : branches.up;
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
    fit.residualSd = leaveOneOut(steps, resolution);
    fit.uncertainty.residual = fit.residualSd;
    fit.curve = withSpread(*curve, steps, shape, resolution, fit.uncertainty);
    if (branches.down.size() > 1 && branches.up.size() > 1)
        evidence.hysteresis = hysteresisOf(branches, resolution);
    if (!fit.drainedDown)
        fit.readsHighBy = evidence.hysteresis ? std::max(Volume(), evidence.hysteresis->mean)
            : Volume::fromLitres(kUnknownHysteresis * evidence.litresSpan);
    std::ranges::move(curveFindings(evidence, fit), std::back_inserter(fit.findings));
    sortBySeverity(fit.findings);
    return fit;
}

} // namespace undermark
