// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/problem.h"

namespace undermark::planning {

namespace {

// Half of the way to a stop at `point` and back.
double kmOfHalfDetour(const Offer& offer, int mode)
{
    return offer.detourMode == mode ? offer.detourKm / 2 : 0.0;
}

} // namespace

double Problem::kmBetween(int from, int to, int mode) const
{
    const auto first = static_cast<std::size_t>(from);
    const auto last = static_cast<std::size_t>(to);
    if (kmTo.empty())
        return at[last] - at[first];
    const auto n = static_cast<std::size_t>(modes);
    const auto m = static_cast<std::size_t>(mode);
    return kmTo[last * n + m] - kmTo[first * n + m];
}

double Problem::kmBackBetween(int from, int to, int mode) const
{
    if (mode != climbMode)
        return kmBetween(from, to, mode);
    return climbBackTo[static_cast<std::size_t>(to)] - climbBackTo[static_cast<std::size_t>(from)];
}

double Problem::km(int since, int point, int mode) const
{
    if (since == kStart)
        return kmPast[static_cast<std::size_t>(mode)] + kmBetween(0, point, mode);
    return kmOfHalfDetour(offers[static_cast<std::size_t>(since)], mode) +
           kmBetween(since, point, mode);
}

double Problem::km(const Run& run, int point, int mode) const
{
    const double road = km(run.since, point, mode);
    return run.detoured.empty() ? road : road + run.detoured[static_cast<std::size_t>(mode)];
}

Run Problem::withDetour(Run run, int point, double part) const
{
    const Offer& offer = offers[static_cast<std::size_t>(point)];
    if (offer.detourKm > 0) {
        run.detoured.resize(static_cast<std::size_t>(modes));
        run.detoured[static_cast<std::size_t>(offer.detourMode)] += part * offer.detourKm;
    }
    return run;
}

LevelSpread Problem::spread(int since, int point) const
{
    return spreadOver(knownVariance(since), [=, this](int m) { return km(since, point, m); });
}

LevelSpread Problem::spread(const Run& run, int point) const
{
    return spreadOver(knownVariance(run.since), [&](int m) { return km(run, point, m); });
}

double Problem::needed(const LevelSpread& spread, int point) const
{
    const double least = leastAt(point) + room(allowedAt(point), spread);
    return shared ? std::max(least, floorAt(point) + room(*shared, spread)) : least;
}

double Problem::enoughTo(const Run& run, int from, int to) const
{
    const Run there = withDetour(run, to, 0.5);
    double enough = fuelBefore(to) + offers[static_cast<std::size_t>(to)].detourLitres / 2 +
                    needed(spread(there, to), to);
    const bool onTheWay = !surgeTo.empty() || !floors.empty() || onStage || falls; // may ask for more than the end does
    for (int i = onTheWay ? from + 1 : to; i < to; ++i)
        enough = std::max(enough, fuelBefore(i) + needed(spread(run, i), i));
    return enough - fuelBefore(from);
}

double Problem::leastOnArrival(const LevelSpread& spread, int point) const
{
    const auto i = static_cast<std::size_t>(point);
    return fuelTo[i] + needed(spread, point) + (more.empty() ? 0.0 : more[i]);
}

double Problem::leastSupply(int since, int point) const
{
    return leastOnArrival(spread(since, point), point);
}

double Problem::leastSupplyToStop(int since, int point) const
{
    const Offer& offer = offers[static_cast<std::size_t>(point)];
    const double wished = fuelBefore(point) + offer.arriveWith + offer.detourLitres / 2;
    if (!(offer.detourKm > 0))
        return std::max(leastSupply(since, point), wished);
    const LevelSpread there = spreadOver(knownVariance(since), [&](int m) {
        return km(since, point, m) + kmOfHalfDetour(offer, m);
    });
    return std::max(leastOnArrival(there, point) + offer.detourLitres / 2, wished);
}

} // namespace undermark::planning
