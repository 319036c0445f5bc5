// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which calibration and which zero mark of a tank were in force at a time. Calibrations are known
// by their own time; a zero mark by when it is said to have come in force, else with its
// calibration. The first one holds as far back as the log. A mark that is only stated (there is no
// calibration) holds since it is said to; a statement that was changed without saying since when
// was a correction.
//
// Simplification: two calibrations' pours are taken to err alike, so that the way between their
// marks is without error: it is small beside what is not known of the offset.
// Only for the files of engine/outlook.
#pragma once

#include "engine/outlook/car_knowledge.h"

#include <optional>

namespace undermark {

// Of the log of one tank, the vehicle's own or one that logOfTank() took out: its calibration
// in force then, and today's; null: it has none.
const Calibration* calibrationAt(const VehicleLog& log, Instant time);
const Calibration* latestCalibration(const VehicleLog& log);

// The zero mark of then, seen from today's.
struct ZeroThen {
    Volume above;                   // so many litres above it; may be below 0
    std::optional<Gauge> gauge{};   // that the tank was read with; absent: today's
};

// Nothing: another mark was in force, and nothing says how far it was from today's (it is older
// than any calibration, or one of the two is of the tank's shape, whose litres count from
// another level). O(calibrations), and one fit where the calibration is another.
std::optional<ZeroThen> zeroMarkAt(const CarKnowledge& tank, Instant time);

} // namespace undermark
