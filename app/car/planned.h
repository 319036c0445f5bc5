// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/planning/cures.h"
#include "engine/planning/plan.h"
#include "engine/planning/plan_horizon.h"

namespace undermark {

// A plan, and all that a page shows of it.
struct Planned {
    PlanRequest request;
    Plan plan;
    std::vector<Cure> cures;       // of an infeasible way
    std::vector<LegHorizon> legs;  // of a feasible one
};

// Plain data in, plain data out: may be made on any thread. Errors: those of plan(). Cost:
// that of plan(), of some dozen plans where the way is infeasible.
Result<Planned> planned(PlanRequest request);

} // namespace undermark
