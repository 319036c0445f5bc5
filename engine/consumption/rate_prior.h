// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is believed about a car's rates before anything is learnt.
#pragma once

#include "engine/base/records.h"

#include <span>
#include <vector>

namespace undermark {

// Normal prior over [rate of each mode in L/km, idle in L/h, litres per cold
// start]. Modes without a stated rate get a plausible one for their kind
// (common practice, no source) with a wide spread: a factor common to the car
// (35 %) and one of the mode (20 %). A stated rate conditions that prior, so
// it pulls the modes that are not stated along.
struct RatePrior {
    std::vector<double> mean;
    std::vector<double> covariance;   // row by row
    std::vector<double> usualMixKm;   // by mode: pseudo-kilometres of the usual mix
};

RatePrior ratePrior(std::span<const Mode> modes);

} // namespace undermark
