// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/climbing_car.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kGravity = 9.80665; // m/s2
constexpr double kMassPerLitre_kg = 30, kMassSpread = 0.5;
constexpr double kStatedMassSpread = 0.1;
constexpr double kLeastMass_kg = 1; // keeps what is divided by it finite

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

ClimbingCar usualClimbingCar(std::optional<Volume> capacity, FuelKind fuel, std::optional<double> massKg)
{
    ClimbingCar car;
    car.fuel = fuel;
    if (massKg) {
        car.massKg = std::max(*massKg, kLeastMass_kg);
        car.massSdKg = kStatedMassSpread * car.massKg;
    } else if (capacity) {
        car.massKg = std::max(kMassPerLitre_kg * capacity->litres(), kLeastMass_kg);
        car.massSdKg = kMassSpread * car.massKg;
    }
    return car;
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

} // namespace undermark
