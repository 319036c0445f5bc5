// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/search.h"

#include "engine/planning/search/buying.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr double kSameMinutes = 1e-6;

// Everything known about one run: the point where the level was last known, the
// own cans used, the minutes stops have taken (only where hours matter, else 0),
// and the least objective by supply.
struct OpenRun {
    int since;
    int cansUsed;
    double stopped;
    Pieces cost;

    bool isLike(const OpenRun& other) const
    {
        return since == other.since && cansUsed == other.cansUsed &&
               std::fabs(stopped - other.stopped) < kSameMinutes;
    }
};

class Search {
public:
    Search(const Problem& problem, Hours hours)
        : m_problem(problem),
          m_timetable(hours == Hours::kept && problem.timetable ? &*problem.timetable : nullptr)
    {
    }

    SearchResult run()
    {
        m_runs.push_back({kStart, 0, 0.0, {{m_problem.start, m_problem.start, 0.0, 0.0, kStart}}});
        for (m_point = 0; m_point < m_problem.points; ++m_point) {
            if (m_point > 0 && !arrive())
                return std::move(m_result);
            if (m_point + 1 < m_problem.points)
                leave();
            countWork();
            if (m_timetable && m_result.work > kMostWork) {
                m_result.gaveUp = true;
                return std::move(m_result);
            }
        }
        chooseBest();
        return std::move(m_result);
    }

private:
    const Offer& offer() const { return m_problem.offers[static_cast<std::size_t>(m_point)]; }
    double fuelTo() const { return m_problem.fuelTo[static_cast<std::size_t>(m_point)]; }

    bool arrive()
    {
        m_result.lastReached.clear();
        for (OpenRun& run : m_runs) {
            m_result.lastReached.emplace_back(run.since, run.cost.back().to);
            cutBelow(run.cost, m_problem.leastSupply(run.since, m_point));
        }
        dropEmpty();
        if (m_runs.empty())
            m_result.stuckBefore = m_point;
        return !m_runs.empty();
    }

    // So much for every litre in the tank.
    void charge(double perLitre)
    {
        if (perLitre == 0)
            return;
        for (OpenRun& run : m_runs) {
            for (Piece& piece : run.cost) {
                piece.cost += perLitre * (piece.from - fuelTo());
                piece.slope += perLitre;
            }
        }
    }

    void leave()
    {
        if (offer().open) {
            if (offer().fromCans)
                pourCans();
            else
                buy();
            if (m_timetable && m_point == m_timetable->last)
                forgetMinutes();
            prune();
        }
        charge(m_problem.holdFrom(m_point));
    }

    // The levels from which one may buy here; at the start any.
    Pieces atPump(const OpenRun& run) const
    {
        Pieces pieces = run.cost;
        if (m_timetable)
            pieces = m_timetable->openParts(
                m_point, m_problem.at[static_cast<std::size_t>(m_point)], run.stopped, pieces);
        if (m_point > 0 && offer().detourLitres > 0)
            cutBelow(pieces, m_problem.leastSupplyToStop(run.since, m_point));
        return pieces;
    }

    double stopMinutes() const
    {
        return m_timetable && m_point <= m_timetable->last
                   ? m_timetable->stopMinutes[static_cast<std::size_t>(m_point)]
                   : 0.0;
    }

    // Partial purchases keep the run; a full fill begins a new one, which is
    // worth looking at only where there is any spread to be reset.
    void buy()
    {
        Buying buying(m_problem, m_point, m_steps, stopMinutes() > 0);
        std::vector<OpenRun> fills;
        if (m_problem.uncertain && offer().clicks)
            fills = cheapestFills(buying);
        const double minutes = stopMinutes();
        std::vector<OpenRun> stopped;
        for (OpenRun& run : m_runs) {
            Pieces bought = buying.bought(atPump(run));
            if (minutes > 0 && !bought.empty())
                stopped.push_back({run.since, run.cansUsed, run.stopped + minutes,
                                   m_steps.keepIn(bought)});
            if (minutes == 0)
                run.cost = m_steps.keepIn(lower(run.cost, bought));
        }
        dropEmpty();
        add(std::move(stopped));
        for (OpenRun& fill : fills)
            m_runs.push_back(std::move(fill));
    }

