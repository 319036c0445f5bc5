// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/climb.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kGravity = 9.80665; // m/s2

} // namespace

double energyPerLitreMJ(FuelKind fuel)
{
    switch (fuel) {
    case FuelKind::petrol: return 32;
    case FuelKind::diesel: return 36;
    case FuelKind::lpg: return 25;
    case FuelKind::ethanol: return 23;
    }
    return 32;
}

Climb climbBetween(const HeightProfile& profile, Distance from, Distance to, double rolling)
{
    Climb climb;
    for (std::size_t i = 1; i < profile.size(); ++i) {
        const HeightPoint &a = profile[i - 1], &b = profile[i];
        const Distance begin = std::max(a.at, from), end = std::min(b.at, to);
        if (b.afterGap || begin >= end)
            continue;
        const double rise = (b.metres - a.metres) * ((end - begin) / (b.at - a.at));
        if (rise > 0)
            climb.up += rise;
        else
            climb.back += std::min(-rise, rolling * (end - begin).metres());
    }
    return climb;
}

Estimate<Volume> litresOf(const Climb& climb, const ClimbingCar& car)
{
    const double joules = car.massKg * kGravity * (climb.up - climb.back);
    const double litres = joules / (car.efficiency * energyPerLitreMJ(car.fuel) * 1e6);
    const double relative = std::hypot(car.massSdKg / car.massKg, car.efficiencySd / car.efficiency);
    return {Volume::fromLitres(litres), Volume::fromLitres(std::fabs(litres) * relative)};
}

} // namespace undermark
