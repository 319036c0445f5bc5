// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/plan.h"

#include "engine/planning/evaluate.h"
#include "engine/planning/greedy.h"
#include "engine/planning/rules.h"
#include "engine/planning/search.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace planning {

namespace {

// Up to here the search is quick as well, and of plans of equal cost it finds
// one with fewer stops, which the greedy does not look for.
constexpr int kSearchFirst = 2'000;

Plan planAt(const PlanRequest& request, const Problem& problem)
{
    if (problem.points > kSearchFirst && isPriceOnly(problem)) {
        if (const auto purchases = cheapestByPriceOnly(problem))
            return evaluate(request, problem, *purchases);
    }
    const SearchResult result = search(problem);
    return result.stuckBefore ? infeasible(request, problem, result)
                              : evaluate(request, problem, result.purchases);
}

// The confidence of each arrival is raised until the whole way's risk is what
// was asked for: bisection on the normal quantile.
Plan planForTrip(const PlanRequest& request, Problem problem)
{
    const double allowed = 1.0 - request.tripConfidence->value();
    Plan best = planAt(request, problem);
    if (!best.feasible || best.floorRisk <= allowed)
        return best;
    double tooLow = problem.z;
    double enough = 8.0;
    problem.z = enough;
    best = planAt(request, problem);
    for (int i = 0; i < 24 && enough - tooLow > 1e-4; ++i) {
        problem.z = (tooLow + enough) / 2;
        Plan tried = planAt(request, problem);
        // Nobody reaches the finish at this confidence: the answer must lie below.
        const bool works = tried.feasible && tried.floorRisk <= allowed;
        const bool low = tried.feasible && !works;
        if (works || !best.feasible)
            best = low ? best : std::move(tried);
        (low ? tooLow : enough) = problem.z;
    }
    return best;
}

Plan planOnce(const PlanRequest& request, const Problem& problem)
{
    return request.tripConfidence ? planForTrip(request, problem) : planAt(request, problem);
}

bool isOpenAt(const RoutePoint& point, double minutes)
{
    const double clock = std::fmod(minutes, 24 * 60);
    const double opens = point.opens.value_or(Minutes(0)).count();
    const double closes = point.closes.value_or(Minutes(24 * 60)).count();
    return opens <= closes ? clock >= opens && clock <= closes : clock >= opens || clock <= closes;
}

// The first stop that is reached outside its opening hours.
std::optional<std::size_t> firstClosed(const PlanRequest& request, const Plan& plan)
{
    const auto& points = request.route.points;
    double minutes = request.departure->count();
    Distance at = points.front().at;
    for (const PlannedStop& stop : plan.stops) {
        const RoutePoint& point = points[stop.point];
        minutes += 60 * (point.at - at).km() / request.speed->kmPerHour();
        at = point.at;
        if (!isOpenAt(point, minutes))
            return stop.point;
        minutes += point.stopTime.value_or(Minutes{}).count();
        if (request.pumpFlow)
            minutes += 60 * stop.buy.litres() / request.pumpFlow->litresPerHour();
        if (point.detour)
            minutes += 60 * point.detour->km() / request.speed->kmPerHour();
    }
    return std::nullopt;
}

// Opening hours: whatever a plan would find closed is taken off the route, and
// the rest is planned again. Every plan returned keeps the hours; that none of
// them is better is not proven, which the plan's note says.
Plan planWithinHours(const PlanRequest& request, Problem problem)
{
    Plan best = planOnce(request, problem);
    if (!request.departure || !request.speed) {
        best.notes.push_back("opening hours are not looked at: they need a departure and a speed");
        return best;
    }
    while (const auto closed = firstClosed(request, best)) {
        problem.offers[*closed].open = false;
        best = planOnce(request, problem);
        best.notes = {"some points were closed on arrival; the plan avoids them, "
                      "but another order of stops might suit the hours better"};
    }
    return best;
}

} // namespace

} // namespace planning

RateModel RateModel::single(Estimate<Consumption> rate, double legNoiseSd)
{
    const double sd = rate.sd.litresPerKm();
    RateModel model;
    model.mean = {rate.mean};
    model.covariance = {sd * sd};
    model.legNoiseSd = legNoiseSd;
    return model;
}

Result<Plan> plan(const PlanRequest& request)
{
    const Result<planning::Problem> problem = planning::makeProblem(request);
    if (!problem)
        return fail(problem.error());
    Plan answer = problem->hasHours ? planning::planWithinHours(request, *problem)
                                    : planning::planOnce(request, *problem);
    answer.rules = planning::checkRules(request, *problem);
    return answer;
}

} // namespace undermark
