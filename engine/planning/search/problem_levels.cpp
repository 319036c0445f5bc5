// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/problem.h"

namespace undermark::planning {

double Problem::km(int since, int point, int mode) const
{
    const auto from = static_cast<std::size_t>(std::max(since, 0));
    const auto to = static_cast<std::size_t>(point);
    const auto m = static_cast<std::size_t>(mode);
    const double past = since == kStart ? kmPast[m] : 0.0;
    if (kmTo.empty())
        return past + at[to] - at[from];
    const auto n = static_cast<std::size_t>(modes);
    return past + kmTo[to * n + m] - kmTo[from * n + m];
}

LevelSpread Problem::spread(int since, int point) const
{
    const auto n = static_cast<std::size_t>(modes);
    const auto common = [this, n](int i, int j) {
        return covariance[static_cast<std::size_t>(i) * n + static_cast<std::size_t>(j)];
    };
    LevelSpread spread;
    double all = 0.0;
    for (int i = 0; i < modes; ++i) {
        const double x = km(since, point, i);
        all += x;
        spread.burnt += x * rates[static_cast<std::size_t>(i)];
        spread.residual += x * x * common(i, i);
        for (int j = 0; j < i; ++j)
            spread.residual += x * km(since, point, j) * (common(i, j) + common(j, i));
    }
    spread.residual = std::max(spread.residual, 0.0);
    spread.own = (since == kStart ? startVariance : fullVariance) + noisePerKm * all;
    return spread;
}

double Problem::leastSupply(int since, int point) const
{
    const LevelSpread spread = this->spread(since, point);
    double least = leastAt(point) + room(allowed, spread);
    if (shared)
        least = std::max(least, floorAt(point) + room(*shared, spread));
    return fuelTo[static_cast<std::size_t>(point)] + least;
}

double Problem::leastSupplyToStop(int since, int point) const
{
    const double detour = offers[static_cast<std::size_t>(point)].detourLitres;
    return leastSupply(since, point) + (point > 0 ? detour / 2 : 0.0);
}

} // namespace undermark::planning
