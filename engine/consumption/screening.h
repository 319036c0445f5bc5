// SPDX-License-Identifier: GPL-3.0-or-later
//
// Finds entries that are probably wrong, says why and what would mend them.
// Nothing is changed or dropped: a flagged stretch stays in the records, is
// kept out of what is learnt, and waits for the user's ruling.
#pragma once

#include "engine/consumption/judge.h"

#include <vector>

namespace undermark {

struct ScreenOptions {
    std::optional<Volume> capacity;      // to the first click
    // The user's rulings by position of the fill: true counts, false is left
    // out, nothing lets the screening decide. May be shorter than the fills.
    std::vector<std::optional<bool>> rulings;
    IntervalOptions intervals;
};

// Decides whether flagged stretches are to be learnt from after all: three odd
// ones in a row on the same side are no slip but a change of the car, and are
// believed from then on.
class ChangeWatch {
public:
    // Call for each stretch in order; side: -1 too little fuel, +1 too much, 0 not
    // flagged. True where the stretch may be learnt from.
    bool admits(int side);

private:
    int m_side = 0;
    int m_run = 0;
};

struct Screened {
    ConsumptionModel model;              // has learnt from everything that counts
    std::vector<FillFlag> flags;         // by fill; ruled fills are not flagged again
    std::vector<Interval> intervals;     // all stretches, flagged ones too
    std::vector<bool> learnt;            // by interval
};

// Walks through the log once. O(fills * modes^3 + trips).
Screened screen(std::span<const Fill> fills, std::span<const Trip> trips, ConsumptionModel model,
                const ScreenOptions& options = {});

} // namespace undermark
