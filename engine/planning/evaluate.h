// SPDX-License-Identifier: GPL-3.0-or-later
//
// From decided purchases to the plan that people read: levels, costs, risks.
#pragma once

#include "engine/planning/search/problem.h"
#include "engine/planning/search/search.h"

namespace undermark::planning {

Plan evaluate(const PlanRequest& request, const Problem& problem,
              const std::vector<Purchase>& purchases);

// The plan that says why there is none.
Plan infeasible(const PlanRequest& request, const Problem& problem, const SearchResult& result);

} // namespace undermark::planning
