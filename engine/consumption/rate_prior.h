// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is believed about a car's rates before anything is learnt: log-normal, as wide
// as what people drive, told by the tank's capacity, the fuel and what the user states.
#pragma once

#include "engine/base/records.h"

#include <optional>
#include <span>
#include <vector>

namespace undermark {

// What the rates are worked out for. Without a capacity: a petrol car of middle size.
struct PriorFacts {
    std::optional<Volume> capacity;
    FuelKind fuel = FuelKind::petrol;
    std::optional<double> massKg{};   // as driven, as stated; > 0
};

// unit cost j = base_j * exp(level + own_j), by item: each mode (L/km), idling (L/h), a
// cold start (L). The last item is a km of height climbed (L/km), beside what its road takes: its
// cost is base * exp(own), for what is lifted does not burn more with the driver's foot. (level, own_0, own_1, ...) is normal with `mean` and `covariance`
// (row by row). A stated rate conditions it, so it pulls the others along.
struct RatePrior {
    std::vector<double> base;
    std::vector<double> mean;
    std::vector<double> covariance;
    std::vector<double> usualMixKm;   // by mode: pseudo-kilometres of the usual mix
    double usual_l = 0;               // litres from one fill to the next
};

RatePrior ratePrior(std::span<const Mode> modes, const PriorFacts& facts = {});

} // namespace undermark
