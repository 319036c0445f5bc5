// SPDX-License-Identifier: GPL-3.0-or-later
//
// From the sender's signal to what the tracker takes: litres with a spread, a
// bound, or "no such signal exists".
#pragma once

#include "engine/calibration/level_curve.h"
#include "engine/tracking/tracker_types.h"

namespace undermark {

// A signal more than a tenth of the calibrated span outside it is none that the
// float can give: an open or shorted wire (ratiometric senders keep 7 to 14 % of
// the supply free at either end for that, by service literature). Half a percent of the span
// counts as noise, so that the last digit at a stop does not matter.
LevelObservation observe(const LevelCurve& curve, Signal signal);

// Range and direction of the curve; the litres of its stops are part of the range.
TrackerSettings trackerSettings(const LevelCurve& curve);

} // namespace undermark
