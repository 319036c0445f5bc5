// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/outlook/car_knowledge.h"

namespace undermark {

// Conditions car.reserve on the log's proofs of the vehicle's own tank, in their order, with the rates as they are
// known now, each against the zero mark that was in force at its time (zero_mark.h);
// car.proofFlags says what was not used, and why. Of one drive one entry
// counts (engine/tank/proof_choice.h). A proof against all that was known (4 sd) does not
// count until it is confirmed: by another that contradicts in the same way and agrees
// with it, or when the wrong one of the earlier entries is corrected or taken back.
void weighProofs(CarKnowledge& car);

} // namespace undermark
