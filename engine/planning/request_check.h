// SPDX-License-Identifier: GPL-3.0-or-later
//
// What of a request can be refused before its route is looked at.
#pragma once

#include "engine/planning/plan.h"

namespace undermark::planning {

// badInput for a tank, rates, confidence, cans, flow, speed or departure that
// cannot be, and for a route without a finish. The points themselves are checked
// as they are read (checkRoutePoint).
Result<void> checkRequest(const PlanRequest& request);

} // namespace undermark::planning
