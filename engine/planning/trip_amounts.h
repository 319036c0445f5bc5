// SPDX-License-Identifier: GPL-3.0-or-later
//
// Given where to stop and where to fill up: the litres that cost least while the
// risk of the whole way is kept. How the risk is shared among the arrivals is free.
//
// The objective and all limits are linear in the litres of the partial purchases,
// and the probability that every arrival is well is log-concave in the levels
// (Prekopa 1973; from memory), so the litres that keep the risk are a convex set and a
// local optimum is the optimum. Found by sequential quadratic programming: D. Kraft's
// SLSQP as it comes with NLopt.
#pragma once

#include "engine/planning/problem.h"

namespace undermark::planning {

struct TripAmounts {
    std::vector<Purchase> purchases;
    double objective = kNoLimit; // as search() counts it; no limit: no litres do it
    // Not where a stop is found open early or late but not in between: only the early
    // litres were looked at.
    bool certain = true;
    std::size_t work = 0; // in pieces of search() that would take as long
};

// `stops` in driving order; their choices count, their litres do not (those of cans
// do). `allowed` is the risk of the whole way, above 0. Each arrival also keeps the
// problem's own confidence, and the hours where it has a timetable. About ten
// evaluations of the risk, each O(arrivals^2).
TripAmounts cheapestAmounts(const Problem& problem, std::vector<Purchase> stops, double allowed);

} // namespace undermark::planning
