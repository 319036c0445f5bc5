// SPDX-License-Identifier: GPL-3.0-or-later
//
// The risk of the whole way, from the levels on arrival at the stops and at the
// finish (between stops fuel only falls, so these are enough).
//
// With several modes the error of an arrival is x'e, x the km by mode since the level was
// last known, e the error of the rates, common to the whole way. e is written as
// independent errors: the first along the mean of all arrivals, the others the principal
// components of what that leaves.
#pragma once

#include "engine/planning/risk/risk.h"
#include "engine/planning/search/problem.h"

namespace undermark::planning {

struct Arrival {
    int since; // where its run began
    int point;
    double level; // L, mean
};

// The arrivals at the stops and at the finish. O(purchases).
std::vector<Arrival> arrivalsOf(const Problem& problem, const std::vector<Purchase>& purchases);

// The law of the levels on these arrivals. O(arrivals x modes^2).
TripLaw lawOf(const Problem& problem, const std::vector<Arrival>& arrivals,
              RunRisk::Rounding rounding = RunRisk::Rounding::up);

struct TripRisk {
    double dry = 0.0;        // below 0 somewhere
    double belowFloor = 0.0; // below the floor somewhere
};

// Of more than a thousand arrivals the single risks are added up (Boole: never too low).
TripRisk riskOfTrip(const Problem& problem, const std::vector<Arrival>& arrivals);

} // namespace undermark::planning
