// SPDX-License-Identifier: GPL-3.0-or-later
//
// What driving costs by kind of driving, with all its uncertainty, as whoever asks how
// far, how risky or how much to buy takes it: a small mixture of jointly normal worlds.
#pragma once

#include "engine/base/quantity.h"

#include <cstddef>
#include <map>
#include <string>
#include <vector>

namespace undermark {

// Kilometres ahead by mode; kilometres under an empty name are the usual mix.
using Mix = std::map<std::string, Distance>;

// One of the ways the car may be driven just now: every mode's rate times one common
// factor f ~ N(factorMean, factorSd^2).
struct RateWorld {
    double weight;       // > 0; the weights of all worlds sum to 1
    double factorMean;   // > 0; 1 in the mean of all worlds
    double factorSd;     // >= 0
};

// In world k the rates of the modes are N(f r, f^2 S + s^2 r r'), with f and s the
// world's factorMean and factorSd, r = mean and S = residual; the road's own noise
// (tauSquaredPerKm) and the click (clickSd) are independent of the world. Past driving
// and driving ahead share the world and the errors within it.
struct ModeRates {
    std::vector<std::string> modes;         // row and column order below
    std::vector<Consumption> mean;          // r, > 0: by mode, at factor 1, as the car does just now
    std::vector<double> residual;           // S, (L/km)^2, row by row: what is not common to all modes
    std::vector<RateWorld> worlds;          // at least one
    std::vector<double> covariance;         // (L/km)^2, row by row: over all worlds, predictive
    std::vector<Fraction> usualMix;         // share of each mode in usual driving, sums to 1
    Estimate<FlowRate> idle;
    Estimate<Volume> coldStart;
    Estimate<Consumption> climb;            // of a km of height beyond the usual
    double usualClimb = 0;                  // km of height in a km of usual road, within `mean`
    double tauSquaredPerKm = 0;             // L^2/km, what averages out along the way
    Volume clickSd;                         // scatter of one fill to the first click, as learnt
    Estimate<Volume> lastClick;             // poured beyond the usual full at the last full fill
    double degreesOfFreedom = 0;            // of a Student t with `covariance` that stands for the worlds
    double usualMixVariance = 0;            // (L/km)^2: 0, it is within the worlds
};

// What driving costs without what is only now (season, the last weeks): posterior medians.
struct LongRunRates {
    std::vector<Consumption> rate;          // by mode, > 0
    std::vector<double> covariance;         // (L/km)^2, row by row
    Estimate<FlowRate> idle;
    Estimate<Volume> coldStart;
    Estimate<Consumption> climb;            // of a km of height
};

} // namespace undermark
