// SPDX-License-Identifier: GPL-3.0-or-later
//
// A plan while it is driven: what is left of it, and what planning anew changed.
#pragma once

#include "engine/planning/plan.h"

namespace undermark {

// The request for what is left of a feasible plan's way from `here` on, driven as planned up to
// here, with the litres, their spread and (where known) the clock that the plan expects there.
// A stop exactly here is not made yet. badInput as of routeFrom.
Result<PlanRequest> leftOfPlan(const PlanRequest& request, const Plan& plan, Distance here);

// What a new plan asks for otherwise than the one before, for the stops that are still ahead:
// a sentence for each stop that is new, gone or of other litres, for the finish and the risk.
// Nothing where all stays within half a litre. Stops are the same by their names.
std::vector<Sentence> planChanges(const PlanRequest& before, const Plan& was,
                                  const PlanRequest& now, const Plan& is);

} // namespace undermark
