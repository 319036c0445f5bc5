// SPDX-License-Identifier: GPL-3.0-or-later
//
// What can be done at one fuel point, as a function of supply: the least
// objective on leaving from the least objective on arriving.
#pragma once

#include "engine/planning/search/pieces.h"
#include "engine/planning/search/problem.h"
#include "engine/planning/search/steps.h"

#include <optional>

namespace undermark::planning {

class Buying {
public:
    // Problem and steps must outlive this. A halt that buys nothing is worth looking
    // at only where its minutes may find the next place open.
    Buying(const Problem& problem, int point, StepLog& steps, bool haltsMatter = false);

    // By buying within the point's limits, up to where the pump is sure not to click yet
    // (Problem::clickRoom). Traces are proposed.
    // O(pieces), with a limit per point O(pieces log pieces).
    Pieces bought(const Pieces& arrived);

    // By pouring whole own cans; empty where they do not fit. Traces are proposed.
    Pieces poured(const Pieces& arrived, int cans);

    // The cheapest way to the first click of a run since `since`: objective, and how. Nothing
    // where the point's limit may end before it (Problem::fillRoom).
    struct FillUp {
        double cost;
        Step step;
    };
    std::optional<FillUp> cheapestFill(int since, const Pieces& arrived) const;

    // The supply with which one drives on from a full tank here.
    double highest() const;

private:
    Piece rising(const Piece& piece, double from, double litres, double more);
    Piece shifted(const Piece& piece, double litres, int cans = 0);
    Pieces boughtFreely(const Pieces& pieces);
    Pieces boughtWithin(const Pieces& pieces);

    const Problem& m_problem;
    const Offer& m_offer;
    int m_point;
    StepLog& m_steps;
    bool m_haltsMatter;
};

} // namespace undermark::planning
