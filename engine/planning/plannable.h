// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/planning/plan.h"

namespace undermark {

// The error that plan() would give, without planning. Cost: a look at every point.
Result<void> checkPlannable(const PlanRequest& request);

} // namespace undermark
