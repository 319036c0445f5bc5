// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/buying.h"

#include <algorithm>

namespace undermark::planning {

Buying::Buying(const Problem& problem, int point, StepLog& steps, bool haltsMatter)
    : m_problem(problem), m_offer(problem.offers[static_cast<std::size_t>(point)]), m_point(point),
      m_steps(steps), m_haltsMatter(haltsMatter)
{
}

double Buying::highest() const
{
    return m_problem.highestSupply(m_point);
}

Pieces Buying::bought(const Pieces& arrived)
{
    Pieces pieces =
        m_offer.most >= m_problem.capacity ? boughtFreely(arrived) : boughtWithin(arrived);
    cutAbove(pieces, highest() - m_problem.clickRoom(m_point));
    return pieces;
}

Pieces Buying::poured(const Pieces& arrived, int cans)
{
    Pieces moved;
    const double litres = cans * m_problem.canLitres;
    if (litres > m_offer.most)
        return moved;
    for (const Piece& piece : arrived)
        moved.push_back(shifted(piece, litres, cans));
    cutAbove(moved, highest());
    return moved;
}

std::optional<Buying::FillUp> Buying::cheapestFill(int since, const Pieces& arrived) const
{
    const double full = highest() + m_offer.detourLitres;
    Pieces pieces = arrived;
    cutAbove(pieces, full - m_offer.least);
    if (m_offer.most < kNoLimit)
        cutBelow(pieces, full - m_offer.most + m_problem.fillRoom(since, m_point));
    std::optional<FillUp> best;
    for (const Piece& piece : pieces) {
        const double from = piece.slope < m_offer.perLitre ? piece.to : piece.from;
        const double litres = full - from;
        const double cost = piece.at(from) + m_offer.perStop + m_offer.perLitre * litres;
        if (litres > kLitreTolerance && (!best || cost < best->cost))
            best = FillUp{cost, {piece.trace, m_point, from, false, true, 0}};
    }
    return best;
}

// From `from` (on a piece) buying `litres` to `litres + more` at this price.
Piece Buying::rising(const Piece& piece, double from, double litres, double more)
{
    const double to = from + litres - m_offer.detourLitres;
    const double cost = piece.at(from) + m_offer.perStop + m_offer.perLitre * litres;
    return {to, to + more, cost, m_offer.perLitre,
            m_steps.propose({piece.trace, m_point, from, false, false, 0})};
}

// From anywhere on a piece, buying exactly `litres`.
Piece Buying::shifted(const Piece& piece, double litres, int cans)
{
    const double by = litres - m_offer.detourLitres;
    return {piece.from + by, piece.to + by,
            piece.cost + m_offer.perStop + m_offer.perLitre * litres, piece.slope,
            m_steps.propose({piece.trace, m_point, litres, true, false, cans})};
}

// Without a limit: every level buys up at the same slope, so only the best
// start so far matters. One pass.
Pieces Buying::boughtFreely(const Pieces& pieces)
{
    const double by = m_offer.least - m_offer.detourLitres;
    const double price = m_offer.perLitre;
    Pieces out;
    double best = kNoLimit; // of cost - price x supply
    const auto startAt = [&](const Piece& piece, double from) {
        if (!out.empty() && out.back().to == kNoLimit)
            out.back().to = std::max(out.back().from, from + by);
        best = piece.at(from) - price * from;
        out.push_back(rising(piece, from, m_offer.least, kNoLimit));
    };
    for (const Piece& piece : pieces) {
        const double atFrom = piece.cost - price * piece.from;
        if (atFrom < best)
            startAt(piece, piece.from);
        const double atTo = piece.at(piece.to) - price * piece.to;
        if (!(atTo < best))
            continue;
        const double gain = price - piece.slope; // > 0 here
        const double cross = std::clamp(piece.from + (atFrom - best) / gain, piece.from, piece.to);
        if ((m_offer.least > 0 || m_haltsMatter) && cross < piece.to) {
            out.back().to = std::max(out.back().from, cross + by);
            Piece part = piece;
            part.cost = piece.at(cross);
            part.from = cross;
            out.push_back(shifted(part, m_offer.least));
        }
        startAt(piece, piece.to);
    }
    return out;
}

// With a limit: each piece and the range that may be bought add up to a
// stretch of each slope, the cheaper one first.
Pieces Buying::boughtWithin(const Pieces& pieces)
{
    const double least = m_offer.least;
    const double more = m_offer.most - least;
    std::vector<Pieces> parts;
    for (const Piece& piece : pieces) {
        if (piece.slope <= m_offer.perLitre)
            parts.push_back({shifted(piece, least), rising(piece, piece.to, least, more)});
        else
            parts.push_back({rising(piece, piece.from, least, more), shifted(piece, m_offer.most)});
    }
    return lowerOfAll(std::move(parts));
}

} // namespace undermark::planning
