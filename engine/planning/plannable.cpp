// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/plannable.h"

#include "engine/planning/search/problem.h"

namespace undermark {

Result<void> checkPlannable(const PlanRequest& request)
{
    if (const Result<planning::Problem> problem = planning::makeProblem(request); !problem)
        return fail(problem.error());
    return {};
}

} // namespace undermark
