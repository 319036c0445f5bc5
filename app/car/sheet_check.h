// SPDX-License-Identifier: GPL-3.0-or-later
//
// A car's sheet (what is stated of its tank and sender) against its calibration.
#pragma once

#include "app/car/notice.h"
#include "engine/outlook/car_knowledge.h"

#include <optional>
#include <vector>

namespace undermark {

// Litres to the first click as they were poured: the calibration's highest level, and what
// was left behind below it. Absent without a calibration, and where it is the sheet's
// capacity within what a stated one is out by (kStatedCapacitySd).
std::optional<Volume> pouredCapacity(const Vehicle& sheet, const CarKnowledge& car);

// What cannot be, or is unlikely, in `sheet` as it would be stored; empty: nothing.
std::vector<Notice> doubtsOf(const Vehicle& sheet, const CarKnowledge& car);

} // namespace undermark
