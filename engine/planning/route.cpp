// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/route.h"

#include <algorithm>

namespace undermark {

namespace {

Sentence label(const RoutePoint& point, std::size_t index)
{
    return point.name.empty() ? Sentence::of("point %1", counted(index + 1))
                              : Sentence::of("point %1 '%2'", counted(index + 1), point.name);
}

template <class Q> bool isNegative(const std::optional<Q>& amount)
{
    return amount && !(*amount >= Q{}); // catches NaN as well
}

Result<void> checkAmounts(const RoutePoint& point, std::size_t index)
{
    if (!(isFinite(point.climb.there) && isFinite(point.climb.back)))
        return failInput(Sentence::of("%1: the climb is not a number", label(point, index)),
                         Sentence::of("m"));
    if (!isFinite(point.at))
        return failInput(Sentence::of("%1: the distance is not a number", label(point, index)),
                         Sentence::of("km"));
    if (isNegative(point.pricePerLitre) || isNegative(point.leastPurchase) ||
        isNegative(point.detour) || isNegative(point.stopTime) || isNegative(point.idle) ||
        isNegative(point.floor) || isNegative(point.rest))
        return failInput(Sentence::of("%1: an amount is negative", label(point, index)),
                         Sentence::of("0 or more"));
    if (point.mostPurchase && !(*point.mostPurchase > Volume()))
        return failInput(Sentence::of("%1: nothing may be bought", label(point, index)),
                         Sentence::of("a limit above 0"));
    if (point.leastPurchase && point.mostPurchase && *point.leastPurchase > *point.mostPurchase)
        return failInput(
            Sentence::of("%1: the minimum purchase is above the limit", label(point, index)),
            Sentence::of("at most %1", amount(*point.mostPurchase, 6)),
            amount(*point.leastPurchase, 6));
    if (point.firstDay && point.lastDay && *point.lastDay < *point.firstDay)
        return failInput(Sentence::of("%1: the last day is before the first", label(point, index)));
    return {};
}

Result<std::size_t> indexOf(const Route& route, const std::string& name)
{
    const auto found = std::ranges::find(route.points, name, &RoutePoint::name);
    if (found == route.points.end())
        return fail(ErrorCode::notFound, Sentence::of("the route has no point of this name"), {},
                    {}, name);
    return static_cast<std::size_t>(found - route.points.begin());
}

} // namespace

RoutePoint pointOnSection(const RoutePoint& behind, Distance at, std::string name)
{
    RoutePoint point;
    point.at = at;
    point.name = std::move(name);
    point.mode = behind.mode;
    point.timed = behind.timed;
    return point;
}

Result<void> checkRoute(const Route& route)
{
    if (route.points.size() < 2)
        return failInput(Sentence::of("the route has no finish"),
                         Sentence::of("at least two points"), std::to_string(route.points.size()));
    for (std::size_t i = 0; i < route.points.size(); ++i) {
        if (const auto sound = checkRoutePoint(route, i); !sound)
            return sound;
    }
    return {};
}

Result<void> checkRoutePoint(const Route& route, std::size_t index)
{
    const RoutePoint& point = route.points[index];
    if (const auto sound = checkAmounts(point, index); !sound)
        return sound;
    if (index > 0 && point.at < route.points[index - 1].at)
        return failInput(Sentence::of("%1: the distance runs backwards", label(point, index)),
                         Sentence::of("%1 or more", amount(route.points[index - 1].at, 6)),
                         amount(point.at, 6));
    return {};
}

const char* fuelWord(FuelSource source)
{
    switch (source) {
    case FuelSource::pump:
        return "pump";
    case FuelSource::zone:
        return "zone";
    case FuelSource::can:
        return "can";
    case FuelSource::crew:
        return "crew";
    case FuelSource::none:
        break;
    }
    return "none";
}

Result<FuelSource> fuelSourceOf(std::string_view word)
{
    for (const FuelSource source :
         {FuelSource::none, FuelSource::pump, FuelSource::zone, FuelSource::can, FuelSource::crew})
        if (word == fuelWord(source))
            return source;
    return failInput(Sentence::of("this kind of fuel point is not known"),
                     Sentence::of("none, pump, zone, can or crew"), std::string(word));
}

Result<Route> routeFrom(const Route& route, Distance here)
{
    if (const auto sound = checkRoute(route); !sound)
        return fail(sound.error());
    const auto& points = route.points;
    if (!(here >= points.front().at && here < points.back().at))
        return failInput(Sentence::of("this place is not on the way to the finish"),
                         Sentence::of("from %1 to below %2", amount(points.front().at, 6),
                                      amount(points.back().at, 6)),
                         amount(here, 6));
    const auto next = std::ranges::lower_bound(points, here, {}, &RoutePoint::at);
    Route rest{{next, points.end()}};
    if (next->at > here) {
        const RoutePoint& behind = *(next - 1);
        RoutePoint start = pointOnSection(behind, here, "here");
        start.climb = behind.climb * ((next->at - here) / (next->at - behind.at));
        rest.points.insert(rest.points.begin(), std::move(start));
    }
    return rest;
}

Result<Route> withPointClosed(const Route& route, const std::string& name)
{
    const auto index = indexOf(route, name);
    if (!index)
        return fail(index.error());
    Route changed = route;
    bool closed = false;
    for (RoutePoint& point : changed.points) {
        if (point.name != name)
            continue;
        closed = closed || point.fuel != FuelSource::none;
        point.fuel = FuelSource::none;
    }
    if (!closed)
        return failInput(Sentence::of("there is no fuel at this point, so it cannot be closed"), {},
                         name);
    return changed;
}

Result<Route> withSectionRepeated(const Route& route, const std::string& name)
{
    const auto index = indexOf(route, name);
    if (!index)
        return fail(index.error());
    if (*index + 1 >= route.points.size())
        return failInput(Sentence::of("nothing follows this point, so nothing can be driven again"),
                         {}, name);
    Route changed = route;
    const Distance length = route.points[*index + 1].at - route.points[*index].at;
    RoutePoint again =
        pointOnSection(route.points[*index], route.points[*index + 1].at, name + " again");
    again.idle = route.points[*index].idle;
    again.climb = route.points[*index].climb;
    for (std::size_t i = *index + 1; i < changed.points.size(); ++i)
        changed.points[i].at += length;
    changed.points.insert(changed.points.begin() + static_cast<std::ptrdiff_t>(*index) + 1, again);
    return changed;
}

Result<double> tripMeterFactor(Distance official, Distance shownOnCheck)
{
    if (!(official > Distance() && shownOnCheck > Distance()))
        return failInput(Sentence::of("both lengths of the check section must be above 0"),
                         Sentence::of("km above 0"));
    return official / shownOnCheck;
}

} // namespace undermark
