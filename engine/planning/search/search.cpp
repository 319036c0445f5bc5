// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/search.h"

#include "engine/planning/search/buying.h"
#include "engine/planning/search/open_runs.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

class Search {
public:
    Search(const Problem& problem, Hours hours)
        : m_problem(problem),
          m_hours(hours)
    {
        if (hours == Hours::ignored || !problem.timetable)
            return;
        m_timetable = problem.timetable;
        if (hours == Hours::roughly)
            m_timetable->mostWait = std::max(m_timetable->mostWait, kDawdle);
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
        dropEmpty(m_runs);
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
            prune(m_problem, m_point, m_runs);
            if (m_timetable && m_point < m_timetable->last)
                pruneLate(m_problem, *m_timetable, m_point, m_runs);
        }
        charge(m_problem.holdFrom(m_point));
    }

    // The levels from which one may buy here, on the way any at the start, waiting charged.
    std::vector<Timetable::Found> atPump(const OpenRun& run) const
    {
        Pieces pieces = run.cost;
        if (offer().detourKm > 0 || offer().arriveWith > 0)
            cutBelow(pieces, m_problem.leastSupplyToStop(run.since, m_point));
        if (!m_timetable)
            return {{std::move(pieces), 0.0}};
        auto found = m_timetable->found(m_point, run.stopped, pieces);
        for (Timetable::Found& part : found) {
            for (Piece& piece : part.pieces)
                piece.cost += part.wait * m_timetable->perMinuteWaited;
        }
        return found;
    }

    // Of a stop here, while hours still matter.
    double stopMinutes() const
    {
        return m_timetable && m_point <= m_timetable->last
                   ? m_timetable->stopMinutes[static_cast<std::size_t>(m_point)]
                   : 0.0;
    }

    double stoppedAfter(const OpenRun& run, double wait) const
    {
        const double minutes = run.stopped + (m_timetable && m_point <= m_timetable->last
                                                  ? stopMinutes() + wait : 0.0);
        return m_hours == Hours::roughly ? std::ceil(minutes - kSameMinutes) : minutes;
    }

    // Partial purchases keep the run; a full fill begins a new one, which is
    // worth looking at only where there is any spread to be reset.
    void buy()
    {
        Buying buying(m_problem, m_point, m_steps, stopMinutes() > 0);
        std::vector<OpenRun> fills;
        if (m_problem.uncertain && offer().clicks)
            fills = cheapestFills(buying);
        std::vector<OpenRun> stopped;
        for (OpenRun& run : m_runs) {
            for (const Timetable::Found& found : atPump(run)) {
                Pieces bought = buying.bought(found.pieces);
                const double minutes = stoppedAfter(run, found.wait);
                if (minutes == run.stopped)
                    run.cost = m_steps.keepIn(lower(run.cost, bought));
                else if (!bought.empty())
                    stopped.push_back({run.since, run.cansUsed, minutes, m_steps.keepIn(bought)});
            }
        }
        dropEmpty(m_runs);
        add(std::move(stopped));
        for (OpenRun& fill : fills)
            m_runs.push_back(std::move(fill));
    }

    // The cheapest full tank for each number of cans and minutes.
    std::vector<OpenRun> cheapestFills(const Buying& buying)
    {
        std::vector<OpenRun> fills;
        std::vector<Step> steps;
        const double full = buying.highest();
        for (const OpenRun& run : m_runs) {
            for (const Timetable::Found& found : atPump(run)) {
                const auto best = buying.cheapestFill(run.since, found.pieces);
                if (!best)
                    continue;
                OpenRun fill{m_point, run.cansUsed, stoppedAfter(run, found.wait),
                             {{full, full, best->cost, 0.0, kStart}}};
                const auto same = std::ranges::find_if(
                    fills, [&](const OpenRun& other) { return other.isLike(fill); });
                if (same == fills.end()) {
                    fills.push_back(std::move(fill));
                    steps.push_back(best->step);
                } else if (best->cost < same->cost.front().cost) {
                    same->cost = fill.cost;
                    steps[static_cast<std::size_t>(same - fills.begin())] = best->step;
                }
            }
        }
        for (std::size_t i = 0; i < fills.size(); ++i)
            fills[i].cost.front().trace = m_steps.keep(steps[i]);
        return fills;
    }

    void pourCans()
    {
        Buying buying(m_problem, m_point, m_steps);
        // One count for both kinds: own cans, and so many times as many as there are for each of the crew's.
        const int own = m_problem.cans + 1;
        const int each = offer().fromCrew ? own : 1, most = offer().fromCrew ? m_problem.crewCans : m_problem.cans;
        std::vector<OpenRun> poured;
        for (const OpenRun& run : m_runs) {
            for (const Timetable::Found& found : atPump(run)) {
                const int used = offer().fromCrew ? run.cansUsed / own : run.cansUsed % own;
                for (int cans = 1; used + cans <= most; ++cans) {
                    const Pieces moved = buying.poured(found.pieces, cans);
                    if (moved.empty())
                        break;
                    poured.push_back({run.since, run.cansUsed + cans * each,
                                      stoppedAfter(run, found.wait), m_steps.keepIn(moved)});
                }
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
    Hours m_hours;
    std::optional<Timetable> m_timetable; // where hours are kept
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
