// SPDX-License-Identifier: GPL-3.0-or-later
//
// What driving may cost, by mode: what the range law and the planner ask.
#pragma once

#include "engine/base/error.h"
#include "engine/base/quantity.h"
#include "engine/consumption/mode_rates.h"
#include "engine/range/level_spread.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace undermark {

// A piece of road in one mode; `mode` indexes the rates.
struct RouteLeg {
    Distance length;        // >= 0
    std::size_t mode = 0;
    Distance climb{};       // of height beyond the rates' usual hills: what rises less what its
                            // falls give back; may be below 0
};

// In world k the rates are jointly normal: mean f r, covariance f^2 S + s^2 r r', with f
// and s the world's factor, r `mean` and S `covariance`. Past driving and driving ahead
// share the world and the errors within it.
struct RateModel {
    std::vector<std::string> modes; // empty: mean[0] holds for every mode
    std::vector<Consumption> mean;  // > 0, one per mode, over all worlds
    std::vector<double> covariance; // S: (L/km)^2, row by row, modes x modes
    std::vector<RateWorld> worlds{{1.0, 1.0, 0.0}};
    double legNoiseSd = 0.0; // noise of the road, L per square root of km
    FlowRate idling;         // L/h, for idle minutes at controls
    // Per km of height climbed, beside the mode's rate: its error is common to all the road and
    // independent of the modes', each world's factor is on it as well.
    Estimate<Consumption> climb;
    double usualClimb = 0.0; // km of height in a km of road, which the modes' rates hold

    static RateModel single(Estimate<Consumption> rate, double legNoiseSd = 0.0);

    // Nothing for a mode that is not there; the first where one rate is for all.
    std::optional<std::size_t> indexOf(const std::string& mode) const;
    // What one mode burns over a long way: with the spread of all worlds.
    Estimate<Consumption> rateOf(std::size_t mode) const;
    // Of the level at the end of this road, known to `levelSd` at its beginning.
    LevelSpread spreadAfter(Volume levelSd, std::span<const RouteLeg> road) const;
    Volume burntOver(std::span<const RouteLeg> road) const; // mean
    // The leg's, in km, but no more downwards than brings its litres to nothing: no road gives
    // fuel back.
    double climbKm(const RouteLeg& leg) const;
};

// Every mode's rate and its spread so many times as large; `factor` above 0. The road's noise
// and the climb stay.
RateModel withRatesTimes(RateModel rates, double factor);

// Every mode's rate so much higher, as somebody states it for a load that is carried; >= 0. Its spread stays.
RateModel withRatesPlus(RateModel rates, Consumption more);

// badInput where a number is not finite, a rate is not above 0, a variance or spread is
// negative (the climb's rate too), sizes do not match, or the worlds' weights and factors do not average to 1.
Result<void> checkRates(const RateModel& rates);

} // namespace undermark
