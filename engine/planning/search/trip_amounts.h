// SPDX-License-Identifier: GPL-3.0-or-later
//
// Given where to stop and where to fill up: the litres that cost least while the
// risk of the whole way is kept. How the risk is shared among the arrivals is free.
//
// The objective and all limits are linear in the litres of the partial purchases,
// and the normal quantile of the probability that every arrival is well is concave in
// the levels (A. Ehrhard 1983; from memory), so the litres that keep the risk are a convex
// set and a local optimum is the optimum. Found by sequential quadratic programming: D. Kraft's
// SLSQP as it comes with NLopt.
#pragma once

#include "engine/planning/risk/run_risk.h"
#include "engine/planning/search/trip_bound.h"

namespace undermark::planning {

struct TripAmounts {
    std::vector<Purchase> purchases;
    double objective = kNoLimit; // as search() counts it; no limit: no litres do it
    // Where the litres came to rest: what every plan with these stops has to keep.
    // Without points where no litres do it, or none are to be chosen.
    RiskLimit limit;
    std::size_t work = 0; // in pieces of search() that would take as long
};

// `stops` in driving order; their choices count, and the litres of cans; the others'
// are where the solver begins. `allowed` is the risk of the whole way, above 0. Each
// arrival also keeps the problem's own confidence, and the hours where it has a
// timetable; of a stop that is found open early or late but not in between only the
// early litres are looked at. Some ten to a hundred evaluations of the risk. The risk is
// never above what is allowed; leastObjective() tells whether the litres are the cheapest.
TripAmounts cheapestAmounts(const Problem& problem, std::vector<Purchase> stops, double allowed,
                            RunRisk::Rounding rounding = RunRisk::Rounding::up);

} // namespace undermark::planning
