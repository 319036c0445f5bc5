// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/what_if.h"

#include <algorithm>

namespace undermark {

namespace {

// As short as it can be written.
constexpr Digits kShort = Digits::significant(6);

Result<WhatIf> planned(Sentence words, PlanRequest request)
{
    Result<Plan> answer = plan(request);
    if (!answer)
        return fail(answer.error());
    return WhatIf{std::move(words), std::move(request), std::move(*answer)};
}

Result<WhatIf> onRoute(const PlanRequest& request, Result<Route> route, Sentence words)
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
    return onRoute(request, withPointClosed(request.route, name), Sentence::of("%1 closed", name));
}

Result<WhatIf> whatIfRepeated(const PlanRequest& request, const std::string& name)
{
    return onRoute(request, withSectionRepeated(request.route, name),
                   Sentence::of("from %1 driven twice", name));
}

Result<WhatIf> whatIfRateUp(const PlanRequest& request, Fraction by)
{
    PlanRequest changed = request;
    changed.rates = withRatesTimes(std::move(changed.rates), 1.0 + by.ratio());
    return planned(Sentence::of("rate up by %1", amount(by.percent(), kShort, "%")),
                   std::move(changed));
}

Result<WhatIf> whatIfFillsLess(const PlanRequest& request, Volume by)
{
    PlanRequest changed = request;
    changed.tank.capacity -= by;
    if (!(changed.tank.capacity > Volume()))
        return failInput(Sentence::of("no tank is left"), Sentence::of("less than the capacity"),
                         amount(by, kShort));
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
    return planned(Sentence::of("every fill %1 short", amount(by, kShort)), std::move(changed));
}

Result<WhatIf> whatIfTogether(const PlanRequest& request,
                              const std::vector<WhatIfQuestion>& questions)
{
    std::vector<Sentence> words;
    WhatIf all{{}, request, {}};
    for (const WhatIfQuestion& ask : questions) {
        Result<WhatIf> answer = ask(all.request);
        if (!answer)
            return answer;
        words.push_back(answer->words);
        all = std::move(*answer);
    }
    all.words = Sentence::just(std::move(words));
    return all;
}

} // namespace undermark
