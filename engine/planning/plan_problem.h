// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/planning/search/problem.h"

namespace undermark::planning {

// plan() of a problem that was made from the request, and changed since maybe. Inside the planner.
Plan planProblem(const PlanRequest& request, const Problem& problem, const GoOn& goOn = {});

} // namespace undermark::planning
