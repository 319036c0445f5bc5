// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/sender_reading.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kImpossible = 0.10;   // of the span
constexpr double kNoise = 0.005;
// Of the span: play of the arm, a coarse converter's step. At the bottom more: there
// a reading held up by them hides an empty tank.
constexpr double kTopReach = 0.02;
constexpr double kBottomReach = 0.03;
constexpr double kUnseenStop = 0.10;    // of the range

// Litres over which the reading need not move. At either end a calibration cannot
// tell where between its last two points the float met its stop.
Volume flatAt(const LevelCurve& curve, Signal signal, Signal span)
{
    const std::span<const CurveKnot> knots = curve.knots();
    const CurveKnot& bottom = knots.front();
    const CurveKnot& top = knots.back();
    Volume flat;
    if (abs(signal - top.signal) <= kTopReach * span)
        flat = top.added - knots[knots.size() - 2].added;
    else if (abs(signal - bottom.signal) <= kBottomReach * span)
        flat = knots[1].added - bottom.added;
    flat = std::min(flat, kUnseenStop * (top.added - bottom.added));
    for (const CurveKnot& knot : knots)
        if (knot.width > flat && abs(knot.signal - signal) <= 2.0 * kNoise * span)
            flat = knot.width;
    return flat;
}

ReadingKind kindOf(LevelBound bound)
{
    return bound == LevelBound::exact ? ReadingKind::exact
        : bound == LevelBound::atMost ? ReadingKind::atMost
                                      : ReadingKind::atLeast;
}

} // namespace

LevelObservation observe(const LevelCurve& curve, Signal signal)
{
    const auto [low, high] = std::minmax(curve.lowest().signal, curve.highest().signal);
    const Signal span = high - low;
    LevelObservation out;
    if (signal < low - kImpossible * span) {
        out.kind = ReadingKind::tooLow;
        return out;
    }
    if (signal > high + kImpossible * span) {
        out.kind = ReadingKind::tooHigh;
        return out;
    }
    const LevelReading reading = curve.read(signal, kNoise * span);
    out.level = reading.added;
    out.flat = flatAt(curve, signal, span);
    out.kind = kindOf(reading.bound);
    return out;
}

std::optional<LevelObservation> observe(const Gauge& gauge, const SenderReading& reading)
{
    if (!gauge.isKnown() || (gauge.hasTwoSignals() && !reading.other))
        return std::nullopt;
    LevelObservation seen = observe(gauge.lobes()[0], reading.signal);
    if (gauge.hasTwoSignals()) {
        const LevelObservation other = observe(gauge.lobes()[1], *reading.other);
        for (const LevelObservation& lobe : {seen, other})
            if (lobe.kind == ReadingKind::tooLow || lobe.kind == ReadingKind::tooHigh)
                return lobe;
        const LevelReading both = *gauge.read(reading);
        return LevelObservation{kindOf(both.bound), both.added, seen.flat + other.flat};
    }
    seen.level.sd = Volume::fromLitres(
        std::hypot(seen.level.sd.litres(), gauge.seriesSpread().litres()));
    return seen;
}

TrackerSettings trackerSettings(const Gauge& gauge)
{
    TrackerSettings settings;
    settings.lowest = gauge.lowest();
    settings.highest = gauge.full();
    settings.signalRises = gauge.lobes().front().rising();
    return settings;
}

} // namespace undermark
