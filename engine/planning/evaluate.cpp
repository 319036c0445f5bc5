// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/evaluate.h"

#include "engine/planning/risk/trip_risk.h"
#include "engine/planning/turning_back.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr int kLookedAhead = 1'000; // points

Volume litres(double value)
{
    return Volume::fromLitres(value);
}

// Walks along the route once.
class Walk {
public:
    Walk(const PlanRequest& request, const Problem& problem)
        : m_request(request), m_problem(problem)
    {
    }

    Plan run(const std::vector<Purchase>& purchases)
    {
        m_plan.feasible = true;
        m_level = m_problem.start;
        m_plan.passages.reserve(static_cast<std::size_t>(m_problem.points));
        m_plan.stops.reserve(purchases.size());
        auto next = purchases.begin();
        for (int i = 0; i < m_problem.points; ++i) {
            pass(i);
            if (next != purchases.end() && next->point == i)
                stop(*next++);
            m_plan.passages.back().leave = litres(m_level);
        }
        finish(purchases);
        return std::move(m_plan);
    }

private:
    void pass(int i)
    {
        const auto at = static_cast<std::size_t>(i);
        Passage passage;
        passage.point = at;
        const LevelSpread spread = m_problem.uncertain ? m_problem.spread(m_run, i) : LevelSpread{};
        const double sd = std::sqrt(varianceOf(spread, m_problem.worlds));
        if (i > 0) {
            const double used = m_problem.fuelTo[at] - m_problem.fuelTo[at - 1];
            const double km = m_problem.at[at] - m_problem.at[at - 1];
            if (m_problem.counts(i - 1))
                m_plan.litreKm += (m_level - used / 2) * km;
            m_level -= used;
            passage.used = litres(used);
            if (m_problem.climbMode != kNoMode) {
                const double height = m_problem.kmBetween(i - 1, i, m_problem.climbMode);
                const Estimate<Consumption>& rate = m_request.rates.climb;
                passage.climb = {rate.mean * Distance::fromKm(height), rate.sd * Distance::fromKm(std::fabs(height))};
            }
            passage.belowFloor =
                riskBelow(m_level - m_problem.floorAt(i), spread, m_problem.worlds);
            passage.dry = riskBelow(m_level - m_problem.dryAt(i), spread, m_problem.worlds);
            const double margin =
                m_level - m_problem.leastAt(i) - m_problem.room(m_problem.allowedAt(i), spread);
            passage.margin = litres(margin);
            const double rate = km > 0 && used > 0 ? used / km : m_request.rates.mean.front().litresPerKm();
            passage.marginDistance = Distance::fromKm(margin / rate);
        }
        passage.arrive = {litres(m_level), litres(sd)};
        passage.sure = litres(m_level - m_problem.room(m_sure, spread));
        if (m_problem.timetable)
            passage.clock = Minutes(m_problem.timetable->departure + m_problem.timetable->onTheWay[at]) +
                            m_plan.stopTime;
        if (const auto& due = m_request.route.points[at].due; due && passage.clock)
            passage.late = Minutes(std::remainder((*passage.clock - *due).count(), 24 * 60.0));
        if (m_problem.offers[at].open && i + 1 < m_problem.points) {
            const int next = nextFuel(i);
            passage.goPast = GoPast{litres(m_problem.enoughTo(m_run, i, next)), std::size_t(next)};
        }
        m_plan.passages.push_back(passage);
    }

    // Behind point i: fuel that can be had when one passes there without a stop here, or the finish.
    int nextFuel(int i) const
    {
        const auto& table = m_problem.timetable;
        const int last = std::min(m_problem.points - 1, i + kLookedAhead); // where all are closed
        for (int k = i + 1; k < last; ++k) {
            if (!m_problem.offers[std::size_t(k)].open)
                continue;
            if (!table || table->waitAt(k, table->departure + table->onTheWay[std::size_t(k)] +
                                               m_plan.stopTime.count()) <= table->mostWait)
                return k;
        }
        return m_problem.points - 1;
    }

