// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/plan_horizon.h"

#include "engine/planning/route_rates.h"

#include <algorithm>
#include <cassert>

namespace undermark {

namespace {

// What is aboard on leaving `leg.from`, as if nothing were used since the level was last
// known: all that was poured in since is counted, and the road since is told beside it.
struct LastKnown {
    Estimate<Volume> fuel;
    std::vector<RouteLeg> driven;
};

RouteLeg sectionFrom(const PlanRequest& request, std::size_t point)
{
    const auto& points = request.route.points;
    return {points[point + 1].at - points[point].at,
            *request.rates.indexOf(points[point].mode), points[point].climb.there};
}

LastKnown lastKnown(const PlanRequest& request, const Plan& plan, const Gap& leg)
{
    LastKnown known{request.tank.start, request.tank.driven};
    std::size_t since = 0;
    for (const PlannedStop& stop : plan.stops) {
        if (stop.point > leg.from || !stop.known)
            continue;
        since = stop.point;
        known = {{Volume(), request.tank.fullSd}, {}};
    }
    for (std::size_t i = since; i < leg.from; ++i)
        known.driven.push_back(sectionFrom(request, i));
    known.fuel.mean = plan.passages[leg.from].leave + request.rates.burntOver(known.driven);
    return known;
}

// The law of the fuel aboard on leaving `leg.from`, down to `limit`.
RangeLaw lawOf(const PlanRequest& request, const Plan& plan, const Gap& leg, Volume limit)
{
    LastKnown known = lastKnown(request, plan, leg);
    RangeBasis basis;
    basis.rates = request.rates;
    basis.driven = std::move(known.driven);
    basis.fuel = {known.fuel.mean - limit, known.fuel.sd};
    for (std::size_t i = leg.from; i + 1 < request.route.points.size(); ++i) {
        basis.legs.push_back(sectionFrom(request, i));
        if (i < leg.to) // what idling burns
            basis.fuel.mean -=
                plan.passages[i + 1].used - request.rates.burntOver({&basis.legs.back(), 1});
    }
    if (limit == Volume())
        basis.surge = request.tank.surge;
    Result<RangeLaw> law = RangeLaw::make(std::move(basis));
    assert(law); // the planner has accepted these numbers
    return std::move(*law);
}

} // namespace

std::vector<LegHorizon> planHorizons(const PlanRequest& request, const Plan& plan, int bands,
                                     const HorizonNames& names)
{
    assert(plan.feasible);
    const auto& points = request.route.points;
    std::vector<LegHorizon> horizons;
    for (const Gap& leg : plan.gaps) {
        const Distance start = points[leg.from].at;
        if (!(points.back().at > start))
            continue;
        HorizonRequest wish;
        wish.length = points.back().at - start;
        wish.bands = bands;
        wish.characterWidth = names.characterWidth;
        wish.labelRows = names.labelRows;
        for (std::size_t i = leg.from + 1; i + 1 < points.size(); ++i) {
            if (sellsFuel(request.rules, points[i]) || std::ranges::find(plan.stops, i, &PlannedStop::point) != plan.stops.end())
                wish.places.push_back({points[i].name, points[i].at - start});
        }
        const RangeLaw toDry = lawOf(request, plan, leg, Volume());
        const auto zero = request.tank.zeroMark;
        const RangeLaw toZero = zero ? lawOf(request, plan, leg, *zero) : toDry;
        LegHorizon one{leg.from, leg.to, horizon(toZero, toDry, wish)};
        if (!zero) {
            one.strip.zeroPost.reset();
            one.strip.sureToZero.reset();
            one.strip.tail.reset();
        }
        horizons.push_back(std::move(one));
    }
    return horizons;
}

} // namespace undermark
