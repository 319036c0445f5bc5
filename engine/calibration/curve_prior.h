// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a curve through few points does not know: the tank's shape between them, and
// whether the float met its upper stop before the last one. Only for engine/calibration;
// plain doubles, litres.
//
// The prior is one of tanks and senders, not of this tank: boxes with rounded edges, lying
// cylinders, wedges, tunnels and moulded shapes, floats straight in the level or on an arm,
// behind a pull-up or not. The curve's miss in the middle of a gap falls with the gap's
// share w of the litres calibrated; its 99 % point, which is what is promised, is near
// 2.33 x 0.145 w^1.75 of them, a quarter more where there is but one gap
// (tests/accuracy/calibration_campaign prints how that holds).
#pragma once

#include "engine/calibration/calibration_steps.h"

namespace undermark::calibration {

// A step against the curve drawn without it: by how much it missed, and by how much the
// prior and the readings' own errors let expect.
struct Miss {
    double litres = 0.0;
    double expected = 0.0;
};

// Sd in the middle of a gap of `gap` out of `span` litres, before any evidence.
double shapeSd(double gap, double span);

// Sd at `share` (0 to 1) of a gap over its sd in the middle: a parabola, as the campaign
// has it within a tenth.
inline double shapeProfile(double share) { return 4.0 * share * (1.0 - share); }

// How much more (or less) this tank bends than the prior expects: 1 without evidence. A
// single miss can only widen it: three points that happen to lie near a line say little.
double shapeScale(std::span<const Miss> misses);

// Gives every gap its shape's sd, `bends` times the prior's, and the last knot that of an
// unseen stop, which it returns.
double addPrior(std::vector<CurveKnot>& knots, double bends);

// Sd at the last point for the stop that nobody saw. Six senders in ten meet it within the
// last eighth of the tank (an assumption, no source: common practice knows a gauge that
// stays on full for the first tens of kilometres); a level somewhere above it is then
// 2.33 sd or less below the last point in 99 of 100.
double unseenStopSd(double lastGap, double span);

} // namespace undermark::calibration
