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

std::optional<std::size_t> modeOf(const RateModel& rates, const RoutePoint& point)
{
    if (rates.modes.empty())
        return 0;
    const auto found = std::ranges::find(rates.modes, point.mode);
    if (found == rates.modes.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - rates.modes.begin());
}

Result<RateModel> ratesOnRoute(const PlanRequest& request)
{
    const RateModel& all = request.rates;
    if (all.modes.empty())
        return all;
    const auto& points = request.route.points;
    std::vector<bool> driven(all.modes.size(), false);
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const auto mode = modeOf(all, points[i]);
        if (!mode)
            return fail(noRate(all, points[i]));
        driven[*mode] = true;
    }
    RateModel rates;
    rates.legNoiseSd = all.legNoiseSd;
    rates.idling = all.idling;
    for (std::size_t a = 0; a < driven.size(); ++a) {
        if (!driven[a])
            continue;
        rates.modes.push_back(all.modes[a]);
        rates.mean.push_back(all.mean[a]);
        for (std::size_t b = 0; b < driven.size(); ++b) {
            if (driven[b])
                rates.covariance.push_back(all.covariance[a * driven.size() + b]);
        }
    }
    return rates;
}

} // namespace undermark::planning
