// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/any_closure.h"

#include "engine/planning/left_of_plan.h"
#include "engine/planning/plan_problem.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr int kMostRounds = 200; // of asking for more; then stops are given up one by one
constexpr double kHair = 1e-8;   // L

using planning::Problem;

class AnyClosure {
public:
    AnyClosure(const PlanRequest& request, Problem problem, const GoOn& goOn)
        : m_request(request), m_problem(std::move(problem)), m_goOn(goOn)
    {
    }

    Result<ForAnyClosure> answer() &&
    {
        for (;; ++m_round) {
            m_answer.closed.clear();
            m_answer.plan = planning::planProblem(m_request, m_problem, m_goOn);
            if (!m_answer.plan.feasible)
                return std::move(m_answer);
            const Result<bool> enough = survives();
            if (!enough)
                return fail(enough.error());
            if (*enough)
                return std::move(m_answer);
        }
    }

private:
    // Else more is asked for where it did not. From the finish back, since what a stop lacks
    // often changes those before it.
    Result<bool> survives()
    {
        bool all = true;
        for (auto stop = m_answer.plan.stops.rbegin(); stop != m_answer.plan.stops.rend(); ++stop) {
            if (stop->point == 0)
                continue;
            Result<ClosedStop> closed = restFrom(*stop);
            if (!closed)
                return fail(closed.error());
            if (!closed->plan.feasible) {
                askForMore(*stop, closed->plan.shortfall->missing);
                all = false;
            }
            m_answer.closed.insert(m_answer.closed.begin(), std::move(*closed));
        }
        return all;
    }

    void askForMore(const PlannedStop& stop, Volume missing)
    {
        const RoutePoint& point = m_request.route.points[stop.point];
        planning::Offer& offer = m_problem.offers[stop.point];
        const double asked = (stop.arrive.mean + missing).litres();
        const bool isMore = asked > offer.arriveWith + kHair; // else rounding stands in the way
        offer.arriveWith = isMore ? asked : offer.arriveWith + kHair;
        if (offer.arriveWith <= m_problem.capacity && m_round < kMostRounds)
            return;
        offer.open = false; // no tank is enough, mostly
        m_answer.hopeless.push_back(Sentence::of("no stop is planned at %1: were it closed, the "
                                                 "fuel would not last to another",
                                                 point.name));
    }

    // From the road beside the stop, which is closed: there and back for nothing.
    Result<ClosedStop> restFrom(const PlannedStop& stop) const
    {
        const RoutePoint& point = m_request.route.points[stop.point];
        Result<PlanRequest> rest = leftOfPlan(m_request, m_answer.plan, point.at);
        if (!rest)
            return fail(rest.error());
        auto& points = rest->route.points; // places at the same km come before it, maybe
        points.erase(points.begin(), std::ranges::find(points, point));
        points.front().fuel = FuelSource::none;
        rest->leastStop = Volume();
        const double detour = m_problem.offers[stop.point].detourLitres;
        rest->tank.start.mean = Volume::fromLitres(
            std::max(m_answer.plan.passages[stop.point].arrive.mean.litres() - detour, 0.0));
        if (point.detour)
            rest->tank.driven.push_back({*point.detour, *m_request.rates.indexOf(point.mode)});
        const Result<Plan> answer = plan(*rest, m_goOn);
        if (!answer)
            return fail(answer.error());
        return ClosedStop{std::move(*rest), *answer};
    }

    const PlanRequest& m_request;
    Problem m_problem;
    const GoOn& m_goOn;
    int m_round = 0;
    ForAnyClosure m_answer;
};

} // namespace

Result<ForAnyClosure> planForAnyClosure(const PlanRequest& request, const GoOn& goOn)
{
    Result<Problem> problem = planning::makeProblem(request);
    if (!problem)
        return fail(problem.error());
    return AnyClosure(request, std::move(*problem), goOn).answer();
}

} // namespace undermark
