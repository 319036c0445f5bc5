// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/solve.h"

#include "engine/planning/evaluate.h"
#include "engine/planning/risk/trip_risk.h"
#include "engine/planning/search/search.h"

#include <algorithm>
#include <cmath>
#include <future>
#include <optional>
#include <utility>

namespace undermark::planning {

namespace {

// Up to here closed places are taken off one by one where the exact search gave up.
constexpr int kOneByOne = 200;
constexpr double kLackTolerance = 1e-7; // L
constexpr int kMostRepairs = 20;
constexpr int kLongWay = 500; // points; below, a search takes some tens of milliseconds
constexpr double kNoticedGap = 0.01; // of the objective

// What detours to partial fills add to a run's spread is no part of the search's state. So its
// plan is looked at: the litres that an arrival lacks by them, by point.
std::vector<std::pair<int, double>> lacking(const Problem& problem, const SearchResult& result)
{
    std::vector<std::pair<int, double>> lacking;
    for (const Arrival& arrival : arrivalsOf(problem, result.purchases)) {
        if (arrival.run.detoured.empty())
            continue;
        const LevelSpread spread = problem.spread(arrival.run, arrival.point);
        const double litres = problem.needed(spread, arrival.point) - arrival.level;
        if (litres > kLackTolerance)
            lacking.emplace_back(arrival.point, litres);
    }
    return lacking;
}

// The search, and again with so much more asked for where a plan lacks it.
SearchResult searched(const Problem& problem, Hours hours)
{
    SearchResult result = search(problem, hours);
    auto lack = lacking(problem, result);
    if (lack.empty())
        return result;
    Problem more = problem;
    more.more.resize(more.offers.size());
    for (int i = 0; i < kMostRepairs && !lack.empty(); ++i) {
        for (const auto& [point, litres] : lack)
            more.more[static_cast<std::size_t>(point)] += litres;
        result = search(more, hours);
        lack = lacking(problem, result);
    }
    return result;
}

// The places that do not open within `mostWait` when they are passed: of the purchases, or of all.
enum class Among { purchases, all };
std::vector<std::size_t> closedPlaces(const Problem& problem,
                                      const std::vector<Purchase>& purchases, Among among,
                                      double mostWait)
{
    const Timetable& table = *problem.timetable;
    std::vector<std::size_t> closed;
    double supply = problem.start;
    double stopped = 0.0;
    auto next = purchases.begin();
    for (int i = 0; i < problem.points; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const bool buys = next != purchases.end() && next->point == i;
        const double wait = table.waitAt(i, table.clock(i, supply, stopped));
        if ((buys || among == Among::all) && wait > mostWait)
            closed.push_back(at);
        if (!buys)
            continue;
        supply += next->litres - problem.offers[at].detourLitres;
        stopped += table.stopMinutes[at] + wait;
        ++next;
    }
    return closed;
}

// As it is, without waiting.
bool keepsHours(const Problem& problem, const SearchResult& result)
{
    return closedPlaces(problem, result.purchases, Among::purchases, 0.0).empty();
}

// The first stop that would be found closed is taken off the route (on long routes
// every place that is closed when passed), and the rest is planned again: hours are
// kept, but another order of stops might be better.
SearchResult withoutClosed(Problem problem, SearchResult result)
{
    const Among among = problem.points <= kOneByOne ? Among::purchases : Among::all;
    while (!result.stuckBefore) {
        std::vector<std::size_t> closed =
            closedPlaces(problem, result.purchases, among, problem.timetable->mostWait);
        if (closed.empty())
            break;
        if (among == Among::purchases)
            closed.resize(1);
        for (const std::size_t point : closed)
            problem.offers[point].open = false;
        result = searched(problem, Hours::ignored);
    }
    return result;
}

// Where the exact search gave up: the better of two that keep the hours. `any`: without hours.
SearchResult keptSomehow(const Problem& problem, const SearchResult& any)
{
    SearchResult roughly = searched(problem, Hours::roughly);
    SearchResult avoiding = withoutClosed(problem, any);
    if (roughly.gaveUp || roughly.stuckBefore)
        return avoiding;
    return avoiding.stuckBefore || roughly.objective <= avoiding.objective ? roughly : avoiding;
}

Solved solved(const PlanRequest& request, const Problem& problem, const SearchResult& result)
{
    if (result.stuckBefore)
        return {infeasible(request, problem, result)};
    return {evaluate(request, problem, result.purchases), result.objective, result.objective};
}

Sentence gapNote(Aim aim, double gap)
{
    const Part saved = amount(gap, Digits::significant(3));
    switch (aim) {
    case Aim::cost:
        return Sentence::of(
            "another plan could save %1 of cost at most",
            saved);
    case Aim::stops:
        return Sentence::of(
            "another plan could save %1 stops at most",
            saved);
    case Aim::time:
        return Sentence::of(
            "another plan could save %1 minutes at most",
            saved);
    case Aim::weight:
        break;
    }
    return Sentence::of(
        "another plan could save %1 litre-km at most",
        saved);
}

// What another plan could save is said from a certain share of the objective on, once.
void noteGap(Aim aim, Solved& answer)
{
    Plan& plan = answer.plan;
    if (!(plan.tripGap > (plan.stopped ? 0.0 : kNoticedGap) * std::fabs(answer.objective)))
        return;
    const auto pattern = gapNote(aim, plan.tripGap).pattern;
    std::erase_if(plan.notes, [&](const Sentence& note) { return note.pattern == pattern; });
    plan.notes.push_back(gapNote(aim, plan.tripGap));
}

// Every second pump does for a first plan, in an eighth of the time; nothing where it does not.
std::optional<Solved> amongHalf(const PlanRequest& request, const Problem& problem)
{
    Problem half = problem;
    bool closed = false;
    for (Offer& offer : half.offers)
        if (offer.open && std::exchange(closed, !closed))
            offer.open = false;
    const SearchResult found = searched(half, Hours::ignored);
    return found.stuckBefore ? std::nullopt : std::optional(solved(request, problem, found));
}

void stop(Plan& plan)
{
    plan.stopped = true;
    plan.notes.push_back(Sentence::of("planning was stopped: this is the best plan so far"));
}

} // namespace

Solved solve(const PlanRequest& request, const Problem& problem)
{
    const SearchResult any = searched(problem, Hours::ignored); // mostly it keeps the hours
    if (!problem.hasHours || !problem.timetable || (!any.stuckBefore && keepsHours(problem, any)))
        return solved(request, problem, any);
    SearchResult kept = searched(problem, Hours::kept);
    const bool gaveUp = kept.gaveUp;
    if (gaveUp)
        kept = keptSomehow(problem, any);
    Solved answer = solved(request, problem, kept);
    if (!answer.plan.feasible && !any.stuckBefore)
        answer.plan.notes.push_back(Sentence::of(
            "opening hours stand in the way: with all places open there would be a plan"));
    if (gaveUp) {
        answer.bound = any.objective;
        answer.plan.tripGap = answer.plan.feasible ? std::max(answer.objective - any.objective, 0.0) : 0.0;
        answer.plan.notes.push_back(Sentence::of(
            "too many ways to be late: places closed on arrival are avoided, but another "
            "order of stops might suit the hours better"));
        noteGap(request.aim, answer);
    }
    return answer;
}

// Whoever keeps the whole way's confidence keeps it on each arrival too, so the best plan
// that does only that is a bound for all. From there on by bisection of the quantile; with
// the risk shared among all points it fits for certain.
Solved solveForTrip(const PlanRequest& request, const Problem& problem, const GoOn& goOn)
{
    const double allowed = 1 - request.tripConfidence->value();
    const auto at = [&](const AllowedRisk& share) {
        Problem shared = problem;
        shared.shared = share;
        return solve(request, shared);
    };
    const auto fits = [&](const Solved& tried) { return tried.plan.floorRisk <= allowed; };
    AllowedRisk tooMuch = AllowedRisk::of(allowed);
    AllowedRisk little = AllowedRisk::of(allowed / (problem.points - 1));
    if (goOn && problem.points >= kLongWay && !problem.hasHours) {
        Problem shared = problem;
        shared.shared = little;
        auto quick = amongHalf(request, shared);
        if (quick && !goOn(quick->objective)) { // no bound is known yet but nothing
            stop(quick->plan);
            quick->plan.tripGap = quick->objective;
            noteGap(request.aim, *quick);
            return std::move(*quick);
        }
    }
    // A long way's first plan and the bound for all are looked for side by side.
    std::future<Solved> first = std::async(problem.points >= kLongWay ? std::launch::async : std::launch::deferred,
                                           at, little);
    Solved best = at(tooMuch);
    if (!best.plan.feasible || fits(best))
        return best;
    const double bound = best.bound;
    best = first.get();
    while (little.z - tooMuch.z > 1e-4) {
        const bool some = best.plan.feasible;
        if (goOn && !goOn(some ? std::optional(best.objective - bound) : std::nullopt) && some) {
            stop(best.plan);
            break;
        }
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
        noteGap(request.aim, best);
    }
    return best;
}

} // namespace undermark::planning
