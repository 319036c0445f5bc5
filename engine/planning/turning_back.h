// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/planning/search/problem.h"

namespace undermark::planning {

// The gap between two stops, as it is driven from `from` with `leave` litres there.
struct Leaving {
    Run run;            // of the level
    int from, to;       // points
    double leave;       // L, mean
    bool atStop = true; // what is gone back to is a stop, with its detour
};

// Gap::noReturn and Gap::oneWay: how far into the gap the car can still turn round and be back at
// `from` at the confidence, above the floor of each section driven back. Each section burns its
// own rate both ways, the rates' errors are the same out and back, and nobody idles twice.
// O(log points), where surge asks for fuel O(points) a try.
Gap turningBack(const PlanRequest& request, const Problem& problem, const Leaving& leaving);

} // namespace undermark::planning
