// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a plan that keeps the risk of the whole way costs at least, as long as it stops
// where it is told to.
//
// The normal quantile of the risk is convex in the levels on arrival, so its tangent
// anywhere is a limit that every plan keeps, and a linear one:
//
//     sum of weight x level >= least
//
// Put into the objective with a multiplier (J.-L. Lagrange's; the greatest of all such
// bounds is found), search() finds the least of what is left. Where the tangent is that
// of the cheapest plan the bound is that plan's objective.
#pragma once

#include "engine/planning/search/search.h"

namespace undermark::planning {

// Of every plan that arrives at these points and keeps the risk.
struct RiskLimit {
    std::vector<int> points;
    std::vector<double> weight; // of the level on arrival, >= 0
    double least = 0.0;
};

struct TripBound {
    double objective = 0.0;          // no plan is below it; no limit: there is no plan
    std::vector<Purchase> purchases; // that attain it; they need not keep the risk itself
    std::size_t work = 0;            // pieces of search()
};

// Of the plans with the problem's choices, all of which must arrive at the points of the
// limit. Some ten to thirty searches.
TripBound leastObjective(Problem problem, const RiskLimit& limit, Hours hours);

} // namespace undermark::planning
