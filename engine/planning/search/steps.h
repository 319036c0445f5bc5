// SPDX-License-Identifier: GPL-3.0-or-later
//
// How the levels of the search were reached: a tree of purchases. Purchases are
// proposed by the hundred and few survive in a lower envelope; only those are
// kept.
#pragma once

#include "engine/planning/search/pieces.h"
#include "engine/planning/search/problem.h"

namespace undermark::planning {

// Buying at `point` either fixed litres, or up from the one supply `value`.
struct Step {
    int parent; // trace of the level before, kStart at the root
    int point;
    double value; // litres bought, or the supply before
    bool fixedLitres;
    bool full;
    int cans;
};

class StepLog {
public:
    // A trace for a piece that may yet lose; valid until the next keepIn.
    int propose(const Step& step);
    // A trace that lasts.
    int keep(const Step& step);
    // Keeps the proposed steps that are traces of `pieces`; forgets the others.
    Pieces keepIn(Pieces pieces);

    // The purchases, in driving order, that led to `supply` by `trace`.
    std::vector<Purchase> purchases(const Problem& problem, int trace, double supply) const;

private:
    std::vector<Step> m_kept;
    std::vector<Step> m_proposed;
};

} // namespace undermark::planning
