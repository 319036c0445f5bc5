// SPDX-License-Identifier: GPL-3.0-or-later
//
// A calibration tried on its own car: some litres are taken out and measured, the sender is
// read again, and what the curve makes of the readings is held against the litres.
//
// Guarantees (each has a test in tests/engine/calibration/verification_test.cpp):
//  * a true curve passes at least as often as the confidence says, however many levels are
//    tried: each one gets its share of what may fail by chance (Bonferroni);
//  * a reading at a stop, which is a bound and no level, can only be broken by litres
//    beyond it.
#pragma once

#include "engine/calibration/gauge.h"

#include <vector>

namespace undermark {

// One level that was tried.
struct VerifiedLevel {
    CalibrationPoint point;  // litres since drained as measured, and the reading
    LevelReading predicted;  // what the curve makes of the reading, on the way down
    // Measured less predicted, in standard deviations of both together.
    double deviations = 0.0;
    bool agrees = false;
};

struct Verification {
    std::vector<VerifiedLevel> levels; // in the order given
    Volume measuredSd;       // of the litres measured
    Probability confidence;
    double allowed = 0.0;              // standard deviations, two-sided, of each level
    bool passed() const;               // all of them agree
};

// `points`: litres since drained, as they were measured to `measuredSd` (one standard
// deviation, of each). Levels are read at rest on the way down (Gauge::readDriving), with a
// point's own noise, over the root of its number of readings, where it states one.
// Errors: badInput where the gauge is not known, there is no point, or a point lacks the
// signals that the gauge needs. Cost: that of a reading each.
Result<Verification> verify(const Gauge& gauge, std::span<const CalibrationPoint> points,
                            Volume measuredSd, Probability confidence = Probability::of(0.99));

// To be kept: what was measured and what the curve had made of it, as it came out that day.
VerificationRecord recordOf(const Verification& verification, Instant time);

} // namespace undermark
