// SPDX-License-Identifier: GPL-3.0-or-later
//
// Event rules that a car and a route either keep or not. The demands differ by
// event: they are inputs, never constants.
#pragma once

#include "engine/planning/search/problem.h"

namespace undermark::planning {

// The autonomy rule: no way between two chances to refuel is longer than the
// autonomy; a full tank lasts for the autonomy and its safety on top, in the
// thirstiest mode of the route, at the confidence. First the longest way, then the
// full tank, then every other way that is too long, by length.
std::vector<RuleFinding> checkRules(const PlanRequest& request, const Problem& problem);

} // namespace undermark::planning
