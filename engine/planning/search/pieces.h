// SPDX-License-Identifier: GPL-3.0-or-later
//
// A cost as a function of litres, piecewise linear: what the planner knows
// about every level it can be at. Pieces are sorted and closed; they may leave
// gaps, jump, and shrink to points; where two meet, the lower value counts.
// Inner type of the planner: litres and money are bare doubles here.
#pragma once

#include <vector>

namespace undermark::planning {

inline constexpr double kLitreTolerance = 1e-9; // two levels this close are the same

struct Piece {
    double from;
    double to;
    double cost;  // at `from`
    double slope; // cost per litre
    int trace;    // how this level was reached
    double at(double litres) const { return cost + slope * (litres - from); }
};

using Pieces = std::vector<Piece>;

// The lower envelope of two functions, O(pieces); `a` where they are equal.
Pieces lower(const Pieces& a, const Pieces& b);

// The parts of `b` that are below `a`, O(pieces).
Pieces partsBelow(const Pieces& b, const Pieces& a);

// The lower envelope of many, O(pieces log many).
Pieces lowerOfAll(std::vector<Pieces> functions);

// Cuts off what lies below `litres`, with the tolerance above.
void cutBelow(Pieces& pieces, double litres);
// Cuts off what lies above `litres`.
void cutAbove(Pieces& pieces, double litres);

} // namespace undermark::planning
