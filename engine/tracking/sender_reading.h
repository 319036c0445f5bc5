// SPDX-License-Identifier: GPL-3.0-or-later
//
// From the sender's signal to what the tracker takes: litres with a spread, a
// bound, or "no such signal exists".
#pragma once

#include "engine/calibration/gauge.h"
#include "engine/tracking/tracker_types.h"

namespace undermark {

// A signal more than a tenth of the calibrated span outside it is none that the
// float can give: an open or shorted wire (ratiometric senders keep 7 to 14 % of
// the supply free at either end for that: 0.07 to 0.14 of it stands for empty and
// 0.85 to 0.92 for full, as service literature has them). Half a percent of the span
// counts as noise, so that the last digit at a stop does not matter.
LevelObservation observe(const LevelCurve& curve, Signal signal);

// By all signals of the gauge: a lobe whose signal no float can give makes the whole
// reading one. Nothing where a signal is missing.
std::optional<LevelObservation> observe(const Gauge& gauge, const SenderReading& reading);

// Range and direction; the litres of the stops are part of the range.
TrackerSettings trackerSettings(const Gauge& gauge);

} // namespace undermark
