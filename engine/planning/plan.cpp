// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/plan.h"

#include "engine/planning/rules.h"
#include "engine/planning/solve.h"

namespace undermark {

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
    Plan answer = (request.tripConfidence ? planning::solveForTrip(request, *problem)
                                          : planning::solve(request, *problem))
                      .plan;
    if (problem->hasHours && !problem->timetable)
        answer.notes.emplace_back(
            "opening hours are not looked at: they need a departure and a speed");
    answer.rules = planning::checkRules(request, *problem);
    return answer;
}

} // namespace undermark
