// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/what_if.h"

#include "engine/format.h"

#include <algorithm>

namespace undermark {

namespace {

std::string number(double value)
{
    return format("%g", value);
}

Result<WhatIf> planned(std::string words, PlanRequest request)
{
    Result<Plan> answer = plan(request);
    if (!answer)
        return fail(answer.error());
    return WhatIf{std::move(words), std::move(request), std::move(*answer)};
}

Result<WhatIf> onRoute(const PlanRequest& request, Result<Route> route, std::string words)
{
    if (!route)
        return fail(route.error());
    PlanRequest changed = request;
    changed.route = std::move(*route);
    return planned(std::move(words), std::move(changed));
}

} // namespace

Result<WhatIf> whatIfClosed(const PlanRequest& request, const std::string& name)
{
    return onRoute(request, withPointClosed(request.route, name), name + " closed");
}

Result<WhatIf> whatIfRepeated(const PlanRequest& request, const std::string& name)
{
    return onRoute(request, withSectionRepeated(request.route, name),
                   "from " + name + " driven twice");
}

Result<WhatIf> whatIfRateUp(const PlanRequest& request, Fraction by)
{
    PlanRequest changed = request;
    const double factor = 1.0 + by.ratio();
    for (Consumption& rate : changed.rates.mean)
        rate = rate * factor;
    for (double& covariance : changed.rates.covariance)
        covariance *= factor * factor;
    return planned("rate up by " + number(by.percent()) + " %", std::move(changed));
}

Result<WhatIf> whatIfFillsLess(const PlanRequest& request, Volume by)
{
    PlanRequest changed = request;
    changed.tank.capacity -= by;
    if (!(changed.tank.capacity > Volume()))
        return failInput("no tank is left", "less than the capacity", number(by.litres()) + " L");
    // A start above that is counted as that: on the safe side.
    changed.tank.start.mean = std::min(changed.tank.start.mean, changed.tank.capacity);
    for (RoutePoint& point : changed.route.points) {
        if (!point.mostPurchase)
            continue;
        point.mostPurchase = *point.mostPurchase - by;
        if (!(*point.mostPurchase > point.leastPurchase.value_or(Volume()))) {
            point.mostPurchase.reset();
            point.fuel = FuelSource::none;
        }
    }
    return planned("every fill " + number(by.litres()) + " L short", std::move(changed));
}

} // namespace undermark
