// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a workshop that keeps many cars has to know of each: when it was calibrated, tried and
// handed over, and what is due.
#pragma once

#include "engine/base/sentence.h"
#include "engine/logbook/entry.h"

#include <optional>
#include <string>
#include <vector>

namespace undermark {

// Of the vehicle's own tank; the latest of each.
struct CarFile {
    Entry<Vehicle> vehicle;
    std::optional<Instant> calibrated;
    std::optional<Instant> verified;     // of that calibration, passed or not
    std::optional<Instant> handedOver;
    std::vector<Sentence> due;           // in the order in which to do it
};

// A calibration is due again after two years (kCalibrationOld).
CarFile carFileOf(const VehicleLog& log, Instant now);

// Whether it was calibrated, and so many whole months ago or longer.
bool isCalibratedBefore(const CarFile& file, int months, Instant now);

// Which cars of many a list is to show; of what is not asked for, all.
struct CarWish {
    std::string name;            // a part of it, in large or small letters (of Latin-1)
    std::optional<int> months{}; // calibrated so many whole months ago or longer; > 0
    bool due = false;            // something is
};
bool isWanted(const CarFile& file, const CarWish& wish, Instant now);

} // namespace undermark
