// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/request_check.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

bool isOneOf(double value, double lowest, double highest)
{
    return std::isfinite(value) && value >= lowest && value <= highest;
}

Result<void> checkTank(const Tank& tank)
{
    const double capacity = tank.capacity.litres();
    if (!(std::isfinite(capacity) && capacity > 0))
        return failInput(Sentence::of("the tank's capacity must be above 0"),
                         Sentence::of("litres above 0"));
    if (!isOneOf(tank.start.mean.litres(), 0, capacity + 1e-9))
        return failInput(Sentence::of("the level at the start does not fit the tank"),
                         Sentence::of("0 to %1", amount(tank.capacity, 6)),
                         amount(tank.start.mean, 6));
    if (!isOneOf(tank.floor.litres(), 0, capacity) || !isOneOf(tank.end.litres(), 0, capacity))
        return failInput(Sentence::of("the floor and the level at the finish must fit the tank"),
                         Sentence::of("0 to %1", amount(tank.capacity, 6)));
    if (!isOneOf(tank.start.sd.litres(), 0, 1e6) || !isOneOf(tank.fullSd.litres(), 0, 1e6))
        return failInput(Sentence::of("a standard deviation of the level must be 0 or more"),
                         Sentence::of("litres of 0 or more"));
    return {};
}

// What is told by mode fits the rates.
Result<void> checkByMode(const Tank& tank, const RateModel& rates)
{
    const std::size_t modes = rates.mean.size();
    for (const RouteLeg& leg : tank.driven) {
        if (leg.mode >= modes || !isOneOf(leg.length.km(), 0, 1e6) || !isFinite(leg.climb))
            return failInput(Sentence::of(
                "the road since the level was known must have a rate and km of 0 or more"));
    }
    for (const Volume litres : tank.surge) {
        if (tank.surge.size() != modes || !isOneOf(litres.litres(), 0, 1e6))
            return failInput(Sentence::of("what surge makes unusable must be 0 or more, by mode"));
    }
    return {};
}

} // namespace

Result<void> checkRequest(const PlanRequest& request)
{
    if (request.route.points.size() < 2)
        return checkRoute(request.route);
    if (auto sound = checkTank(request.tank); !sound)
        return sound;
    if (auto sound = checkRates(request.rates); !sound)
        return sound;
    if (auto sound = checkByMode(request.tank, request.rates); !sound)
        return sound;
    for (const auto& wished : {std::optional(request.confidence), request.stageConfidence,
                               request.tripConfidence}) {
        if (!wished || isOneOf(wished->value(), 0.5, std::nextafter(1.0, 0.0)))
            continue;
        return failInput(Sentence::of("a confidence must be from 0.5 to below 1"),
                         Sentence::of("0.5 to 0.999999"));
    }
    if (!isOneOf(request.stopCost, 0, 1e12))
        return failInput(Sentence::of("a stop costs 0 or more"));
    if (request.cans < 0 || request.crewCans < 0 ||
        (request.cans + request.crewCans > 0 && !(request.canVolume > Volume())))
        return failInput(Sentence::of("cans need a number and the litres of each"),
                         Sentence::of("litres above 0"));
    if ((request.pumpFlow && !(*request.pumpFlow > FlowRate())) ||
        (request.speed && !(*request.speed > Speed())) ||
        std::ranges::any_of(request.modeSpeeds, [](const ModeSpeed& m) { return !(m.speed > Speed()); }))
        return failInput(Sentence::of("the pump's flow and the speed must be above 0"));
    if (!request.modeSpeeds.empty() && !request.speed)
        return failInput(Sentence::of("the speed of a mode needs the speed of the others"));
    if (!isOneOf(request.mostWait.count(), 0, 24 * 60))
        return failInput(Sentence::of("nobody waits longer than a day for an opening"),
                         Sentence::of("0 to 1440 minutes"));
    if (request.departure && !isOneOf(request.departure->count(), 0, 24 * 60))
        return failInput(Sentence::of("the departure must be a time of day"),
                         Sentence::of("00:00 to 24:00"));
    return {};
}

} // namespace undermark::planning
