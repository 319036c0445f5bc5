// SPDX-License-Identifier: GPL-3.0-or-later
//
// Finds entries that are probably wrong, says why and what would mend them.
// Nothing is changed or dropped: a flagged stretch stays in the records, is
// kept out of what is learnt, and waits for the user's ruling.
#pragma once

#include "engine/consumption/consumption_model.h"

#include <string>
#include <vector>

namespace undermark {

enum class FlagCause {
    forgottenFill,    // too little fuel for the distance: a fill is not in the log
    secondCan,        // too much fuel: a can was filled as well
    moreThanFits,     // more litres than the tank takes
    wrongOdometer,    // this stretch is too long or short and the next makes up for it
    odometerBackward, // lower than last time: a swapped dash, or a slip
    gallonsAsLitres,
    milesAsKm,
    twiceTheUsual,    // twice the usual consumption, without a likelier cause
    unlikely,         // outside what the car does, without a likelier cause
};

// "forgotten fill", as in `flagged[].cause`.
const char* causeName(FlagCause cause);

struct FillFlag {
    std::size_t fill = 0;        // position of the fill that ended the stretch
    FlagCause cause = FlagCause::unlikely;
    double probability = 1;      // of a stretch at least this odd
    std::string text;            // one sentence for people: what was seen, what is proposed
    std::optional<Volume> volume;        // proposed litres of this fill
    std::optional<Volume> missing;       // proposed litres of a fill to be added before it
    std::optional<Distance> odometer;    // proposed odometer of this fill
    std::optional<Distance> distance;    // proposed km since the fill before (from `judge`: of
                                         // the stretch, and `volume` too)
};

struct ScreenOptions {
    std::optional<Volume> capacity;      // to the first click
    // The user's rulings by position of the fill: true counts, false is left
    // out, nothing lets the screening decide. May be shorter than the fills.
    std::vector<std::optional<bool>> rulings;
    IntervalOptions intervals;
};

// Judges one stretch against what `model` has learnt before it: flagged where
// its probability under the predictive law is below 1 in 10,000; below 1 in 500
// where a wrong unit or a wrong odometer would make it ordinary. A model that has seen fewer than three stretches flags
// only what no car does. `next` helps to tell a wrong odometer.
std::optional<FillFlag> judge(const ConsumptionModel& model, const Interval& stretch,
                              const std::optional<Volume>& capacity,
                              const Interval* next = nullptr);

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
