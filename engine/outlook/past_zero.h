// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/outlook/car_knowledge.h"
#include "engine/range/range_law.h"

namespace undermark {

// How far past the zero mark the car goes, from the hidden reserve alone, driven in `mode`
// (empty: the usual mix), its surge margin taken off. Not the distance to dry less that to
// zero: those two are quantiles of different sums. Errors: notFound for an unknown mode.
Result<Distances> pastZero(const CarKnowledge& car, const std::string& mode);

} // namespace undermark
