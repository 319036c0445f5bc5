// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether one stretch is what the car does, and if not, which slip explains it
// best: the probability of each slip times that of the stretch once it is mended.
#pragma once

#include "engine/base/sentence.h"
#include "engine/consumption/consumption_model.h"

#include <string>

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
    Sentence text;               // one sentence for people: what was seen, what is proposed
    std::optional<Volume> volume;        // proposed litres of this fill
    std::optional<Volume> missing;       // proposed litres of a fill to be added before it
    std::optional<Distance> odometer;    // proposed odometer of this fill
    std::optional<Distance> distance;    // proposed km since the fill before (from `judge`: of
                                         // the stretch, and `volume` too)
};

// Past the click to the neck, and the pump's own error: litres beyond the stated
// capacity that can still have gone in.
bool fitsTank(Volume pumped, Volume capacity);

// Judges one stretch against what `model` has learnt before it: flagged where its
// probability under the likeliest branch is below 0.0023, about four standard
// deviations; below 1 in 100 where a wrong unit or a wrong odometer would make it
// ordinary; while fewer than four stretches are known also where the rate jumps by more
// than 1.6. `next` helps to tell a wrong odometer. O(modes^2).
std::optional<FillFlag> judge(const ConsumptionModel& model, const Interval& stretch,
                              const std::optional<Volume>& capacity,
                              const Interval* next = nullptr);

} // namespace undermark
