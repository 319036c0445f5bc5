// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/plan.h"

#include "engine/planning/plan_problem.h"
#include "engine/planning/rules.h"
#include "engine/planning/search/small_stops.h"

#include <algorithm>

namespace undermark {

FlowRate pumpFlowOf(const PlanRequest& request)
{
    return request.pumpFlow.value_or(FlowRate::fromLitresPerHour(40 * 60));
}

Minutes pouringTime(const PlanRequest& request, Volume poured)
{
    return Minutes(60.0 * poured.litres() / pumpFlowOf(request).litresPerHour());
}

Minutes drivingTime(Speed speed, Distance way)
{
    return Minutes(60.0 * way.km() / speed.kmPerHour());
}

Speed speedIn(const PlanRequest& request, const std::string& mode)
{
    const auto own = std::ranges::find(request.modeSpeeds, mode, &ModeSpeed::mode);
    return own != request.modeSpeeds.end() ? own->speed : *request.speed;
}

std::vector<Minutes> timesOnTheWay(const PlanRequest& request)
{
    const auto& points = request.route.points;
    std::vector<Minutes> times(points.size(), Minutes{});
    for (std::size_t i = 1; i < points.size(); ++i) {
        const RoutePoint& from = points[i - 1];
        times[i] = times[i - 1] + (from.idle.value_or(Minutes{}) + from.rest.value_or(Minutes{})) +
                   drivingTime(speedIn(request, from.mode), points[i].at - from.at);
    }
    return times;
}

Minutes stoppingTime(const PlanRequest& request, const RoutePoint& point)
{
    const bool takesTime = point.detour && request.speed;
    return point.stopTime.value_or(Minutes{}) +
           (takesTime ? drivingTime(speedIn(request, point.mode), *point.detour) : Minutes{});
}

bool sellsFuel(const Rules& rules, const RoutePoint& point)
{
    return point.fuel == FuelSource::zone || (point.fuel == FuelSource::pump && !rules.zonesOnly);
}

namespace {

constexpr Minutes kLateWorthSaying{0.5};

// Due times are told, not planned for.
void noteLate(const PlanRequest& request, Plan& answer)
{
    for (const Passage& passage : answer.passages) {
        if (passage.late && *passage.late >= kLateWorthSaying)
            answer.notes.push_back(Sentence::of("late at %1 by %2 min",
                                                request.route.points[passage.point].name,
                                                amount(passage.late->count(), 0)));
    }
}

// A stage's own confidence may ask for more than there is.
void noteStages(const PlanRequest& request, Plan& answer)
{
    if (answer.feasible || !request.stageConfidence || answer.stopped)
        return;
    PlanRequest alike = request;
    alike.stageConfidence.reset();
    alike.leastStop = Volume();
    if (const Result<Plan> other = plan(alike); other && other->feasible)
        answer.notes.push_back(Sentence::of(
            "with the same confidence on timed sections as elsewhere there would be a plan"));
}

} // namespace

Plan planning::planProblem(const PlanRequest& request, const Problem& problem, const GoOn& goOn)
{
    Plan answer = solveWithoutSmallStops(request, problem, goOn);
    if (problem.hasHours && !problem.timetable)
        answer.notes.push_back(
            Sentence::of("opening hours are not looked at: they need a departure and a speed"));
    const auto& points = request.route.points;
    if (!(problem.timetable && request.departureDay) &&
        std::ranges::any_of(points, [](const RoutePoint& p) { return p.firstDay || p.lastDay; }))
        answer.notes.push_back(
            Sentence::of("dates are not looked at: they need the day and time of the departure, and a speed"));
    if (request.aim == Aim::time && !request.speed &&
        std::ranges::any_of(points, [](const RoutePoint& p) { return p.detour.has_value(); }))
        answer.notes.push_back(
            Sentence::of("detours are counted without minutes: they need a speed"));
    if (!problem.timetable &&
        std::ranges::any_of(points, [](const RoutePoint& p) { return p.due.has_value(); }))
        answer.notes.push_back(
            Sentence::of("due times are not looked at: they need a departure and a speed"));
    noteLate(request, answer);
    noteStages(request, answer);
    answer.rules = checkRules(request, problem);
    return answer;
}

int cansPoured(const PlanRequest& request, const Plan& plan, FuelSource from, Distance until)
{
    int cans = 0;
    for (const PlannedStop& stop : plan.stops)
        if (const RoutePoint& point = request.route.points[stop.point]; point.at < until && point.fuel == from)
            cans += stop.cans;
    return cans;
}

Result<Plan> plan(const PlanRequest& request, const GoOn& goOn)
{
    const Result<planning::Problem> problem = planning::makeProblem(request);
    if (!problem)
        return fail(problem.error());
    return planning::planProblem(request, *problem, goOn);
}

} // namespace undermark
