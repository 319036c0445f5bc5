// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a calibration session thinks of the readings so far.
#include "engine/calibration/calibration_session.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kWantedLitres = 0.3;    // a reading is settled when it is known to this
constexpr double kWantedShare = 0.005;   // of the sweep, before two levels tell what a litre is

// How many independent readings a series is worth: those that would know its
// mean as well. One where the display does not move at all.
int independent(const SettledReading& reading)
{
    if (!reading.sd || !reading.standardError || *reading.standardError <= Signal())
        return 1;
    const double ratio = *reading.sd / *reading.standardError;
    return std::clamp(int(ratio * ratio), 1, reading.readings);
}

Signal signalOf(const CalibrationPoint& point, std::size_t signal)
{
    return signal == 0 ? point.signal : point.signal2.value_or(point.signal);
}

// With two signals a lobe may well stand still, but not both.
std::optional<Finding> stillness(std::span<const CalibrationPoint> points)
{
    if (points.size() < 2 || points.back().added <= points.front().added)
        return std::nullopt;
    for (const std::size_t signal : {0u, 1u}) {
        const Signal from = signalOf(points.front(), signal);
        if (abs(signalOf(points.back(), signal) - from) > abs(from) * kWantedShare)
            return std::nullopt;
    }
    return Finding{"no-movement", Severity::error,
                   Sentence::of("Neither signal has moved while %1 went in. Look at the wiring "
                                "and the ground.",
                                amount(points.back().added))};
}

} // namespace

std::vector<Finding> CalibrationSession::findings(const Sender& sender) const
{
    std::vector<Finding> found;
    if (hasTwoSignals()) {
        if (auto still = stillness(points()))
            found.push_back(std::move(*still));
        if (const auto why = isReviewing() ? whyNoCurve(sender) : std::nullopt)
            found.push_back({"no-curve", Severity::error, sentenceOf(*why)});
        return found;
    }
    if (const Result<Gauge> made = gauge(sender))
        std::ranges::copy_if(made->findings(), std::back_inserter(found), [this](const Finding& finding) {
            return finding.severity == Severity::error || isReviewing();
        });
    return found;
}

Signal CalibrationSession::tolerance(std::size_t signal, const Sender& sender, const Live& live) const
{
    const auto all = pointsOf(m_draft.levels);
    if (all.size() > 1) {
        const Volume litres = all.back().added - all.front().added;
        const Signal sweep = abs(signalOf(all.back(), signal) - signalOf(all.front(), signal));
        if (litres > Volume() && sweep > Signal())
            return Signal::of(kWantedLitres * sweep.value() / litres.litres());
    }
    if (const auto span = possibleSpan(sender))
        return (span->highest - span->lowest) * kWantedShare;
    if (!live[signal].empty())
        return abs(live[signal].front().signal) * kWantedShare;
    const auto typed = series(signal);
    return typed.empty() ? Signal() : abs(typed.front().signal) * kWantedShare;
}

std::optional<DraftReading> CalibrationSession::settled(const Live& live, const Sender& sender) const
{
    if (live[0].empty() || live[0].back().time - live[0].front().time < kShortest)
        return std::nullopt;
    const SettledReading first = settle(live[0], tolerance(0, sender, live));
    const SettledReading second = settle(live[1], tolerance(1, sender, live));
    if (!first.settled || (hasTwoSignals() && !second.settled))
        return std::nullopt;
    DraftReading reading;
    reading.signal = first.mean;
    if (hasTwoSignals())
        reading.second = second.mean;
    reading.sd = first.sd;
    reading.readings = independent(first);
    reading.settled = true;
    return reading;
}

// The readings at the level being taken.
std::vector<TimedSignal> CalibrationSession::series(std::size_t signal) const
{
    std::vector<TimedSignal> all;
    for (const DraftReading& each : m_draft.current.readings)
        all.push_back({each.time, signal == 0 ? each.signal : each.second.value_or(each.signal)});
    return all;
}

SettledReading CalibrationSession::current(const Sender& sender, const Live& live) const
{
    return settle(series(0), tolerance(0, sender, live));
}

CalibrationSession::Settling CalibrationSession::settling(const Sender& sender, const Live& live) const
{
    const auto& readings = m_draft.current.readings;
    const bool first = current(sender, live).settled;
    const bool second =
        !hasTwoSignals() || settle(series(1), tolerance(1, sender, live)).settled;
    if (std::ranges::any_of(readings, &DraftReading::settled) || (first && second))
        return Settling::settled;
    return int(readings.size()) < kWantedReadings ? Settling::tooFew : Settling::moving;
}

} // namespace undermark
