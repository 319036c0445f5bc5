// SPDX-License-Identifier: GPL-3.0-or-later
//
// The law of one level, after driving on from where it was last known, and what it asks
// of the mean: the formula that distances, risks and purchases share. With x the km by
// mode since then, in a world of factor f +- s the level is normal,
//
//     mean      level - (f - 1) burnt
//     variance  own + f^2 x'Sx + (s burnt)^2
//
// burnt = x'r; `own` the variance of the level then and tau^2 per km of the road since.
#pragma once

#include "engine/consumption/mode_rates.h"

#include <span>

namespace undermark {

struct LevelSpread {
    double own = 0.0;      // L^2
    double residual = 0.0; // x'Sx, L^2
    double burnt = 0.0;    // x'r, L

    double varianceIn(const RateWorld& world) const; // L^2
    double shiftIn(const RateWorld& world) const;    // L, of the mean
};

// Over all worlds, L^2.
double varianceOf(const LevelSpread& spread, std::span<const RateWorld> worlds);

// P(level < limit) of a level whose mean is `room` litres above it. Without any spread
// that is 1 below the limit (by more than 1e-9 L), else 0.
double riskBelow(double room, const LevelSpread& spread, std::span<const RateWorld> worlds);

// A probability that is allowed, with its normal quantile, which is dear to compute.
struct AllowedRisk {
    double risk = 0.5; // above 0, to 0.5
    double z = 0.0;    // of 1 - risk

    static AllowedRisk of(double risk);
    static AllowedRisk ofQuantile(double z);
};

// The least room with that risk, to 1e-9 L; one world is the closed form z sd. About
// five times riskBelow.
double roomFor(const AllowedRisk& allowed, const LevelSpread& spread,
               std::span<const RateWorld> worlds);

} // namespace undermark
