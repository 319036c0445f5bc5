// SPDX-License-Identifier: GPL-3.0-or-later
//
// Saddle tank: two lobes with a sender each, read separately. The first signal
// is the lobe with the pump, the second the one that is emptied into it.
//
//     V = f1(s1) + f2(s2)
//
// (Two senders wired in series give one signal: that is calibrated like any
// other tank, with seriesSpread() on top.)
#pragma once

#include "engine/base/records.h"
#include "engine/calibration/level_curve.h"

#include <span>
#include <vector>

namespace undermark {

// Two signals at every point: the two-signal form.
bool haveTwoSignals(std::span<const CalibrationPoint> points);

// Both curves. Splits every pour between the lobes by which signals moved: one moved, it took
// all; both moved, in the ratio of what each took per signal before (equal shares
// of the spans where nothing is known). The litres split like that carry a tenth
// as sd. Points in the order of rising litres, every one with both signals.
// badInput: fewer than three points, a signal missing or never moving, or one that
// turns by more than 2 % of its span.
// Simplification: a movement under 2 % of a signal's span is none.
Result<std::vector<LevelCurve>> fitLobes(std::span<const CalibrationPoint> points);

// Both lobes together. A lobe on a stop counts as anywhere in the stop's width
// (sd = width / sqrt 12); with both on the same stop the whole is one-sided.
LevelReading readLobes(std::span<const LevelCurve> lobes, Signal first, Signal second);
// The same of readings already taken off both curves.
LevelReading joinLobes(std::span<const LevelCurve> lobes, const LevelReading& first,
                       const LevelReading& second);

// Series wiring: how far unequal emptying can shift the level at one signal. One
// lobe of capacity a, the other b: the sum signal weighs litres by 1/a and 1/b, so
// up to |a - b| / 2 litres either way at the middle; a uniform spread, hence / sqrt 3.
Volume seriesSpread(Volume firstLobe, Volume secondLobe);

} // namespace undermark
