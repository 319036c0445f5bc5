// SPDX-License-Identifier: GPL-3.0-or-later
//
// What an owner of the promise campaign asks at one time, what was answered, and what came
// true.
#pragma once

#include "tests/accuracy/promise/owner.h"

#include <vector>

namespace undermark::test {

enum class Asked { fullToZero, fullToDry, odometerToZero, odometerToDry, restToZero, restToDry, movingToZero, past, dateToZero,
                   dateToDry };
constexpr std::array kAsked{"to zero from full", "to dry from full", "to zero by odometer", "to dry by odometer",
                            "to zero by reading at rest", "to dry by reading at rest",
                            "to zero by reading moving", "past zero", "to zero by the date alone",
                            "to dry by the date alone"};

struct Answer {
    Asked asked;
    std::optional<Distances> promised;   // none: it was refused
    double trueKm;
};

struct Cost {
    double askedSeconds = 0.0, learntSeconds = 0.0;
    long asked = 0, learnt = 0;
};

// Asks everything: at once, and on the way of `run` where the level is asked for. Before the
// first fill the owner, who brimmed the tank, states the capacity for the level.
std::vector<Answer> askAll(Owner& owner, const Run& run, Cost& cost);

} // namespace undermark::test
