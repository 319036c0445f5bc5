// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/open_runs.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace undermark::planning {

namespace {

constexpr double kTieOfWaiting = 1e-6; // of the objective

using Runs = std::vector<OpenRun>;

// Of runs that differ in `since` only, the latest first.
void pruneWithin(const Problem& problem, int point, Runs::iterator first, Runs::iterator end)
{
    Pieces best;
    double bestVariance = 0.0; // the largest of the runs in `best`
    for (; first != end; ++first) {
        const double variance = problem.variance(first->since, point);
        if (variance >= bestVariance)
            first->cost = partsBelow(first->cost, best);
        if (first->cost.empty())
            continue;
        best = lower(best, first->cost);
        bestVariance = std::max(bestVariance, variance);
    }
}

} // namespace

void dropEmpty(Runs& runs)
{
    std::erase_if(runs, [](const OpenRun& run) { return run.cost.empty(); });
}

void prune(const Problem& problem, int point, Runs& runs)
{
    if (runs.size() < 2 || !problem.needsGrow)
        return;
    std::ranges::stable_sort(runs, [](const OpenRun& a, const OpenRun& b) {
        return std::tie(a.cansUsed, a.stopped, b.since) < std::tie(b.cansUsed, b.stopped, a.since);
    });
    for (auto first = runs.begin(); first != runs.end();) {
        const auto end = std::find_if(first, runs.end(), [&](const OpenRun& run) {
            return run.cansUsed != first->cansUsed ||
                   std::fabs(run.stopped - first->stopped) >= kSameMinutes;
        });
        pruneWithin(problem, point, first, end);
        first = end;
    }
    dropEmpty(runs);
}

void pruneLate(const Problem& problem, const Timetable& timetable, int point, Runs& runs)
{
    if (!(timetable.mostWait > 0) || !problem.needsGrow)
        return;
    std::ranges::stable_sort(runs, {}, &OpenRun::stopped);
    for (std::size_t i = 1; i < runs.size(); ++i) {
        OpenRun& late = runs[i];
        const double variance = problem.variance(late.since, point);
        for (std::size_t k = 0; k < i && !late.cost.empty(); ++k) {
            const OpenRun& early = runs[k];
            const double by = late.stopped - early.stopped;
            if (by > timetable.mostWait || early.cansUsed != late.cansUsed || early.cost.empty() ||
                problem.variance(early.since, point) > variance)
                continue;
            Pieces waited = early.cost;
            for (Piece& piece : waited)
                piece.cost += by * timetable.perMinuteWaited - kTieOfWaiting;
            late.cost = partsBelow(late.cost, waited);
        }
    }
    dropEmpty(runs);
}

} // namespace undermark::planning
