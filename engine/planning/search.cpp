// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search.h"

#include "engine/planning/pieces.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

// How a level was reached: by buying at `point` either fixed litres, or up from
// the one supply `value`.
struct Step {
    int parent;
    int point;
    double value; // litres bought, or the supply before
    bool fixedLitres;
    bool full;
    int cans;
};

// Everything known about one run: the point where the level was last known, the
// own cans used, and the least objective by supply.
struct Run {
    int since;
    int cansUsed;
    Pieces cost;
};

class Search {
public:
    explicit Search(const Problem& problem) : m_problem(problem) {}

    SearchResult run()
    {
        m_runs.push_back({kStart, 0, {{m_problem.start, m_problem.start, 0.0, 0.0, kStart}}});
        for (m_point = 0; m_point < m_problem.points; ++m_point) {
            if (m_point > 0 && !arrive())
                return std::move(m_result);
            if (m_point + 1 < m_problem.points)
                leave();
        }
        traceBack();
        return std::move(m_result);
    }

private:
    const Offer& offer() const { return m_problem.offers[static_cast<std::size_t>(m_point)]; }
    double fuelTo() const { return m_problem.fuelTo[static_cast<std::size_t>(m_point)]; }

    bool arrive()
    {
        m_result.lastReached.clear();
        for (Run& run : m_runs) {
            m_result.lastReached.emplace_back(run.since, run.cost.back().to);
            cutBelow(run.cost, m_problem.leastSupply(run.since, m_point));
        }
        std::erase_if(m_runs, [](const Run& run) { return run.cost.empty(); });
        if (m_runs.empty())
            m_result.stuckBefore = m_point;
        return !m_runs.empty();
    }

    void leave()
    {
        if (offer().open) {
            if (offer().fromCans)
                pourCans();
            else
                buy();
            prune();
        }
        const double hold = m_problem.holdFrom(m_point);
        if (hold > 0) {
            for (Run& run : m_runs) {
                for (Piece& piece : run.cost) {
                    piece.cost += hold * (piece.from - fuelTo());
                    piece.slope += hold;
                }
            }
        }
    }

    // Partial purchases keep the run; a full fill begins a new one, which is
    // worth looking at only where there is any spread to be reset.
    void buy()
    {
        std::vector<Run> fills;
        if (m_problem.uncertain && offer().clicks) {
            for (int cans = 0; cans <= m_problem.cans; ++cans)
                addBestFill(cans, fills);
        }
        for (Run& run : m_runs)
            run.cost = merged(run.cost, boughtFrom(run));
        for (Run& fill : fills)
            m_runs.push_back(std::move(fill));
    }

    // The highest supply with which one can drive on after buying here.
    double highest() const { return fuelTo() + m_problem.capacity - offer().detourLitres / 2; }
    // The lowest supply with which a run may come to the pump.
    double lowest(int since) const
    {
        return m_problem.leastSupply(since, m_point) + offer().detourLitres / 2;
    }

    // The levels from which one may buy here; at the start any.
    Pieces atPump(const Run& run) const
    {
        Pieces pieces = run.cost;
        if (m_point > 0 && offer().detourLitres > 0)
            cutBelow(pieces, lowest(run.since));
        return pieces;
    }

    Pieces boughtFrom(const Run& run)
    {
        const Pieces pieces = atPump(run);
        Pieces bought =
            offer().most >= m_problem.capacity ? boughtFreely(pieces) : boughtWithin(pieces);
        cutAbove(bought, highest());
        return bought;
    }

    int remember(const Step& step)
    {
        m_fresh.push_back(step);
        return -1 - static_cast<int>(m_fresh.size()); // below kStart: not yet in m_steps
    }

    // From `from` (on a piece) buying `litres` to `litres + more` at this price.
    Piece rising(const Piece& piece, double from, double litres, double more)
    {
        const double to = from + litres - offer().detourLitres;
        const double cost = piece.at(from) + offer().perStop + offer().perLitre * litres;
        return {to, to + more, cost, offer().perLitre,
                remember({piece.trace, m_point, from, false, false, 0})};
    }

    // From anywhere on a piece, buying exactly `litres`.
    Piece shifted(const Piece& piece, double litres, int cans = 0)
    {
        const double by = litres - offer().detourLitres;
        return {piece.from + by, piece.to + by,
                piece.cost + offer().perStop + offer().perLitre * litres, piece.slope,
                remember({piece.trace, m_point, litres, true, false, cans})};
    }

    // Without a limit: every level buys up at the same slope, so only the best
    // start so far matters. One pass.
    Pieces boughtFreely(const Pieces& pieces)
    {
        const double by = offer().least - offer().detourLitres;
        const double price = offer().perLitre;
        Pieces out;
        double best = kNoLimit; // of cost - price x supply
        const auto startAt = [&](const Piece& piece, double from) {
            if (!out.empty() && out.back().to == kNoLimit)
                out.back().to = std::max(out.back().from, from + by);
            best = piece.at(from) - price * from;
            out.push_back(rising(piece, from, offer().least, kNoLimit));
        };
        for (const Piece& piece : pieces) {
            const double atFrom = piece.cost - price * piece.from;
            if (atFrom < best)
                startAt(piece, piece.from);
            const double atTo = piece.at(piece.to) - price * piece.to;
            if (!(atTo < best))
                continue;
            const double gain = price - piece.slope; // > 0 here
            const double cross =
                std::clamp(piece.from + (atFrom - best) / gain, piece.from, piece.to);
            if (offer().least > 0 && cross < piece.to) {
                out.back().to = std::max(out.back().from, cross + by);
                Piece part = piece;
                part.cost = piece.at(cross);
                part.from = cross;
                out.push_back(shifted(part, offer().least));
            }
            startAt(piece, piece.to);
        }
        return out;
    }

