// SPDX-License-Identifier: GPL-3.0-or-later
//
// The best plan that keeps the risk of the whole way, by branch and bound over where
// to stop and where to fill up.
//
// Whoever keeps the whole way's confidence keeps it on each arrival, so search() with
// that confidence on each arrival is a lower bound; its stops, with the litres by
// cheapestAmounts(), are a plan. Everything but these very stops is then split by the
// first point where it differs (E. L. Lawler, Management Science 18 (1972), 401; from
// memory), and the part with the lowest bound is looked at next.
#pragma once

#include "engine/planning/search.h"

namespace undermark::planning {

struct TripSearchResult {
    std::optional<std::vector<Purchase>> purchases; // the best that was found
    double objective = kNoLimit;                    // of these
    double bound = 0.0;    // no plan is better; the objective itself where it is optimal
    bool complete = false; // all was looked at: optimal, or there is no plan
};

// `allowed` is the risk of the whole way, above 0 and below 0.5. Keeps the hours of a
// timetable. `known`: stops of a plan that is good already, to leave out more from the
// start. Gives up after some seconds.
TripSearchResult searchForTrip(Problem problem, double allowed,
                               const std::vector<Purchase>* known = nullptr);

} // namespace undermark::planning
