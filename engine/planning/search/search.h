// SPDX-License-Identifier: GPL-3.0-or-later
//
// The exact search: for every place a run of known level can have begun, the
// least objective as a function of litres, carried along the route point by
// point. See engine/planning/README.md for why this is exact.
#pragma once

#include "engine/planning/search/problem.h"

#include <optional>

namespace undermark::planning {

// Pieces that are looked at before an exact search gives up; about a second.
inline constexpr std::size_t kMostWork = 30'000'000;

struct SearchResult {
    std::vector<Purchase> purchases; // in driving order
    double objective = 0.0;          // of these
    std::optional<int> stuckBefore;  // first point nobody reaches
    // The levels that could leave the point before it: run begin and supply.
    std::vector<std::pair<int, double>> lastReached;
    std::size_t work = 0; // pieces looked at
    bool gaveUp = false;  // too many sums of stop minutes to look at all
};

enum class Hours {
    ignored,
    kept,
    // Kept with minutes to spare: each stop takes whole minutes, and up to kDawdle may be waited
    // for an opening. Not the best plan, but few sums of minutes.
    roughly,
};
inline constexpr double kDawdle = 15.0; // minutes

// Cost: O(points x runs alive x pieces), runs and pieces being bounded by the
// fuel points within one tank's reach; without spread there is one run. With hours
// kept there is one for every sum of stop minutes as well, until the last point
// that has hours; the search gives up after about a second. Where one may wait, whoever is late
// and no cheaper is dropped.
SearchResult search(const Problem& problem, Hours hours = Hours::ignored);

} // namespace undermark::planning
