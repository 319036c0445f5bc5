// SPDX-License-Identifier: GPL-3.0-or-later
//
// The risk of the whole way, from the levels on arrival at the stops and at the
// finish: between stops fuel only falls, so these are enough; and where a stretch ends
// whose surge asks for more than what follows.
//
// The rates share a world over the whole way, and every probability is the weighted sum
// of the worlds'. In a world the levels are jointly normal: what the rates are wrong by is
// shared by all arrivals, what a fill and the sections are wrong by those of a run.
#pragma once

#include "engine/planning/search/problem.h"

namespace undermark::planning {

struct Arrival {
    Run run;
    int point;
    double level; // L, mean; of a stop that is off the way: there
};

// The arrivals that count, in driving order. O(purchases), with surge O(points).
std::vector<Arrival> arrivalsOf(const Problem& problem, const std::vector<Purchase>& purchases);

struct TripRisk {
    double dry = 0.0;        // below 0 somewhere
    double belowFloor = 0.0; // below the floor somewhere
};

// As exact as unionRisk (union_risk.h); one arrival by the closed form. Some milliseconds
// for each world that counts. Of more than a thousand arrivals the single risks are added
// up (Boole: never too low).
TripRisk riskOfTrip(const Problem& problem, const std::vector<Arrival>& arrivals);

} // namespace undermark::planning
