// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/range/level_spread.h"

#include "engine/base/normal_law.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace undermark {

double LevelSpread::varianceIn(const RateWorld& world) const
{
    const double common = world.factorSd * burnt;
    return own + world.factorMean * world.factorMean * residual + common * common;
}

double LevelSpread::shiftIn(const RateWorld& world) const
{
    return (1 - world.factorMean) * burnt;
}

double varianceOf(const LevelSpread& spread, std::span<const RateWorld> worlds)
{
    double variance = 0.0;
    for (const RateWorld& world : worlds) {
        const double shift = spread.shiftIn(world);
        variance += world.weight * (spread.varianceIn(world) + shift * shift);
    }
    return variance;
}

double riskBelow(double room, const LevelSpread& spread, std::span<const RateWorld> worlds)
{
    double risk = 0.0;
    for (const RateWorld& world : worlds) {
        const double sd = std::sqrt(spread.varianceIn(world));
        const double here = room + spread.shiftIn(world);
        risk += world.weight * (sd > 0 ? normalTail(here / sd) : here < -1e-9 ? 1.0 : 0.0);
    }
    return std::min(risk, 1.0);
}

AllowedRisk AllowedRisk::of(double risk)
{
    const double kept = std::clamp(risk, 1e-280, 0.5);
    return {kept, -normalQuantile(kept)};
}

AllowedRisk AllowedRisk::ofQuantile(double z)
{
    return {normalTail(z), z};
}

// Newton's method on the logarithm of the risk, which is nearly a parabola, kept between
// the least and the greatest that a world alone would ask for.
double roomFor(const AllowedRisk& allowed, const LevelSpread& spread,
               std::span<const RateWorld> worlds)
{
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (const RateWorld& world : worlds) {
        const double alone =
            allowed.z * std::sqrt(spread.varianceIn(world)) - spread.shiftIn(world);
        low = std::min(low, alone);
        high = std::max(high, alone);
    }
    double room = std::clamp(allowed.z * std::sqrt(varianceOf(spread, worlds)), low, high);
    for (int i = 0; i < 60 && high - low > 1e-9; ++i) {
        double risk = 0.0, slope = 0.0;
        for (const RateWorld& world : worlds) {
            const double sd = std::max(std::sqrt(spread.varianceIn(world)), 1e-12);
            const double z = (room + spread.shiftIn(world)) / sd;
            risk += world.weight * normalTail(z);
            slope += world.weight * normalDensity(z) / sd;
        }
        (risk > allowed.risk ? low : high) = room;
        const double step = slope > 0 ? risk * std::log(risk / allowed.risk) / slope : 0.0;
        if (slope > 0 && std::fabs(step) < 1e-9)
            return room + step;
        const double next = room + step;
        room = slope > 0 && next > low && next < high ? next : (low + high) / 2;
    }
    return high;
}

} // namespace undermark
