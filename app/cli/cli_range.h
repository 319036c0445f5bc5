// SPDX-License-Identifier: GPL-3.0-or-later
//
// Answers that `range`, `reserve` and `demo` print alike.
#pragma once

#include "app/cli/cli_logbook.h"

namespace undermark {

// Whole kilometres; a sure distance is never rounded up.
std::string kmDown(Distance d);

// The two lines of distances, sure first; rounded down.
void printRange(const Distances& toZero, const Distances& toDry);

// The reserve, its evidence and the next proof, as text or JSON on stdout.
// notFound for an unknown mode.
Result<void> printReserve(const CarKnowledge& car, const std::string& mode, bool json);

} // namespace undermark
