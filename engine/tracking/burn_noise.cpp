// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/burn_noise.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// Consumption: sd 0.32 L over one litre; a stated rate wanders by 1.7 % per
// litre^0.5 (30 % per sqrt(10 L) where the rate is only guessed).
constexpr double kUseL2PerL = 0.1;
constexpr double kMeasuredUseL2PerL = 0.01;      // an injector's count is off by a constant
constexpr double kMeasuredScale2PerL = 0.00003;
constexpr double kScale2PerL = 0.0003;
constexpr double kGuessedScale2PerL = 0.01;
constexpr double kTimeScale2PerL = 0.02;  // level alone: litres per hour change with the road

// Level alone and no sender: litres per hour differ by 60 % from stretch to
// stretch (town, open road, motorway; some 2 L each), so the usual value is known
// by the number of stretches seen, and the road ahead differs by a quarter besides.
constexpr double kStretch = 0.6;
constexpr double kStretchL = 2.0;
constexpr double kRoadPriorL = 5.0;      // weight of the guess
constexpr double kRoadAhead = 0.25;
constexpr double kRoadUseL2PerL = 0.8;

} // namespace

BurnNoise burnNoise(const FuelUse& use, bool blind)
{
    if (use.measured())
        return {kMeasuredUseL2PerL, kMeasuredScale2PerL};
    if (use.timeAlone())
        return blind ? BurnNoise{kRoadUseL2PerL, kScale2PerL}
                     : BurnNoise{kUseL2PerL, kTimeScale2PerL};
    return {kUseL2PerL, use.guessed() ? kGuessedScale2PerL : kScale2PerL};
}

Estimate<Fraction> scaleOfRoadAhead(double scaleNow, double burntL, double usedL)
{
    const double usual = (burntL + kRoadPriorL) / (usedL + kRoadPriorL);
    const double scale = std::max(scaleNow, usual);
    const double sd = scale * std::hypot(kRoadAhead, kStretch / std::sqrt(1.0 + usedL / kStretchL));
    return {Fraction::fromRatio(scale), Fraction::fromRatio(sd)};
}

FuelFilter countedOn(FuelFilter filter, double usedL)
{
    filter.predict(usedL, {.levelL2 = kUseL2PerL * filter.scale() * usedL});
    return filter;
}

} // namespace undermark
