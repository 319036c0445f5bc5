// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/rules.h"

#include "engine/format.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

std::string number(double value)
{
    return format("%.2f", value);
}

std::string nameOf(const RoutePoint& point)
{
    return point.name.empty() ? "km " + number(point.at.km()) : point.name;
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
    RuleFinding finding{"autonomy: distance between two chances to refuel", true, {}, {}, {}};
    finding.kept = way.km <= allowed;
    finding.text = nameOf(points[way.from]) + " to " + nameOf(points[way.to]) + " is " +
                   number(way.km) + " km, " + number(allowed) + " km are allowed";
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
    const double km = request.rules.autonomy->km() * (1 + request.rules.autonomySafety);
    const auto& rates = request.rates;
    double needed = 0.0;
    for (std::size_t m = 0; m < rates.mean.size(); ++m) {
        const bool driven = std::ranges::any_of(request.route.points, [&](const RoutePoint& point) {
            return rates.modes.empty() || point.mode == rates.modes[m];
        });
        if (!driven)
            continue;
        const double variance = problem.fullVariance +
                                km * km * rates.covariance[m * rates.mean.size() + m] +
                                km * rates.legNoiseSd * rates.legNoiseSd;
        needed =
            std::max(needed, rates.mean[m].litresPerKm() * km + problem.z * std::sqrt(variance));
    }
    const double there = problem.capacity - request.tank.floor.litres();
    RuleFinding finding{"autonomy: a full tank", needed <= there + 1e-9, {}, {}, {}};
    finding.text = number(km) + " km need " + number(needed) + " L, a full tank has " +
                   number(there) + " L above the floor";
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
