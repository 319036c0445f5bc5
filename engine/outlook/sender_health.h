// SPDX-License-Identifier: GPL-3.0-or-later
//
// Does the sender still say what it said when it was calibrated? Every fill to the
// first click whose reading was noted before pumping is a test: what the curve makes
// of the reading, and the litres pumped, should add up to full.
#pragma once

#include "engine/outlook/car_knowledge.h"

namespace undermark {

// After two years a sender and its wiring have changed enough to try it again (judgement, no
// source).
inline constexpr std::chrono::days kCalibrationOld{730};

// What the readings at the pump say. A check of one fill is read level + litres - full.
struct SenderDrift {
    std::size_t fills = 0;              // checks made: full fills since the calibration
    Estimate<Volume> shift;             // their mean; sd with what all of them share
    Volume scatter;                     // sd of one check
    std::optional<Volume> perYear;      // slope over time
    std::optional<double> pValue;       // of no slope, two-sided Student t
};

struct SenderHealth {
    std::optional<std::chrono::days> calibrationAge;
    std::optional<SenderDrift> drift;   // from five checks on
    // As the calibration's findings, with what to do; those of the stored calibration
    // that are not infos come first. Codes: no-calibration, calibration-old,
    // sender-unwatched (infos), sender-shifted, sender-drift (warnings).
    std::vector<Finding> findings;
};

// Drift: ordinary least squares of the checks over time, called out below p = 0.01 and
// above half a litre over the time seen. Shift: called out beyond 3 sd and half a
// litre; its sd holds the curve's error and its unknown hysteresis, which all checks
// share. Old is over two years. (Half a litre is the click's own repeatability, two
// years and the limits are common practice, no source.)
// A saddle tank with two signals is not watched: a fill notes one reading.
// Cost: O(fills).
SenderHealth senderHealth(const CarKnowledge& car, Instant now);

} // namespace undermark
