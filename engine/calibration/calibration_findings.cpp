// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibration_steps.h"
#include "engine/calibration/circuit.h"
#include "engine/format.h"

#include <algorithm>
#include <cmath>

namespace undermark::calibration {

namespace {

// Common practice, no source: what is worth telling somebody with a fuel can.
constexpr double kSmallSweep = 0.25;        // of what the circuit can give
constexpr double kCoarseShare = 0.01;       // of the calibrated litres, per display step
constexpr double kNoticedShare = 0.01;      // of the calibrated litres: a gap worth a warning

std::string number(double value, int significant = 3)
{
    return format("%.*g", significant, value);
}

std::string litres(double value) { return number(value) + " L"; }

std::string reading(double value, const Sender& sender)
{
    return number(value, 6) + (sender.unit.empty() ? "" : " " + sender.unit);
}

std::string listOf(const std::vector<double>& values)
{
    std::string text;
    for (std::size_t i = 0; i < values.size() && i < 5; ++i)
        text += (i ? ", " : "") + litres(values[i]);
    return values.size() > 5 ? text + " and " + std::to_string(values.size() - 5) + " more" : text;
}

void add(std::vector<Finding>& findings, const char* code, Severity severity, std::string text)
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
                "The float rests on its lower stop up to " + litres(high) + ": at "
                + reading(flats[i].signal, e.sender) + " the gauge cannot see the last "
                + litres(still) + ". Lower the float arm, or count this fuel by consumption only.");
        else if (i + 1 == flats.size())
            add(findings, "stop-at-top", Severity::warning,
                "The float reaches its upper stop at " + litres(low) + ": the gauge cannot see the "
                + litres(still) + " above. It will stand still for that long after a fill; raise "
                "the arm's stop if that matters.");
        else
            add(findings, "flat-piece", Severity::warning,
                "The signal stood at " + reading(flats[i].signal, e.sender) + " from " + litres(low)
                + " to " + litres(high) + ", in the middle of its travel. The float may jam or touch "
                "something there: move it by hand and look for what it meets.");
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
            "The signal turned back while the litres went on one way, at and above " + listOf(where)
            + ". The float may be fouling the tank or a baffle, or a row was noted wrongly: repeat "
            "these readings.");
}

void findRepeats(const Evidence& e, const CalibrationFit& fit, std::vector<Finding>& findings)
{
    std::vector<double> where;
    double worst = 0.0;
    for (const auto* branch : {&e.branches.up, &e.branches.down}) {
        for (const Step& step : *branch) {
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
            "Repeated readings differ, at " + listOf(where) + ", by as much as " + litres(worst)
            + ". Let the fuel come to rest before reading; if they still differ, look for a loose "
            "contact or a sticking float.");
}

void findSweep(const Evidence& e, std::vector<Finding>& findings)
{
    double available = 0.0;
    if (const auto span = possibleSpan(e.sender))
        available = (span->highest - span->lowest).value();
    else   // every sender in common use changes its resistance several-fold
        for (const Step& step : e.steps)
            available = std::max(available, std::abs(step.signal));
    if (e.shape.sweep < kSmallSweep * available)
        add(findings, "sweep-too-small", Severity::warning,
            "The signal moves by " + reading(e.shape.sweep, e.sender) + " of about "
            + reading(available, e.sender) + " that it could. The float arm may be too short, bent "
            "or wrongly placed to reach both ends: check that it does.");
}

void findResolution(const Evidence& e, std::vector<Finding>& findings)
{
    const double perStep = e.resolution * e.litresSpan / e.shape.sweep;
    if (perStep > kCoarseShare * e.litresSpan)
        add(findings, "resolution-too-coarse", Severity::warning,
            "One step of the reading (" + reading(e.resolution, e.sender) + ") is " + litres(perStep)
            + ". Read and note one more decimal, or use a finer meter.");
}

void findHysteresis(const Evidence& e, const CalibrationFit& fit, std::vector<Finding>& findings)
{
    if (e.hysteresis) {
        const double gap = e.hysteresis->mean.litres();
        const bool noticed = std::abs(gap) > kNoticedShare * e.litresSpan;
        add(findings, "hysteresis", noticed ? Severity::warning : Severity::info,
            "On the way down the signal stands for " + litres(std::abs(gap))
            + (gap >= 0.0 ? " less" : " more") + " than on the way up. "
            + (fit.drainedDown ? "Driving goes down: the curve is the falling one."
               : "The falling readings cover too little for a curve of their own; the difference is "
                 "carried as a bias. Drain down in steps over the whole range to settle it.")
            + (noticed ? " Check the float's pivot for stiffness." : ""));
    } else if (!fit.drainedDown) {
        add(findings, "hysteresis-unknown", Severity::info,
            "The readings only go up, and driving goes down: the level may be lower than read by an "
            "assumed " + litres(fit.readsHighBy.litres())
            + ". Note some readings while draining to measure it.");
    }
}

void findLoadOffset(const Evidence& e, const CalibrationFit& fit, std::vector<Finding>& findings)
{
    double worst = 0.0, signal = 0.0;
    for (const CalibrationPoint& point : e.loaded) {
        const auto rest = std::ranges::find(e.steps, point.added.litres(), &Step::litres);
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
            "With electrical load on the reading moves by " + reading(signal, e.sender) + ", which is "
            + litres(worst) + ". The sender's ground shares a wire with the load: give it its own, "
            "and clean the ground point.");
}

} // namespace

std::vector<Finding> circuitFindings(std::span<const CalibrationPoint> points, const Sender& sender)
{
    struct Kind { CircuitFault fault; const char* code; const char* what; };
    static constexpr Kind kKinds[] = {
        {CircuitFault::open, "open-circuit",
         "An open circuit reads like this: look for a connector or wire that is off"},
        {CircuitFault::shorted, "short-circuit",
         "A short reads like this: look for the signal wire touching ground"},
        {CircuitFault::impossible, "impossible-reading",
         "This circuit cannot give it: check the unit, the supply and the wiring"}};
    std::vector<Finding> findings;
    for (const Kind& kind : kKinds) {
        std::vector<double> where;
        std::string seen;
        for (const CalibrationPoint& point : points) {
            if (circuitFault(point.signal, sender) != kind.fault)
                continue;
            where.push_back(point.added.litres());
            seen = reading(point.signal.value(), sender);
        }
        if (!where.empty())
            add(findings, kind.code, Severity::error,
                "The reading " + seen + " at " + listOf(where) + " is outside what the sender gives. "
                + kind.what + ". The curve leaves it out.");
    }
    return findings;
}

Finding noMovementFinding(const Evidence& e)
{
    return {"no-movement", Severity::error,
            "The signal stayed near " + reading(e.steps.front().signal, e.sender) + " while "
            + litres(e.litresSpan) + " went in or out. Check the wiring, the ground and the plug at the "
            "sender, then move the float by hand: no curve can be made from these readings."};
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
            "With " + std::to_string(e.steps.size()) + " levels the curve between them is little more "
            "than a guess of the tank's shape. Add readings at levels in between when you can.");
    if (std::ranges::any_of(e.points, [](const CalibrationPoint& p) { return p.signal2.has_value(); }))
        add(findings, "second-signal-unused", Severity::info,
            "There is a second signal. This curve uses the first one only; two lobes read "
            "separately need their own fit.");
    return findings;
}

} // namespace undermark::calibration
