// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/planning/plan.h"

namespace undermark::planning {

// The rates of the modes that the route is driven in, or was driven in since the level was
// last known; the others left out: fewer modes make every variance quicker.
struct RouteRates {
    RateModel rates;
    std::vector<double> kmPast; // by these modes, before the route
    double climbPast = 0.0;     // km of height
    bool climbs = false;        // heights of the route, or of the road before it, are known
    std::vector<double> surge;  // L by these modes; empty: none
};

// notFound for a mode without a rate. O(points x modes).
Result<RouteRates> ratesOnRoute(const PlanRequest& request);

} // namespace undermark::planning
