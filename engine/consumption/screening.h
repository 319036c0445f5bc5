// SPDX-License-Identifier: GPL-3.0-or-later
//
// Finds entries that are probably wrong, says why and what would mend them.
// Nothing is changed or dropped: a flagged stretch stays in the records, is held for
// both a slip and a change of the car (consumption_model.h), and waits for the user's
// ruling.
#pragma once

#include "engine/consumption/judge.h"

#include <vector>

namespace undermark {

struct ScreenOptions {
    std::optional<Volume> capacity;      // to the first click; of several tanks of all together
    // What the one tank takes that a fill went into, by position of the fill; may be shorter
    // than the fills: then what all take.
    std::vector<Volume> tankOfFill;
    // The user's rulings by position of the fill: true counts, false is left
    // out, nothing lets the screening decide. May be shorter than the fills.
    std::vector<std::optional<bool>> rulings;
    IntervalOptions intervals;
};

struct Screened {
    ConsumptionModel model;              // has learnt from everything but what is left out
    std::vector<FillFlag> flags;         // by fill; ruled fills are not flagged again
    std::vector<Interval> intervals;     // all stretches, flagged ones too
    std::vector<Belief> beliefs;         // by interval
};

// Walks through the log once. O(fills * modes^3 + trips).
Screened screen(std::span<const Fill> fills, std::span<const Trip> trips, ConsumptionModel model,
                const ScreenOptions& options = {});

} // namespace undermark
