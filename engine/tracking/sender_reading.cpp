// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/sender_reading.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr double kImpossible = 0.10;   // of the span
constexpr double kNoise = 0.005;

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
    for (const CurveKnot& knot : curve.knots())
        if (knot.width > out.flat && abs(knot.signal - signal) <= 2.0 * kNoise * abs(span))
            out.flat = knot.width;
    if (reading.bound != LevelBound::exact)
        out.kind = reading.bound == LevelBound::atMost ? ReadingKind::atMost : ReadingKind::atLeast;
    return out;
}

TrackerSettings trackerSettings(const LevelCurve& curve)
{
    TrackerSettings settings;
    settings.lowest = curve.lowest().added - curve.lowest().width;
    settings.highest = curve.highest().added + curve.highest().width;
    settings.signalRises = curve.rising();
    return settings;
}

} // namespace undermark
