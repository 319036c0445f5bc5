// SPDX-License-Identifier: GPL-3.0-or-later
//
// The list of (signal, value) pairs to type into a gauge, which draws straight
// lines between them.
#pragma once

#include "engine/base/error.h"
#include "engine/calibration/level_curve.h"

#include <optional>
#include <vector>

namespace undermark {

enum class GaugeUnit { percent, litres };

struct GaugeTableRequest {
    int points = 2;                     // 2 to 100
    GaugeUnit unit = GaugeUnit::percent;
    int decimals = 0;                   // of the value, 0 to 6
    Volume zeroMark;                    // litres since drained that are shown as 0
    std::optional<Volume> full;         // shown as 100 %; the curve's upper end if absent
    std::optional<Signal> signalStep;   // signals are typed in multiples of it
};

struct GaugeTableRow {
    Signal signal;
    double value = 0.0;   // percent, or litres above the zero mark; rounded
};

struct GaugeTable {
    std::vector<GaugeTableRow> rows;   // by rising litres, first and last as far as the curve goes
    Volume zero;                       // litres since drained that are shown as 0
    Volume full;                       // and as 100 %
    Volume interpolationError;         // worst, of straight lines between unrounded points
    Volume roundingError;              // worst, of rounding the values
    Volume worstError;                 // of the table as printed; <= the sum of the two
};

// Places the points on the curve so that the worst straight-line error between
// zero mark and full is least: dynamic programming over candidate points (each
// knot and some 200 between), exact among these; each chord's error is exact, at
// the extrema of a cubic. Fewer rows only where the signal step leaves no more. Where the float is on its stop at the zero mark,
// zero is where the stop ends, since nothing lower can be shown.
// badInput: counts or decimals out of range, zero mark not under full.
// Cost O(points x candidates^2), some ten milliseconds.
Result<GaugeTable> gaugeTable(const LevelCurve& curve, const GaugeTableRequest& request);

} // namespace undermark