    // The cheapest full tank for each number of cans and minutes.
    std::vector<OpenRun> cheapestFills(const Buying& buying)
    {
        std::vector<OpenRun> fills;
        std::vector<Step> steps;
        for (const OpenRun& run : m_runs) {
            const auto best = buying.cheapestFill(atPump(run));
            if (!best)
                continue;
            const double full = buying.highest();
            OpenRun fill{m_point,
                     run.cansUsed,
                     run.stopped + stopMinutes(),
                     {{full, full, best->cost, 0.0, kStart}}};
            const auto same =
                std::ranges::find_if(fills, [&](const OpenRun& other) { return other.isLike(fill); });
            if (same == fills.end()) {
                fills.push_back(std::move(fill));
                steps.push_back(best->step);
            } else if (best->cost < same->cost.front().cost) {
                same->cost = fill.cost;
                steps[static_cast<std::size_t>(same - fills.begin())] = best->step;
            }
        }
        for (std::size_t i = 0; i < fills.size(); ++i)
            fills[i].cost.front().trace = m_steps.keep(steps[i]);
        return fills;
    }

    void pourCans()
    {
        Buying buying(m_problem, m_point, m_steps);
        std::vector<OpenRun> poured;
        for (const OpenRun& run : m_runs) {
            const Pieces pieces = atPump(run);
            for (int cans = 1; run.cansUsed + cans <= m_problem.cans; ++cans) {
                const Pieces moved = buying.poured(pieces, cans);
                if (moved.empty())
                    break;
                poured.push_back({run.since, run.cansUsed + cans, run.stopped + stopMinutes(),
                                  m_steps.keepIn(moved)});
            }
        }
        add(std::move(poured));
    }

    // Joins runs to those there are.
    void add(std::vector<OpenRun> runs)
    {
        for (OpenRun& run : runs) {
            const auto same =
                std::ranges::find_if(m_runs, [&](const OpenRun& other) { return other.isLike(run); });
            if (same == m_runs.end())
                m_runs.push_back(std::move(run));
            else
                same->cost = lower(same->cost, run.cost);
        }
    }

    // No hours matter any more.
    void forgetMinutes()
    {
        std::vector<OpenRun> all = std::move(m_runs);
        m_runs.clear();
        for (OpenRun& run : all)
            run.stopped = 0.0;
        add(std::move(all));
    }

    // A run that began later has the smaller spread, now and ever after (where
    // no covariance is negative): levels of earlier runs that cost as much are
    // dropped. The start is later than nothing, but may be known less or better
    // than a full tank, so its variance is compared. Runs of other minutes find
    // other places open and are left alone.
    void prune()
    {
        if (m_runs.size() < 2 || !m_problem.needsGrow)
            return;
        std::ranges::stable_sort(m_runs, [](const OpenRun& a, const OpenRun& b) {
            return std::tie(a.cansUsed, a.stopped, b.since) <
                   std::tie(b.cansUsed, b.stopped, a.since);
        });
        for (auto first = m_runs.begin(); first != m_runs.end();) {
            const auto end = std::find_if(first, m_runs.end(), [&](const OpenRun& run) {
                return run.cansUsed != first->cansUsed ||
                       std::fabs(run.stopped - first->stopped) >= kSameMinutes;
            });
            pruneWithin(first, end);
            first = end;
        }
        dropEmpty();
    }

    void pruneWithin(std::vector<OpenRun>::iterator first, std::vector<OpenRun>::iterator end)
    {
        Pieces best;
        double bestVariance = 0.0; // the largest of the runs in `best`
        for (; first != end; ++first) {
            const double variance = m_problem.variance(first->since, m_point);
            if (variance >= bestVariance)
                first->cost = partsBelow(first->cost, best);
            if (first->cost.empty())
                continue;
            best = lower(best, first->cost);
            bestVariance = std::max(bestVariance, variance);
        }
    }

    void dropEmpty()
    {
        std::erase_if(m_runs, [](const OpenRun& run) { return run.cost.empty(); });
    }

    void countWork()
    {
        for (const OpenRun& run : m_runs)
            m_result.work += run.cost.size();
        m_result.work += m_runs.size() * m_runs.size() / 8; // joining compares runs
    }

    void chooseBest()
    {
        m_result.objective = kNoLimit;
        double supply = 0.0;
        int trace = kStart;
        for (const OpenRun& run : m_runs) {
            for (const Piece& piece : run.cost) {
                const double at = piece.slope < 0 ? piece.to : piece.from;
                if (piece.at(at) < m_result.objective) {
                    m_result.objective = piece.at(at);
                    supply = at;
                    trace = piece.trace;
                }
            }
        }
        m_result.purchases = m_steps.purchases(m_problem, trace, supply);
    }

    const Problem& m_problem;
    const Timetable* m_timetable; // where hours are kept
    int m_point = 0;
    std::vector<OpenRun> m_runs;
    StepLog m_steps;
    SearchResult m_result;
};

} // namespace

SearchResult search(const Problem& problem, Hours hours)
{
    return Search(problem, hours).run();
}

} // namespace undermark::planning
