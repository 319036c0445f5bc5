// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which proof of the hidden reserve to get next: the safest that helps, with
// the spread it would leave. Driving until the engine stops is never offered.
#pragma once

#include "engine/tank/hidden_reserve.h"

#include <optional>
#include <string>

namespace undermark {

// From safest to the one with most fuel in the open.
enum class NextProofKind {
    tankVolume,        // find the tank's volume: paper only
    fillFromZero,      // fill to the first click when the gauge reads zero, note the litres
    base,              // drain, pour a measured base and read zero anew
    measureLeftBehind, // drain, then measure what stayed behind with the tank open
};

struct NextProof {
    NextProofKind kind;
    Volume sdNow;
    Volume sdAfter;
    Sentence text;    // what to do
    Sentence caution; // what can hurt, people or the car
};

// The first kind that leaves at most nine tenths of the reserve's sd, else the
// best one that leaves at most 98 %, else nothing: more proof of these kinds
// would not help. Filling from zero helps only where the capacity is known from
// elsewhere; the state knows. Assumed errors of the proofs (common practice, no
// source): tank volume 1 L, fill from zero 0.95 L, base 0.2 L, left-behind 0.2 L.
// Kinds safer than `safest` are not considered: for a caller that has no place to
// keep such a proof.
std::optional<NextProof> suggestNextProof(const HiddenReserve& reserve,
                                          NextProofKind safest = NextProofKind::tankVolume);

} // namespace undermark