    // With a limit: each piece and the range that may be bought add up to a
    // stretch of each slope, the cheaper one first.
    Pieces boughtWithin(const Pieces& pieces)
    {
        const double least = offer().least;
        const double more = offer().most - least;
        std::vector<Pieces> parts;
        for (const Piece& piece : pieces) {
            if (piece.slope <= offer().perLitre)
                parts.push_back({shifted(piece, least), rising(piece, piece.to, least, more)});
            else
                parts.push_back(
                    {rising(piece, piece.from, least, more), shifted(piece, offer().most)});
        }
        return lowerOfAll(std::move(parts));
    }

    // The lower envelope; the steps that survive in it are kept.
    Pieces merged(const Pieces& before, const Pieces& bought)
    {
        Pieces result = lower(before, bought);
        std::vector<int> kept(m_fresh.size() + 2, kStart);
        for (Piece& piece : result) {
            if (piece.trace >= kStart)
                continue;
            int& index = kept[static_cast<std::size_t>(-piece.trace - 1)];
            if (index == kStart) {
                index = static_cast<int>(m_steps.size());
                m_steps.push_back(m_fresh[static_cast<std::size_t>(-piece.trace - 2)]);
            }
            piece.trace = index;
        }
        m_fresh.clear();
        return result;
    }

    // The cheapest way to a full tank here.
    void addBestFill(int cans, std::vector<Run>& fills)
    {
        const double full = highest();
        Piece best{full, full, kNoLimit, 0.0, kStart};
        Step step{};
        for (const Run& run : m_runs) {
            if (run.cansUsed != cans)
                continue;
            Pieces pieces = atPump(run);
            cutAbove(pieces, full + offer().detourLitres - offer().least);
            cutBelow(pieces, full + offer().detourLitres - offer().most);
            for (const Piece& piece : pieces) {
                const double from = piece.slope < offer().perLitre ? piece.to : piece.from;
                const double litres = full - from + offer().detourLitres;
                const double cost = piece.at(from) + offer().perStop + offer().perLitre * litres;
                if (litres > kLitreTolerance && cost < best.cost) {
                    best.cost = cost;
                    step = {piece.trace, m_point, from, false, true, 0};
                }
            }
        }
        if (best.cost == kNoLimit)
            return;
        best.trace = static_cast<int>(m_steps.size());
        m_steps.push_back(step);
        fills.push_back({m_point, cans, {best}});
    }

    void pourCans()
    {
        std::vector<Run> poured;
        for (const Run& run : m_runs) {
            const Pieces pieces = atPump(run);
            for (int cans = 1; run.cansUsed + cans <= m_problem.cans; ++cans) {
                const double litres = cans * m_problem.canLitres;
                if (litres > offer().most)
                    break;
                Pieces moved;
                for (const Piece& piece : pieces)
                    moved.push_back(shifted(piece, litres, cans));
                cutAbove(moved, highest());
                if (moved.empty())
                    break;
                poured.push_back({run.since, run.cansUsed + cans, merged({}, moved)});
            }
        }
        for (Run& run : poured) {
            const auto same = std::ranges::find_if(m_runs, [&](const Run& other) {
                return other.since == run.since && other.cansUsed == run.cansUsed;
            });
            if (same == m_runs.end())
                m_runs.push_back(std::move(run));
            else
                same->cost = lower(same->cost, run.cost);
        }
    }

    // A run that began later has the smaller spread, now and ever after (where
    // no covariance is negative): levels of earlier runs that cost as much are
    // dropped. The start is later than nothing, but may be known less or better
    // than a full tank, so its variance is compared.
    void prune()
    {
        if (m_runs.size() < 2 || !m_problem.spreadGrows)
            return;
        std::ranges::stable_sort(m_runs, std::greater(), &Run::since);
        for (int cans = 0; cans <= m_problem.cans; ++cans)
            pruneWithin(cans);
        std::erase_if(m_runs, [](const Run& run) { return run.cost.empty(); });
    }

    void pruneWithin(int cansUsed)
    {
        Pieces best;
        double bestVariance = 0.0; // the largest of the runs in `best`
        for (Run& run : m_runs) {
            if (run.cansUsed != cansUsed)
                continue;
            const double variance = m_problem.variance(run.since, m_point);
            if (variance >= bestVariance)
                run.cost = partsBelow(run.cost, best);
            best = lower(best, run.cost);
            bestVariance = std::max(bestVariance, variance);
        }
    }

    void traceBack()
    {
        double cost = kNoLimit;
        double supply = 0.0;
        int trace = kStart;
        for (const Run& run : m_runs) {
            for (const Piece& piece : run.cost) {
                const double at = piece.slope < 0 ? piece.to : piece.from;
                if (piece.at(at) < cost) {
                    cost = piece.at(at);
                    supply = at;
                    trace = piece.trace;
                }
            }
        }
        while (trace != kStart) {
            const Step& step = m_steps[static_cast<std::size_t>(trace)];
            const double detour =
                m_problem.offers[static_cast<std::size_t>(step.point)].detourLitres;
            const double before = step.fixedLitres ? supply - step.value + detour : step.value;
            const double litres = step.fixedLitres ? step.value : supply - step.value + detour;
            m_result.purchases.push_back({step.point, litres, step.full, step.cans});
            supply = before;
            trace = step.parent;
        }
        std::ranges::reverse(m_result.purchases);
    }

    const Problem& m_problem;
    int m_point = 0;
    std::vector<Run> m_runs;
    std::vector<Step> m_steps; // kept
    std::vector<Step> m_fresh; // of the purchase being worked on
    SearchResult m_result;
};

} // namespace

SearchResult search(const Problem& problem)
{
    return Search(problem).run();
}

} // namespace undermark::planning
