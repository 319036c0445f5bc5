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
// would not help. Assumed errors of the proofs (common practice, no source): 0.2 L.
std::optional<NextProof> suggestNextProof(const HiddenReserve& reserve);

} // namespace undermark
