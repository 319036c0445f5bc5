// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/climb.h"

#include <algorithm>

namespace undermark {

namespace {

Distance net(const HeightProfile& profile, Distance from, Distance to, double rolling)
{
    const Climb climb = climbBetween(profile, from, to, rolling);
    return Distance::fromMetres(climb.up - climb.back);
}

} // namespace

Climb climbBetween(const HeightProfile& profile, Distance from, Distance to, double rolling)
{
    Climb climb;
    const bool backwards = to < from;
    const Distance lower = std::min(from, to), upper = std::max(from, to);
    for (std::size_t i = 1; i < profile.size(); ++i) {
        const HeightPoint &a = profile[i - 1], &b = profile[i];
        const Distance begin = std::max(a.at, lower), end = std::min(b.at, upper);
        if (b.afterGap || begin >= end)
            continue;
        const double along = (b.metres - a.metres) * ((end - begin) / (b.at - a.at));
        const double rise = backwards ? -along : along;
        if (rise > 0)
            climb.up += rise;
        else
            climb.back += std::min(-rise, rolling * (end - begin).metres());
    }
    return climb;
}

Distance netClimb(const HeightProfile& profile)
{
    return profile.empty() ? Distance() : net(profile, profile.front().at, profile.back().at, kRollingResistance);
}

void addClimbs(Route& route, const HeightProfile& profile, double rolling)
{
    for (std::size_t i = 0; i + 1 < route.points.size(); ++i) {
        const Distance from = route.points[i].at, to = route.points[i + 1].at;
        route.points[i].climb = {net(profile, from, to, rolling), net(profile, to, from, rolling)};
    }
}

} // namespace undermark
