// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/sender_reading.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr double kImpossible = 0.10;   // of the span
constexpr double kNoise = 0.005;
constexpr double kEndReach = 0.03;      // of the span: play of the arm, a coarse converter's step
constexpr double kUnseenStop = 0.10;    // of the range

// Litres over which the reading need not move. At either end a calibration cannot
// tell where between its last two points the float met its stop.
Volume flatAt(const LevelCurve& curve, Signal signal, Signal reach)
{
    const std::span<const CurveKnot> knots = curve.knots();
    const Volume most = kUnseenStop * (knots.back().added - knots.front().added);
    Volume flat;
    const Signal end = (kEndReach / (2.0 * kNoise)) * reach;
    if (abs(signal - knots.front().signal) <= end || abs(signal - knots.back().signal) <= end) {
        const bool upper = abs(signal - knots.back().signal) <= end;
        const Volume gap = upper ? knots.back().added - knots[knots.size() - 2].added
                                 : knots[1].added - knots[0].added;
        flat = std::min(gap, most);
    }
    for (const CurveKnot& knot : knots)
        if (knot.width > flat && abs(knot.signal - signal) <= reach)
            flat = knot.width;
    return flat;
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
    out.flat = flatAt(curve, signal, 2.0 * kNoise * span);
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
