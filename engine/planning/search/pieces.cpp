// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/pieces.h"

#include <algorithm>

namespace undermark::planning {

namespace {

// Cuts off what lies below `from`.
void clip(Piece& piece, double from)
{
    if (from > piece.from) {
        from = std::min(from, piece.to);
        piece.cost = piece.at(from);
        piece.from = from;
    }
}

Piece clipped(Piece piece, double from)
{
    clip(piece, from);
    return piece;
}

void append(Pieces& out, Piece piece, double to)
{
    piece.to = to;
    if (!out.empty()) {
        Piece& last = out.back();
        const bool same = last.trace == piece.trace && last.slope == piece.slope;
        if (same && last.to == piece.from) {
            last.to = to;
            return;
        }
    }
    out.push_back(piece);
}

// Sweeps both functions from left to right; the parts of `a` where it is the
// lower one (or alone) are kept if `keepA`, those of `b` always.
class Sweep {
public:
    Sweep(const Pieces& a, const Pieces& b, bool keepA) : m_a(a), m_b(b), m_keepA(keepA)
    {
        m_out.reserve(a.size() + b.size());
    }

    Pieces run()
    {
        double from = -1e300;
        while (m_i < m_a.size() && m_j < m_b.size())
            from = step(clipped(m_a[m_i], from), clipped(m_b[m_j], from));
        for (; m_i < m_a.size(); ++m_i, from = -1e300)
            keep(true, clipped(m_a[m_i], from), m_a[m_i].to);
        for (; m_j < m_b.size(); ++m_j, from = -1e300)
            keep(false, clipped(m_b[m_j], from), m_b[m_j].to);
        return std::move(m_out);
    }

private:
    void keep(bool isA, const Piece& piece, double to)
    {
        if (!isA || m_keepA)
            append(m_out, piece, to);
    }

    // Settles the leftmost stretch on which nothing changes; returns its end.
    double step(const Piece& a, const Piece& b)
    {
        if (a.from < b.from)
            return alone(true, a, b.from, m_i);
        if (b.from < a.from)
            return alone(false, b, a.from, m_j);
        const double to = std::min(a.to, b.to);
        const double atStart = b.cost - a.cost;
        const double atEnd = b.at(to) - a.at(to);
        if (atStart >= 0 && atEnd >= 0) {
            keep(true, a, to);
        } else if (atStart <= 0 && atEnd <= 0) {
            keep(false, b, to);
        } else {
            const double cross = std::min(to, a.from + (to - a.from) * atStart / (atStart - atEnd));
            keep(atStart > 0, atStart > 0 ? a : b, cross);
            keep(atStart <= 0, clipped(atStart > 0 ? b : a, cross), to);
        }
        m_i += m_a[m_i].to <= to;
        m_j += m_b[m_j].to <= to;
        return to;
    }

    double alone(bool isA, const Piece& piece, double othersStart, std::size_t& index)
    {
        const double to = std::min(piece.to, othersStart);
        keep(isA, piece, to);
        index += piece.to <= othersStart;
        return to;
    }

    const Pieces& m_a;
    const Pieces& m_b;
    bool m_keepA;
    Pieces m_out;
    std::size_t m_i = 0;
    std::size_t m_j = 0;
};

} // namespace

Pieces lower(const Pieces& a, const Pieces& b)
{
    if (a.empty() || b.empty())
        return a.empty() ? b : a;
    return Sweep(a, b, true).run();
}

Pieces partsBelow(const Pieces& b, const Pieces& a)
{
    return a.empty() ? b : Sweep(a, b, false).run();
}

Pieces lowerOfAll(std::vector<Pieces> functions)
{
    if (functions.empty())
        return {};
    for (std::size_t width = 1; width < functions.size(); width *= 2) {
        for (std::size_t i = 0; i + width < functions.size(); i += 2 * width)
            functions[i] = lower(functions[i], functions[i + width]);
    }
    return std::move(functions.front());
}

void cutBelow(Pieces& pieces, double litres)
{
    const auto first = std::ranges::find_if(
        pieces, [&](const Piece& piece) { return piece.to >= litres - kLitreTolerance; });
    pieces.erase(pieces.begin(), first);
    for (Piece& piece : pieces) {
        if (piece.from >= litres)
            break;
        clip(piece, litres);
    }
}

void cutAbove(Pieces& pieces, double litres)
{
    while (!pieces.empty() && pieces.back().from > litres + kLitreTolerance)
        pieces.pop_back();
    if (!pieces.empty())
        pieces.back().to = std::max(pieces.back().from, std::min(pieces.back().to, litres));
}

} // namespace undermark::planning
