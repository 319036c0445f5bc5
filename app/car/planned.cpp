// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/planned.h"

namespace undermark {

Result<Planned> planned(PlanRequest request)
{
    auto answer = plan(request);
    if (!answer)
        return fail(answer.error());
    Planned all{std::move(request), std::move(*answer), {}, {}};
    if (all.plan.feasible)
        all.legs = planHorizons(all.request, all.plan);
    else if (auto cures = findCures(all.request))
        all.cures = std::move(*cures);
    return all;
}

} // namespace undermark
