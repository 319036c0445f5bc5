// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/small_stops.h"

#include <algorithm>

namespace undermark::planning {

namespace {

constexpr std::size_t kMostLookedAt = 20;

double dearest(const PlanRequest& request)
{
    double price = 0.0;
    for (const RoutePoint& point : request.route.points)
        price = std::max(price, point.pricePerLitre.value_or(0.0));
    return price;
}

Plan solvedAsAsked(const PlanRequest& request, const Problem& problem, const GoOn& goOn)
{
    return request.tripConfidence ? solveForTrip(request, problem, goOn).plan
                                  : solve(request, problem).plan;
}

Offer& offerAt(Problem& problem, const PlannedStop& stop)
{
    return problem.offers[stop.point];
}

class SmallStops {
public:
    SmallStops(const PlanRequest& request, const Problem& problem, const GoOn& goOn)
        : m_request(request), m_problem(problem), m_goOn(goOn),
          m_plan(solvedAsAsked(request, problem, goOn))
    {
    }

    Plan answer() &&
    {
        for (std::size_t k = 0; k < kMostLookedAt; ++k) {
            const auto small = std::ranges::find_if(
                m_plan.stops, [this](const PlannedStop& stop) { return isSmall(stop); });
            if (small == m_plan.stops.end())
                break;
            if (m_goOn && !m_goOn(m_plan.tripGap)) {
                m_plan.stopped = true;
                break;
            }
            if (const PlannedStop stop = *small; !leftOut(stop))
                makeLarger(stop);
        }
        for (PlannedStop& stop : m_plan.stops) {
            const auto kept = std::ranges::find(m_kept, stop.point, &Kept::point);
            if (kept != m_kept.end())
                stop.why = kept->why;
        }
        return std::move(m_plan);
    }

private:
    struct Kept {
        std::size_t point;
        Sentence why;
    };

    bool isSmall(const PlannedStop& stop) const
    {
        return stop.buy < m_request.leastStop &&
               sellsFuel(m_request.rules, m_request.route.points[stop.point]) &&
               std::ranges::find(m_kept, stop.point, &Kept::point) == m_kept.end();
    }

    bool leftOut(const PlannedStop& stop)
    {
        Problem without = m_problem;
        offerAt(without, stop).open = false;
        Plan other = solvedAsAsked(m_request, without, m_goOn);
        const double mayCost = m_request.leastStop.litres() * dearest(m_request);
        if (other.feasible && other.stops.size() < m_plan.stops.size() &&
            other.cost <= m_plan.cost + mayCost) {
            m_problem = std::move(without);
            m_plan = std::move(other);
            return true;
        }
        m_kept.push_back({stop.point, other.feasible
                                          ? Sentence::of("little, but the way without it is dearer")
                                          : Sentence::of("needed: without it the fuel does not last")});
        return false;
    }

    void makeLarger(const PlannedStop& stop)
    {
        Problem larger = m_problem;
        Offer& offer = offerAt(larger, stop);
        offer.least = std::min(m_request.leastStop.litres(), offer.most);
        Plan other = solvedAsAsked(m_request, larger, m_goOn);
        if (!other.feasible || other.stops.size() > m_plan.stops.size())
            return;
        m_problem = std::move(larger);
        m_plan = std::move(other);
    }

    const PlanRequest& m_request;
    Problem m_problem;
    const GoOn& m_goOn;
    Plan m_plan;
    std::vector<Kept> m_kept; // looked at, and not left out
};

} // namespace

Plan solveWithoutSmallStops(const PlanRequest& request, const Problem& problem, const GoOn& goOn)
{
    if (!(request.leastStop > Volume()))
        return solvedAsAsked(request, problem, goOn);
    return SmallStops(request, problem, goOn).answer();
}

} // namespace undermark::planning
