// SPDX-License-Identifier: GPL-3.0-or-later
//
// The exact search: for every place a run of known level can have begun, the
// least objective as a function of litres, carried along the route point by
// point. See engine/planning/README.md for why this is exact.
#pragma once

#include "engine/planning/problem.h"

#include <optional>

namespace undermark::planning {

struct SearchResult {
    std::vector<Purchase> purchases; // in driving order
    std::optional<int> stuckBefore;  // first point nobody reaches
    // The levels that could leave the point before it: run begin and supply.
    std::vector<std::pair<int, double>> lastReached;
};

// Cost: O(points x runs alive x pieces), runs and pieces being bounded by the
// fuel points within one tank's reach; without spread there is one run.
SearchResult search(const Problem& problem);

} // namespace undermark::planning
