// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a block of readings says to the filter: a level, a bound where the float
// rests on a stop, or anything within a flat piece of the curve.
#pragma once

#include "engine/tracking/fuel_filter.h"
#include "engine/tracking/level_block.h"

namespace undermark {

// The block against what the filter expects; on a stop or a flat piece only what
// breaks the bound counts.
Innovation compare(const FuelFilter& filter, const BlockSummary& block, double noiseL2);

// Takes an exact block in. A lone outlier counts as one of four standard deviations
// (Huber's weight).
void takeExact(FuelFilter& filter, const BlockSummary& block, const Innovation& seen,
               double noiseL2);
// A block on a flat piece only says where the level is not: far below. The lower of
// reading and count is the safe one, so a reading below the count is taken as it is.
void takeFlat(FuelFilter& filter, const BlockSummary& block, const Innovation& seen,
              double noiseL2);
// A block on a stop moves the level only where the expectation breaks the bound, and
// never past it: block after block tells the same thing once, and nothing about the
// source's scale.
void takeBound(FuelFilter& filter, const BlockSummary& block, double noiseL2);

// Starts the level anew from the block: on a stop anywhere between it and the end of
// the tank, `farEndL`; `slowErrorSdL` is part of the reading.
void restart(FuelFilter& filter, const BlockSummary& block, double noiseL2, double slowErrorSdL,
             double farEndL, double rangeL);

} // namespace undermark
