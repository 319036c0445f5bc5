// SPDX-License-Identifier: GPL-3.0-or-later
//
// A route that could be read is also planned, if it is short.
#pragma once

#include "engine/planning/plan.h"
#include "tests/fuzz/fuzz_input.h"

namespace undermark::fuzz {

inline void planAlong(const Route& route)
{
    if (route.points.size() > 60)
        return;
    PlanRequest request;
    request.route = route;
    request.tank.capacity = Volume::fromLitres(50);
    request.tank.start = {Volume::fromLitres(30), Volume::fromLitres(1)};
    request.rates = RateModel::single({Consumption::fromLitresPer100Km(8),
                                       Consumption::fromLitresPer100Km(0.4)});
    const auto answer = plan(request);
    if (!answer || !answer->feasible)
        return;
    for (const Passage& passage : answer->passages)
        require(passage.belowFloor <= 0.01 + 1e-6);
}

} // namespace undermark::fuzz
