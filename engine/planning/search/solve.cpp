// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/solve.h"

#include "engine/planning/evaluate.h"
#include "engine/planning/risk/risk.h"
#include "engine/planning/search/search.h"
#include "engine/planning/search/trip_search.h"

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

// A plan for a higher confidence of each arrival, by its normal quantile: to begin
// with, and what is left where too much would have to be looked at.
class EqualShares {
public:
    EqualShares(const PlanRequest& request, const Problem& problem)
        : m_request(request), m_problem(problem), m_allowed(1 - request.tripConfidence->value())
    {
    }

    // The best that keeps the risk; else one without a plan.
    Solved run()
    {
        const double lowest = std::max(m_problem.z, quantileForRisk(m_allowed));
        consider(at(lowest));
        if (m_best) // no arrival can be let have less
            return std::move(*m_best);
        // With the risk shared equally among all points it fits for certain.
        const double safe = quantileForRisk(m_allowed / (m_problem.points - 1));
        const double highest = narrow(lowest, std::max(safe, lowest));
        constexpr int kSamples = 8; // the risk need not fall steadily
        for (int i = 1; i < kSamples; ++i)
            consider(at(lowest + (highest - lowest) * i / kSamples));
        return std::move(m_best ? *m_best : *m_infeasible);
    }

private:
    Solved at(double z)
    {
        m_problem.z = z;
        return solve(m_request, m_problem);
    }

    void consider(Solved tried)
    {
        const bool fits = tried.plan.feasible && tried.plan.floorRisk <= m_allowed;
        if (fits && (!m_best || tried.objective < m_best->objective))
            m_best = std::move(tried);
        else if (!tried.plan.feasible)
            m_infeasible = std::move(tried);
    }

    // Bisection for the least confidence that fits, or cannot be kept.
    double narrow(double tooLow, double enough)
    {
        consider(at(enough));
        while (enough - tooLow > 1e-4) {
            const double middle = (tooLow + enough) / 2;
            Solved tried = at(middle);
            const bool risky = tried.plan.feasible && tried.plan.floorRisk > m_allowed;
            (risky ? tooLow : enough) = middle;
            consider(std::move(tried));
        }
        return enough;
    }

    const PlanRequest& m_request;
    Problem m_problem;
    double m_allowed;
    std::optional<Solved> m_best;
    std::optional<Solved> m_infeasible; // the last one: the least confidence tried
};

void noteGap(const PlanRequest& request, Solved& answer, double bound)
{
    answer.plan.tripGap = std::max(answer.objective - bound, 0.0);
    if (answer.plan.tripGap > 1e-4)
        answer.plan.notes.push_back(gapNote(request.aim, answer.plan.tripGap));
}

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

Solved solveForTrip(const PlanRequest& request, const Problem& problem, std::size_t mostWork)
{
    const TripSearchResult found =
        searchForTrip(problem, 1 - request.tripConfidence->value(), mostWork);
    std::optional<Solved> best;
    if (found.purchases)
        best = Solved{evaluate(request, problem, *found.purchases), found.objective};
    if (best && found.complete)
        return std::move(*best);
    Solved shared = EqualShares(request, problem).run();
    if (best && !(shared.plan.feasible && shared.objective < best->objective))
        shared = std::move(*best);
    if (shared.plan.feasible)
        noteGap(request, shared, found.bound);
    else if (!found.complete)
        shared.plan.notes.push_back(Sentence::of(
            "no plan was found for the confidence of the whole way with equal confidence "
            "on every arrival; one with unequal confidence is not ruled out"));
    return shared;
}

} // namespace undermark::planning
