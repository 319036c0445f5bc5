// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/plan.h"

#include "engine/planning/evaluate.h"
#include "engine/planning/greedy.h"
#include "engine/planning/search.h"

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
    return request.tripConfidence ? planning::planForTrip(request, *problem)
                                  : planning::planAt(request, *problem);
}

} // namespace undermark
