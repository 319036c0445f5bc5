// SPDX-License-Identifier: GPL-3.0-or-later
//
// Price only: no stop cost, no limits, no spread. Then a queue of the fuel on
// board, sorted by price, decides at once: fill up at every pump, pay only for
// what is burnt, burn the cheapest first, hand back whatever is dearer than the
// pump one stands at. The monotone queue of Lin, Gertsch and Russell, "A linear-
// time algorithm for finding optimal vehicle refueling policies", Operations
// Research Letters 35 (2007).
#pragma once

#include "engine/planning/search/problem.h"

#include <optional>

namespace undermark::planning {

// True if the problem is of that kind.
bool isPriceOnly(const Problem& problem);

// The purchases of least cost, in driving order; nothing if the finish cannot
// be reached. O(points) time and memory.
std::optional<std::vector<Purchase>> cheapestByPriceOnly(const Problem& problem);

} // namespace undermark::planning
