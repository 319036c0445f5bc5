// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/rules.h"

#include "engine/base/format.h"
#include "engine/planning/route_rates.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

Part km(double value)
{
    return amount(Distance::fromKm(value), 2);
}
Part wholeLitres(double value)
{
    return amount(Volume::fromLitres(value), 2);
}

Sentence nameOf(const RoutePoint& point)
{
    if (!point.name.empty())
        return Sentence::just(point.name);
    return Sentence::of("the point at %1", amount(point.at, 2));
}

// A way between two chances to refuel, or to the finish.
struct Way {
    std::size_t from;
    std::size_t to;
    double km;
};

RuleFinding findingOf(const PlanRequest& request, const Way& way)
{
    const auto& points = request.route.points;
    const double allowed = request.rules.autonomy->km();
    RuleFinding finding{
        Sentence::of("autonomy: distance between two chances to refuel"), true, {}, {}, {}};
    finding.kept = way.km <= allowed;
    finding.text = Sentence::of("%1 to %2 is %3, %4 are allowed", nameOf(points[way.from]),
                                nameOf(points[way.to]), km(way.km), km(allowed));
    finding.overBy = Distance::fromKm(std::max(way.km - allowed, 0.0));
    return finding;
}

// By length, the longest first.
std::vector<Way> waysBetweenChances(const PlanRequest& request, const Problem& problem)
{
    const auto& points = request.route.points;
    std::vector<Way> ways;
    std::size_t from = 0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (!problem.offers[i].open && i + 1 < points.size())
            continue;
        ways.push_back({from, i, (points[i].at - points[from].at).km()});
        from = i;
    }
    std::ranges::stable_sort(ways, std::greater(), &Way::km);
    return ways;
}

RuleFinding fullTank(const PlanRequest& request, const Problem& problem)
{
    const double way = request.rules.autonomy->km() * (1 + request.rules.autonomySafety);
    const RouteRates route = *ratesOnRoute(request); // the problem was made of it
    const RateModel& rates = route.rates;
    double needed = 0.0;
    for (std::size_t m = 0; m < rates.mean.size(); ++m) {
        const std::vector<RouteLeg> road{{Distance::fromKm(way), m}};
        const double used = rates.burntOver(road).litres();
        const LevelSpread spread = rates.spreadAfter(request.tank.fullSd, road);
        const double surge = route.surge.empty() ? 0.0 : route.surge[m];
        needed = std::max(needed, used + problem.room(problem.allowed, spread) +
                                      std::max(surge - problem.floor, 0.0));
    }
    const double there = problem.capacity - request.tank.floor.litres();
    RuleFinding finding{Sentence::of("autonomy: a full tank"), needed <= there + 1e-9, {}, {}, {}};
    finding.text = Sentence::of("%1 need %2, a full tank has %3 above the floor", km(way),
                                wholeLitres(needed), wholeLitres(there));
    finding.shortBy = Volume::fromLitres(std::max(needed - there, 0.0));
    return finding;
}

} // namespace

std::vector<RuleFinding> checkRules(const PlanRequest& request, const Problem& problem)
{
    if (!request.rules.autonomy)
        return {};
    const std::vector<Way> ways = waysBetweenChances(request, problem);
    std::vector<RuleFinding> findings{findingOf(request, ways.front()), fullTank(request, problem)};
    for (auto way = ways.begin() + 1; way != ways.end(); ++way) {
        if (RuleFinding finding = findingOf(request, *way); !finding.kept)
            findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace undermark::planning
