// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/route_rates.h"

#include <algorithm>

namespace undermark::planning {

namespace {

Error noRate(const RateModel& rates, const RoutePoint& point)
{
    std::string known;
    for (const std::string& mode : rates.modes)
        known += (known.empty() ? "" : ", ") + mode;
    return {ErrorCode::notFound,
            Sentence::of("there is no consumption for this mode of driving, at '%1'", point.name),
            {},
            Sentence::just(known),
            point.mode};
}

} // namespace

Result<RouteRates> ratesOnRoute(const PlanRequest& request)
{
    const RateModel& all = request.rates;
    const Tank& tank = request.tank;
    const std::size_t count = all.mean.size();
    std::vector<double> kmPast(count, 0.0);
    std::vector<bool> driven(count, false);
    RouteRates route;
    for (const RouteLeg& leg : tank.driven) {
        kmPast[leg.mode] += leg.length.km();
        route.climbPast += all.climbKm(leg);
        driven[leg.mode] = true;
    }
    route.climbs = route.climbPast != 0;
    const auto& points = request.route.points;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const auto mode = all.indexOf(points[i].mode);
        if (!mode)
            return fail(noRate(all, points[i]));
        driven[*mode] = true;
        route.climbs = route.climbs || points[i].climb != SectionClimb();
    }
    route.climbs = route.climbs && all.climb.mean > Consumption();
    route.rates.climb = all.climb;
    route.rates.worlds = all.worlds;
    route.rates.legNoiseSd = all.legNoiseSd;
    route.rates.idling = all.idling;
    for (std::size_t a = 0; a < count; ++a) {
        if (!driven[a])
            continue;
        if (!all.modes.empty())
            route.rates.modes.push_back(all.modes[a]);
        route.rates.mean.push_back(all.mean[a]);
        route.kmPast.push_back(kmPast[a]);
        if (!tank.surge.empty())
            route.surge.push_back(tank.surge[a].litres());
        for (std::size_t b = 0; b < count; ++b) {
            if (driven[b])
                route.rates.covariance.push_back(all.covariance[a * count + b]);
        }
    }
    return route;
}

} // namespace undermark::planning
