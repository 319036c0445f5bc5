// SPDX-License-Identifier: GPL-3.0-or-later
//
// Chooses the algorithm for a problem and turns its purchases into a plan.
#pragma once

#include "engine/planning/search/trip_search.h"

namespace undermark::planning {

struct Solved {
    Plan plan;
    double objective = kNoLimit; // of a feasible plan
};

// The best plan that keeps each arrival's confidence, and the opening hours where
// the problem has a timetable. Optimal; where the sums of stop minutes are too
// many for that, the plan keeps the hours and its notes say so.
Solved solve(const PlanRequest& request, const Problem& problem);

// The same, and the whole way's confidence (request.tripConfidence, which must be
// there). What is guaranteed:
//  * the risk of the plan returned, by riskOfTrip, is at most what was asked for;
//  * no plan that keeps it is better by more than Plan::tripGap. Where the gap is 0
//    the plan is optimal.
// Cost: up to `mostWork` (trip_search.h), and where that was not enough some thirty
// times solve.
Solved solveForTrip(const PlanRequest& request, const Problem& problem,
                    std::size_t mostWork = kMostTripWork);

} // namespace undermark::planning
