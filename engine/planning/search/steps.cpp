// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/steps.h"

#include <algorithm>

namespace undermark::planning {

// Proposals are counted down from below kStart, kept steps up from 0.
int StepLog::propose(const Step& step)
{
    m_proposed.push_back(step);
    return kStart - static_cast<int>(m_proposed.size());
}

int StepLog::keep(const Step& step)
{
    m_kept.push_back(step);
    return static_cast<int>(m_kept.size()) - 1;
}

Pieces StepLog::keepIn(Pieces pieces)
{
    std::vector<int> kept(m_proposed.size(), kStart);
    for (Piece& piece : pieces) {
        if (piece.trace >= kStart)
            continue;
        const auto proposal = static_cast<std::size_t>(kStart - piece.trace - 1);
        if (kept[proposal] == kStart)
            kept[proposal] = keep(m_proposed[proposal]);
        piece.trace = kept[proposal];
    }
    m_proposed.clear();
    return pieces;
}

std::vector<Purchase> StepLog::purchases(const Problem& problem, int trace, double supply) const
{
    std::vector<Purchase> bought;
    while (trace != kStart) {
        const Step& step = m_kept[static_cast<std::size_t>(trace)];
        const double detour = problem.offers[static_cast<std::size_t>(step.point)].detourLitres;
        const double before = step.fixedLitres ? supply - step.value + detour : step.value;
        const double litres = step.fixedLitres ? step.value : supply - step.value + detour;
        bought.push_back({step.point, litres, step.full, step.cans});
        supply = before;
        trace = step.parent;
    }
    std::ranges::reverse(bought);
    return bought;
}

} // namespace undermark::planning
