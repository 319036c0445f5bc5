// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/planning/plan.h"

namespace undermark::planning {

// Which of the rates' modes a point drives on in; 0 where one rate is for all.
// Nothing for a mode that is not among them.
std::optional<std::size_t> modeOf(const RateModel& rates, const RoutePoint& point);

// The rates of the modes that the route is driven in, the others left out: fewer
// modes make every variance quicker, and with one left the risk is exact.
// notFound for a mode without a rate. O(points x modes).
Result<RateModel> ratesOnRoute(const PlanRequest& request);

} // namespace undermark::planning
