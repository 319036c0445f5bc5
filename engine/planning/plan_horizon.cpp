// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/plan_horizon.h"

#include "engine/planning/route_rates.h"

#include <cassert>

namespace undermark {

namespace {

// Where the level was last known before one leaves `leg.from`, and what is
// counted as aboard there: everything poured in since included.
struct LastKnown {
    std::size_t point = 0;
    Estimate<Volume> fuel;
};

LastKnown lastKnown(const PlanRequest& request, const Plan& plan, const Gap& leg)
{
    LastKnown known{0, request.tank.start};
    for (const PlannedStop& stop : plan.stops) {
        if (stop.point > leg.from)
            break;
        const Passage& passage = plan.passages[stop.point];
        if (stop.known)
            known = {stop.point, {passage.leave, request.tank.fullSd}};
        else
            known.fuel.mean += passage.leave - passage.arrive.mean;
    }
    return known;
}

// The law of the fuel aboard on leaving `leg.from`, down to `limit`.
RangeLaw lawOf(const PlanRequest& request, const Plan& plan, const Gap& leg, Volume limit)
{
    const auto& points = request.route.points;
    const LastKnown known = lastKnown(request, plan, leg);
    RangeBasis basis;
    basis.fuel = {known.fuel.mean - limit, known.fuel.sd};
    basis.rates = request.rates.mean;
    basis.rateCovariance = request.rates.covariance;
    basis.routeVarianceL2PerKm = request.rates.legNoiseSd * request.rates.legNoiseSd;
    for (std::size_t i = known.point; i + 1 < points.size(); ++i) {
        const RouteLeg road{points[i + 1].at - points[i].at, *planning::modeOf(request.rates, points[i])};
        basis.legs.push_back(road);
        if (i < leg.to) // what idling burnt
            basis.fuel.mean -= plan.passages[i + 1].used - basis.rates[road.mode] * road.length;
    }
    const Result<RangeLaw> law = RangeLaw::make(std::move(basis));
    assert(law); // the planner has accepted these numbers
    return law->after(points[leg.from].at - points[known.point].at);
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
            if (sellsFuel(request.rules, points[i]))
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
