// SPDX-License-Identifier: GPL-3.0-or-later
//
// Chooses the algorithm for a problem and turns its purchases into a plan.
#pragma once

#include "engine/planning/search/problem.h"

namespace undermark::planning {

struct Solved {
    Plan plan;
    double objective = kNoLimit; // of a feasible plan
    double bound = kNoLimit;     // no plan's is lower
};

// The best plan that keeps each arrival's confidence, and the opening hours where
// the problem has a timetable. Optimal (the rare plan of partial
// fills off the way excepted); where the sums of stop minutes are too many for that, the plan
// keeps the hours, its notes say so, and Plan::tripGap how much better another could be.
Solved solve(const PlanRequest& request, const Problem& problem);

// The same, and the whole way's confidence (request.tripConfidence, which must be there):
// the risk of the plan returned, by riskOfTrip, is at most what was asked for, shared
// equally among the arrivals. No plan that keeps it is better by more than Plan::tripGap.
// Cost: some fifteen times solve; asked between them, `goOn` may end it with the best so far.
Solved solveForTrip(const PlanRequest& request, const Problem& problem, const GoOn& goOn = {});

} // namespace undermark::planning
