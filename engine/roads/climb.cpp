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
    const bool backwards = to < from;
    const Distance lower = std::min(from, to), upper = std::max(from, to);
    for (std::size_t i = 1; i < profile.size(); ++i) {
        const HeightPoint &a = profile[i - 1], &b = profile[i];
        const Distance begin = std::max(a.at, lower), end = std::min(b.at, upper);
        if (b.afterGap || begin >= end)
            continue;
        const double along = (b.metres - a.metres) * ((end - begin) / (b.at - a.at));
        const double rise = backwards ? -along : along;
        if (rise > 0)
            climb.up += rise;
        else
            climb.back += std::min(-rise, rolling * (end - begin).metres());
    }
    return climb;
}

Result<Estimate<Consumption>> litresPerHeight(const ClimbingCar& car)
{
    const auto isSpread = [](double value) { return std::isfinite(value) && value >= 0; };
    if (!(car.massKg > 0 && isSpread(car.massKg) && isSpread(car.massSdKg)))
        return failInput(Sentence::of("a car's mass must be above 0"), Sentence::of("kg above 0"));
    if (!(car.efficiency > 0 && car.efficiency < 1 && isSpread(car.efficiencySd)))
        return failInput(Sentence::of("an engine's efficiency must be between 0 and 1"));
    const double joulesPerKm = car.massKg * kGravity * 1000;
    const double perKm = joulesPerKm / (car.efficiency * energyPerLitreMJ(car.fuel) * 1e6);
    const double relative = std::hypot(car.massSdKg / car.massKg, car.efficiencySd / car.efficiency);
    return Estimate<Consumption>{Consumption::fromLitresPerKm(perKm), Consumption::fromLitresPerKm(perKm * relative)};
}

void addClimbs(Route& route, const HeightProfile& profile, double rolling)
{
    const auto net = [&](Distance from, Distance to) {
        const Climb climb = climbBetween(profile, from, to, rolling);
        return Distance::fromMetres(climb.up - climb.back);
    };
    for (std::size_t i = 0; i + 1 < route.points.size(); ++i) {
        const Distance from = route.points[i].at, to = route.points[i + 1].at;
        route.points[i].climb = {net(from, to), net(to, from)};
    }
}

} // namespace undermark
