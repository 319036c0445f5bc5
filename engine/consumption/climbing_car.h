// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a vehicle burns to climb, before its log has taught it:
//
//   litres = m g dh / (efficiency x energy per litre),   g = 9.80665 m/s2 (standard gravity, CGPM 1901)
#pragma once

#include "engine/base/error.h"
#include "engine/base/quantity.h"
#include "engine/base/records.h"

#include <optional>

namespace undermark {

// What is carried, and how well the engine turns fuel into driving. The defaults are a middling
// car's (common practice, no source), their spread what cars differ by.
struct ClimbingCar {
    double massKg = 1500, massSdKg = 200;
    double efficiency = 0.25, efficiencySd = 0.04; // of the energy in the fuel, above 0, below 1
    FuelKind fuel = FuelKind::petrol;
};

// Resistance over weight of what rolls on tarmac (common practice, no source). A fall gives back no
// more than rolling costs on its way: what is steeper is braked away.
inline constexpr double kRollingResistance = 0.012;

// Net calorific value, MJ/L: petrol 32, diesel 36, lpg 25, ethanol (E85) 23 (rounded, from memory
// of handbooks).
double energyPerLitreMJ(FuelKind fuel);

// The mass as stated, known to a tenth (who sits in it, what is loaded); else what such a tank
// usually belongs to, 30 kg for each litre: karts of 6 L, cars of 50 L and lorries of 300 L are
// within a factor of two of it (common practice, no source).
ClimbingCar usualClimbingCar(std::optional<Volume> capacity, FuelKind fuel, std::optional<double> massKg = {});

// Beside the road's rate, per km of height climbed; the spread is the mass's and the efficiency's.
// badInput where a mass is not above 0, a spread negative or anything not finite, or the efficiency
// not between 0 and 1.
Result<Estimate<Consumption>> litresPerHeight(const ClimbingCar& car);

} // namespace undermark
