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
//
// Where a stop costs nothing (the lightest car at a pump without minimum or detour), to
// stop or not is no choice to split: whoever passes is as good as one who buys 0 L. All
// these pumps are stopped at together, which makes one convex problem of all their
// combinations. To count the arrival at a pump that is passed adds no risk but that of
// being below the limit there and above it at the next, which the noise of a short
// section may do: the bound allows that much more risk.
#pragma once

#include "engine/planning/search/search.h"

namespace undermark::planning {

struct TripSearchResult {
    std::optional<std::vector<Purchase>> purchases; // the best that was found
    double objective = kNoLimit;                    // of these
    double bound = 0.0;    // no plan is better; the objective itself where it is optimal
    bool complete = false; // all was looked at: optimal, or there is no plan
};

// What is looked at before it gives up, in about 0.1 us: ten seconds.
inline constexpr std::size_t kMostTripWork = 100'000'000;

// `allowed` is the risk of the whole way, above 0 and below 0.5. Keeps the hours of a
// timetable. The objective is within 1e-6 of the least where all was looked at.
TripSearchResult searchForTrip(Problem problem, double allowed,
                               std::size_t mostWork = kMostTripWork);

} // namespace undermark::planning