    void stop(const Purchase& purchase)
    {
        const auto at = static_cast<std::size_t>(purchase.point);
        const RoutePoint& point = m_request.route.points[at];
        const double detour = m_problem.offers[at].detourLitres;
        const Run there = m_problem.withDetour(m_run, purchase.point, 0.5);
        const double variance = varianceOf(m_problem.spread(there, purchase.point), m_problem.worlds);
        PlannedStop stop;
        stop.point = at;
        stop.buy = litres(purchase.litres);
        stop.cans = purchase.cans;
        stop.arrive = {litres(m_level - detour / 2), litres(std::sqrt(variance))};
        m_level += purchase.litres - detour;
        stop.leave = litres(m_level + detour / 2);
        stop.toFull = purchase.full ||
                      (!m_problem.uncertain && stop.leave.litres() > m_problem.capacity - 1e-6);
        stop.known = purchase.full;
        if (stop.toFull)
            stop.buySd = litres(std::sqrt(variance + m_problem.fullVariance));
        stop.cost = point.pricePerLitre.value_or(0.0) * purchase.litres + m_request.stopCost;
        if (m_problem.timetable)
            stop.wait = Minutes(m_problem.timetable->waitAt(
                purchase.point, m_plan.passages.back().clock->count()));
        m_plan.bought += stop.buy;
        m_plan.cost += stop.cost;
        m_plan.stopTime += stop.wait + stoppingTime(m_request, point) + pouringTime(m_request, stop.buy);
        m_run = purchase.full ? Run{purchase.point}
                              : m_problem.withDetour(m_run, purchase.point, 1.0);
        m_plan.stops.push_back(stop);
    }

    void finish(const std::vector<Purchase>& purchases)
    {
        m_plan.finish = m_plan.passages.back().arrive;
        const TripRisk risk = riskOfTrip(m_problem, arrivalsOf(m_problem, purchases));
        m_plan.dryRisk = risk.dry;
        m_plan.floorRisk = risk.belowFloor;
        addGaps();
    }

    void addGaps()
    {
        std::vector<std::size_t> ends;
        ends.reserve(m_plan.stops.size() + 1);
        m_plan.gaps.reserve(m_plan.stops.size() + 1);
        for (const PlannedStop& stop : m_plan.stops)
            ends.push_back(stop.point);
        ends.push_back(m_plan.passages.size() - 1);
        std::size_t from = 0;
        Run run;
        auto stop = m_plan.stops.begin();
        for (const std::size_t to : ends) {
            if (to > from) {
                const bool atStop = stop != m_plan.stops.begin();
                m_plan.gaps.push_back(turningBack(
                    m_request, m_problem,
                    {run, int(from), int(to), m_plan.passages[from].leave.litres(), atStop}));
            }
            if (stop != m_plan.stops.end()) {
                const int point = int(stop->point);
                run = stop->known ? Run{point} : m_problem.withDetour(std::move(run), point, 1.0);
                ++stop;
            }
            from = to;
        }
    }

    const PlanRequest& m_request;
    const Problem& m_problem;
    const AllowedRisk m_sure = AllowedRisk::of(0.01);
    Plan m_plan;
    double m_level = 0.0;
    Run m_run;
};

// Of the level after a part of a section.
LevelSpread inside(const Problem& problem, int since, int section, double part)
{
    return problem.spreadOver(problem.knownVariance(since), [&](int m) {
        return problem.km(since, section, m) + part * problem.kmBetween(section, section + 1, m);
    });
}

// How many km of a section a level lasts to the floor, at the confidence.
double kmInto(const Problem& problem, const PlanRequest& request, int since, double supply,
              int section)
{
    const auto at = static_cast<std::size_t>(section);
    const auto& points = request.route.points;
    const double length = (points[at + 1].at - points[at].at).km();
    const double limit = problem.floorAt(section + 1);
    double lowest = 0.0;
    double highest = 1.0;
    for (int i = 0; i < 60; ++i) {
        const double part = (lowest + highest) / 2;
        const double fuel =
            problem.fuelTo[at] + part * (problem.fuelTo[at + 1] - problem.fuelTo[at]);
        const double least =
            fuel + limit + problem.room(problem.allowedAt(section + 1), inside(problem, since, section, part));
        (least <= supply ? lowest : highest) = part;
    }
    return lowest * length;
}

} // namespace

Plan evaluate(const PlanRequest& request, const Problem& problem,
              const std::vector<Purchase>& purchases)
{
    return Walk(request, problem).run(purchases);
}

Plan infeasible(const PlanRequest& request, const Problem& problem, const SearchResult& result)
{
    const auto& points = request.route.points;
    const int stuck = *result.stuckBefore;
    int next = stuck;
    while (next + 1 < problem.points && !problem.offers[static_cast<std::size_t>(next)].open)
        ++next;
    Shortfall shortfall;
    shortfall.from = static_cast<std::size_t>(stuck - 1);
    shortfall.towards = static_cast<std::size_t>(next);
    double farthest = 0.0;
    double missing = kNoLimit;
    for (const auto& [since, supply] : result.lastReached) {
        farthest = std::max(farthest, kmInto(problem, request, since, supply, stuck - 1));
        missing = std::min(missing, problem.leastSupply(since, next) - supply);
    }
    shortfall.farthest = points[shortfall.from].at + Distance::fromKm(farthest);
    shortfall.missing = litres(missing);
    Plan plan;
    plan.shortfall = shortfall;
    return plan;
}

} // namespace undermark::planning
