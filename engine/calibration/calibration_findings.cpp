// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibration_steps.h"
#include "engine/calibration/circuit.h"

#include <algorithm>
#include <cmath>

namespace undermark::calibration {

namespace {

// Common practice, no source: what is worth telling somebody with a fuel can.
constexpr double kSmallSweep = 0.25;        // of what the circuit can give
constexpr double kCoarseShare = 0.01;       // of the calibrated litres, per display step
constexpr double kNoticedShare = 0.01;      // of the calibrated litres: a gap worth a warning

Part litres(double value)
{
    return amount(Volume::fromLitres(value), Digits::significant(3));
}

Part reading(double value, const Sender& sender)
{
    return amount(value, Digits::significant(6), sender.unit);
}

Part listOf(const std::vector<double>& values)
{
    constexpr std::size_t kMost = 5;
    std::vector<Sentence> list;
    for (std::size_t i = 0; i < values.size() && i < kMost; ++i)
        list.push_back(Sentence::just(litres(values[i])));
    if (values.size() <= kMost)
        return list;
    return std::vector{Sentence::of("%1 and %2 more", list, counted(values.size() - kMost))};
}

void add(std::vector<Finding>& findings, const char* code, Severity severity, Sentence text)
{
    findings.push_back({code, severity, std::move(text)});
}

// Litres over which the signal stood still, where it should have moved by several
// steps of the display; 0 where it is only noise or a coarse display.
double stillLitres(const Evidence& e, const Flat& flat)
{
    const double expected = flat.width * e.shape.sweep / e.litresSpan;
    return !flat.moved && expected > 3.0 * e.resolution ? flat.width : 0.0;
}

void findStopsAndJams(const Evidence& e, std::vector<Finding>& findings)
{
    const auto& flats = e.shape.flats;
    for (std::size_t i = 0; i < flats.size(); ++i) {
        const double still = stillLitres(e, flats[i]);
        if (still <= 0.0)
            continue;
        const double low = e.steps[flats[i].first].litres, high = e.steps[flats[i].last].litres;
        if (i == 0)
            add(findings, "stop-at-bottom", Severity::warning,
                Sentence::of(
                    "The float rests on its lower stop up to %1: at %2 the gauge cannot see "
                    "the last %3. Lower the float arm, or count this fuel by consumption "
                    "only.",
                    litres(high), reading(flats[i].signal, e.sender), litres(still)));
        else if (i + 1 == flats.size())
            add(findings, "stop-at-top", Severity::warning,
                Sentence::of(
                    "The float reaches its upper stop at %1: the gauge cannot see the %2 "
                    "above. It will stand still for that long after a fill; raise the arm's "
                    "stop if that matters.",
                    litres(low), litres(still)));
        else
            add(findings, "flat-piece", Severity::warning,
                Sentence::of(
                    "The signal stood at %1 from %2 to %3, in the middle of its travel. The "
                    "float may jam or touch something there: move it by hand and look for "
                    "what it meets.",
                    reading(flats[i].signal, e.sender), litres(low), litres(high)));
    }
}

void findDisorder(const Evidence& e, std::vector<Finding>& findings)
{
    std::vector<double> where;
    for (const Flat& flat : e.shape.flats)
        if (flat.moved)
            where.push_back(e.steps[flat.first].litres);
    if (!where.empty())
        add(findings, "not-monotone", Severity::warning,
            Sentence::of(
                "The signal turned back while the level went on one way, at and above %1. "
                "The float may be fouling the tank or a baffle, or a row was noted wrongly: "
                "repeat these readings.",
                listOf(where)));
}

void findRepeats(const Evidence& e, const CalibrationFit& fit, std::vector<Finding>& findings)
{
    std::vector<double> where;
    double worst = 0.0;
    for (const auto* branch : {&e.branches.up, &e.branches.down}) {
        for (const LevelStep& step : *branch) {
            const double gap = step.highest - step.lowest;
            const double gapLitres = gap * fit.curve->litresPerSignal(Signal::of(step.signal));
            if (step.rows < 2 || gap <= 2.0 * e.resolution * (1.0 + 1e-6)
                || gapLitres <= kNoticedShare * e.litresSpan)
                continue;
            if (std::ranges::find(where, step.litres) == where.end())
                where.push_back(step.litres);
            worst = std::max(worst, gapLitres);
        }
    }
    if (!where.empty())
        add(findings, "repeat-disagrees", Severity::warning,
            Sentence::of("Repeated readings differ, at %1, by as much as %2. Let the fuel come to "
                         "rest before reading; if they still differ, look for a loose contact or a "
                         "sticking float.",
                         listOf(where), litres(worst)));
}

void findSweep(const Evidence& e, std::vector<Finding>& findings)
{
    double available = 0.0;
    if (const auto span = possibleSpan(e.sender))
        available = (span->highest - span->lowest).value();
    else   // every sender in common use changes its resistance several-fold
        for (const LevelStep& step : e.steps)
            available = std::max(available, std::abs(step.signal));
    if (e.shape.sweep < kSmallSweep * available)
        add(findings, "sweep-too-small", Severity::warning,
            Sentence::of(
                "The signal moves by %1 of about %2 that it could. The float arm may be too "
                "short, bent or wrongly placed to reach both ends: check that it does.",
                reading(e.shape.sweep, e.sender), reading(available, e.sender)));
}

void findResolution(const Evidence& e, std::vector<Finding>& findings)
{
    const double perStep = e.resolution * e.litresSpan / e.shape.sweep;
    if (perStep > kCoarseShare * e.litresSpan)
        add(findings, "resolution-too-coarse", Severity::warning,
            Sentence::of(
                "One step of the reading (%1) is %2. Read and note one more decimal, or use "
                "a finer meter.",
                reading(e.resolution, e.sender), litres(perStep)));
}

void findHysteresis(const Evidence& e, const CalibrationFit& fit, std::vector<Finding>& findings)
{
    if (e.hysteresis) {
        const double gap = e.hysteresis->mean.litres();
        const bool noticed = std::abs(gap) > kNoticedShare * e.litresSpan;
        Sentence text =
            gap >= 0.0
                ? Sentence::of("On the way down the signal stands for %1 less than on the way up.",
                               litres(gap))
                : Sentence::of("On the way down the signal stands for %1 more than on the way up.",
                               litres(-gap));
        text +=
            fit.drainedDown
                ? Sentence::of("Driving goes down: the curve is the falling one.")
                : Sentence::of(
                      "The falling readings cover too little for a curve of their own; the "
                      "difference is carried as a bias. Drain down in steps over the whole range "
                      "to settle it.");
        if (noticed)
            text += Sentence::of("Check the float's pivot for stiffness.");
        add(findings, "hysteresis", noticed ? Severity::warning : Severity::info, std::move(text));
    } else if (!fit.drainedDown) {
        add(findings, "hysteresis-unknown", Severity::info,
            Sentence::of(
                "The readings only go up, and driving goes down: the level may be lower than "
                "read by an assumed %1. Note some readings while draining to measure it.",
                litres(fit.readsHigh.mean.litres())));
    }
}

void findLoadOffset(const Evidence& e, const CalibrationFit& fit, std::vector<Finding>& findings)
{
    double worst = 0.0, signal = 0.0;
    for (const CalibrationPoint& point : e.loaded) {
        const auto rest = std::ranges::find(e.steps, point.added.litres(), &LevelStep::litres);
        if (rest == e.steps.end())
            continue;   // only a reading at the same litres tells load from interpolation
        const double gap = point.signal.value() - rest->signal;
        const double gapLitres = std::abs(gap) * fit.curve->litresPerSignal(Signal::of(rest->signal));
        if (std::abs(gap) > 2.0 * e.resolution * (1.0 + 1e-6) && gapLitres > worst) {
            worst = gapLitres;
            signal = gap;
        }
    }
    if (worst > kNoticedShare * e.litresSpan)
        add(findings, "load-offset", Severity::warning,
            Sentence::of(
                "With electrical load on the reading moves by %1, which is %2. The sender's "
                "ground shares a wire with the load: give it its own, and clean the ground "
                "point.",
                reading(signal, e.sender), litres(worst)));
}

} // namespace

std::vector<Finding> circuitFindings(std::span<const CalibrationPoint> points, const Sender& sender)
{
    struct Kind {
        CircuitFault fault;
        const char* code;
        Sentence what;
    };
    static const Kind kKinds[] = {
        {CircuitFault::open, "open-circuit",
         Sentence::of(
             "An open circuit reads like this: look for a connector or wire that is off.")},
        {CircuitFault::shorted, "short-circuit",
         Sentence::of("A short reads like this: look for the signal wire touching ground.")},
        {CircuitFault::impossible, "impossible-reading",
         Sentence::of("This circuit cannot give it: check the unit, the supply and the wiring.")}};
    std::vector<Finding> findings;
    for (const Kind& kind : kKinds) {
        std::vector<double> where;
        Part seen;
        for (const CalibrationPoint& point : points) {
            if (circuitFault(point.signal, sender) != kind.fault)
                continue;
            where.push_back(point.added.litres());
            seen = reading(point.signal.value(), sender);
        }
        if (where.empty())
            continue;
        Sentence text = Sentence::of("The reading %1 at %2 is outside what the sender gives.", seen,
                                     listOf(where));
        text += kind.what;
        text += Sentence::of("The curve leaves it out.");
        add(findings, kind.code, Severity::error, std::move(text));
    }
    return findings;
}

Finding noMovementFinding(const Evidence& e)
{
    return {"no-movement", Severity::error,
            Sentence::of("The signal stayed near %1 while %2 went in or out. Check the wiring, the "
                         "ground and the plug at the sender, then move the float by hand: no curve "
                         "can be made from these readings.",
                         reading(e.steps.front().signal, e.sender), litres(e.litresSpan))};
}

std::vector<Finding> curveFindings(const Evidence& e, const CalibrationFit& fit)
{
    std::vector<Finding> findings;
    findDisorder(e, findings);
    findStopsAndJams(e, findings);
    findSweep(e, findings);
    findResolution(e, findings);
    findRepeats(e, fit, findings);
    findLoadOffset(e, fit, findings);
    findHysteresis(e, fit, findings);
    if (e.steps.size() < 4)
        add(findings, "few-points", Severity::info,
            Sentence::of("With %1 levels the curve between them is little more than a guess of the "
                         "tank's shape. Add readings at levels in between when you can.",
                         counted(e.steps.size())));
    if (std::ranges::any_of(e.points, [](const CalibrationPoint& p) { return p.signal2.has_value(); }))
        add(findings, "second-signal-unused", Severity::info,
            Sentence::of("There is a second signal. This curve uses the first one only; two lobes "
                         "read separately need their own fit."));
    return findings;
}

} // namespace undermark::calibration
