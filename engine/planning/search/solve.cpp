// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/solve.h"

#include "engine/planning/evaluate.h"
#include "engine/planning/search/search.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

// Up to here closed places are taken off one by one where the exact search gave up.
constexpr int kOneByOne = 200;

// The places that are closed when they are passed: of the purchases, or of all.
enum class Among { purchases, all };
std::vector<std::size_t> closedPlaces(const Problem& problem,
                                      const std::vector<Purchase>& purchases, Among among)
{
    const Timetable& table = *problem.timetable;
    std::vector<std::size_t> closed;
    double supply = problem.start;
    double stopped = 0.0;
    auto next = purchases.begin();
    for (int i = 0; i < problem.points; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const bool buys = next != purchases.end() && next->point == i;
        if ((buys || among == Among::all) &&
            !table.isOpen(i, table.clock(problem.at[at], supply, stopped)))
            closed.push_back(at);
        if (!buys)
            continue;
        supply += next->litres - problem.offers[at].detourLitres;
        stopped += table.stopMinutes[at];
        ++next;
    }
    return closed;
}

bool keepsHours(const Problem& problem, const std::vector<Purchase>& purchases)
{
    return closedPlaces(problem, purchases, Among::purchases).empty();
}

// The first stop that would be found closed is taken off the route (on long routes
// every place that is closed when passed), and the rest is planned again: hours are
// kept, but another order of stops might be better.
SearchResult withoutClosed(Problem problem, SearchResult result)
{
    while (!result.stuckBefore && !keepsHours(problem, result.purchases)) {
        const bool oneByOne = problem.points <= kOneByOne;
        std::vector<std::size_t> closed =
            closedPlaces(problem, result.purchases, oneByOne ? Among::purchases : Among::all);
        if (oneByOne)
            closed.resize(1);
        for (const std::size_t point : closed)
            problem.offers[point].open = false;
        result = search(problem);
    }
    return result;
}

Solved solved(const PlanRequest& request, const Problem& problem, const SearchResult& result)
{
    if (result.stuckBefore)
        return {infeasible(request, problem, result), kNoLimit};
    return {evaluate(request, problem, result.purchases), result.objective};
}

Sentence gapNote(Aim aim, double gap)
{
    const Part saved = amount(gap, Digits::significant(3));
    switch (aim) {
    case Aim::cost:
        return Sentence::of(
            "another plan for the confidence of the whole way could save %1 of cost at most",
            saved);
    case Aim::stops:
        return Sentence::of(
            "another plan for the confidence of the whole way could save %1 stops at most",
            saved);
    case Aim::time:
        return Sentence::of(
            "another plan for the confidence of the whole way could save %1 minutes at most",
            saved);
    case Aim::weight:
        break;
    }
    return Sentence::of(
        "another plan for the confidence of the whole way could save %1 litre-km at most",
        saved);
}

// What another plan could save is said from this share of the objective on.
constexpr double kNoticedGap = 0.01;

} // namespace

Solved solve(const PlanRequest& request, const Problem& problem)
{
    SearchResult result = search(problem); // mostly it keeps the hours as it is
    if (!problem.timetable || result.stuckBefore || keepsHours(problem, result.purchases))
        return solved(request, problem, result);
    SearchResult kept = search(problem, Hours::kept);
    const bool gaveUp = kept.gaveUp;
    Solved answer =
        solved(request, problem, gaveUp ? withoutClosed(problem, std::move(result)) : kept);
    if (!answer.plan.feasible)
        answer.plan.notes.push_back(Sentence::of(
            "opening hours stand in the way: with all places open there would be a plan"));
    if (gaveUp)
        answer.plan.notes.push_back(Sentence::of(
            "too many ways to be late: places closed on arrival are avoided, but another "
            "order of stops might suit the hours better"));
    return answer;
}

// Whoever keeps the whole way's confidence keeps it on each arrival too, so the best plan
// that does only that is a bound for all. From there on by bisection of the quantile; with
// the risk shared among all points it fits for certain.
Solved solveForTrip(const PlanRequest& request, const Problem& problem)
{
    const double allowed = 1 - request.tripConfidence->value();
    Problem shared = problem;
    const auto at = [&](const AllowedRisk& share) {
        shared.shared = share;
        return solve(request, shared);
    };
    const auto fits = [&](const Solved& tried) { return tried.plan.floorRisk <= allowed; };
    AllowedRisk tooMuch = AllowedRisk::of(allowed);
    Solved best = at(tooMuch);
    if (!best.plan.feasible || fits(best))
        return best;
    const double bound = best.objective;
    AllowedRisk little = AllowedRisk::of(allowed / (problem.points - 1));
    best = at(little);
    while (little.z - tooMuch.z > 1e-4) {
        const AllowedRisk middle = AllowedRisk::ofQuantile((tooMuch.z + little.z) / 2);
        Solved tried = at(middle);
        const bool risky = tried.plan.feasible && !fits(tried);
        (risky ? tooMuch : little) = middle;
        if (!risky && !(best.plan.feasible && best.objective <= tried.objective))
            best = std::move(tried);
    }
    if (!best.plan.feasible)
        best.plan.notes.push_back(Sentence::of(
            "no plan was found for the confidence of the whole way with equal confidence "
            "on every arrival; one with unequal confidence is not ruled out"));
    else {
        best.plan.tripGap = std::max(best.objective - bound, 0.0);
        if (best.plan.tripGap > kNoticedGap * std::fabs(best.objective))
            best.plan.notes.push_back(gapNote(request.aim, best.plan.tripGap));
    }
    return best;
}

} // namespace undermark::planning
