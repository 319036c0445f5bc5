// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is known now of the level and of the rates, together. Whoever asks how far, how
// risky or how much to buy asks this: the distances of `range`, past zero, and the
// planner's start. After x km of road since the level was last known it is
// U0 - x'c - noise, so it goes with the rates, and what is left after y km more has the
// variance s0^2 + (x+y)'C(x+y) + tau^2 (|x|+|y|). A full fill, a reading or litres told
// make the level known anew, independently of the rates.
#pragma once

#include "engine/consumption/mode_rates.h"
#include "engine/range/range_law.h"

namespace undermark {

struct JointLaw {
    RateModel rates;               // every mode and, last and without a name, the usual mix
    std::vector<Volume> surge;     // by mode: what surge keeps from the pump
    Estimate<Volume> usable;       // when the level was known, down to dry on a level road
    Estimate<Volume> aboveZero;    // the same, down to the zero mark
    std::vector<RouteLeg> driven;  // since then

    // Of `usable` or `aboveZero`: what the road since then left of it.
    Estimate<Volume> now(Estimate<Volume> known) const;
    // For ever on in one mode. Errors: badInput as of RangeLaw::make.
    Result<RangeLaw> toZero(std::size_t mode) const;
    Result<RangeLaw> toDry(std::size_t mode) const;
};

// Rates and worlds as the law takes them, their mean over all worlds. The usual mix's
// covariance with each mode follows from its shares. O(modes^2).
RateModel rateModel(const ModeRates& learnt);

// One stated rate for all of their modes, its error common to them; with the road's noise as it
// was learnt.
RateModel statedRates(const ModeRates& learnt, Estimate<Consumption> rate);

} // namespace undermark
