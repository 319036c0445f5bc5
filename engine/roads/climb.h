// SPDX-License-Identifier: GPL-3.0-or-later
//
// What heights cost in fuel, beside the car's rate on the flat:
//
//   up    m g dh / (efficiency x energy per litre)
//   down  gives back m g dh likewise, but never more than rolling costs on that way,
//         m g crr d: what is steeper is braked away
//
// so that a loop costs no less than the flat. g = 9.80665 m/s2 (standard gravity, CGPM 1901).
#pragma once

#include "engine/base/quantity.h"
#include "engine/base/records.h"
#include "engine/planning/route.h"
#include "engine/roads/height_profile.h"

namespace undermark {

// What is carried, and how well the engine turns fuel into driving. The defaults are a middling
// car's (common practice, no source), their spread what cars differ by.
struct ClimbingCar {
    double massKg = 1500, massSdKg = 200;
    double efficiency = 0.25, efficiencySd = 0.04; // of the energy in the fuel, above 0, below 1
    double rolling = 0.012;                        // resistance / weight, on tarmac
    FuelKind fuel = FuelKind::petrol;
};

// Net calorific value, MJ/L: petrol 32, diesel 36, lpg 25, ethanol (E85) 23 (rounded, from memory
// of handbooks).
double energyPerLitreMJ(FuelKind fuel);

// A way's ups, and what its downs can give back, in metres of height.
struct Climb {
    double up = 0;
    double back = 0; // at most `rolling` times the way down
    Climb& operator+=(const Climb& other)
    {
        up += other.up;
        back += other.back;
        return *this;
    }
};

// From `from` to `to` along the profile (smoothed before, see withoutRipples); heights in between
// are interpolated. What lies outside the profile, or in a gap, adds nothing. Adds up: two ways
// one after the other cost what they cost as one, but for a point put into a fall. Where `to` lies
// before `from` the way is driven backwards.
Climb climbBetween(const HeightProfile& profile, Distance from, Distance to, double rolling);

// Beside the flat's rate, per km of height climbed; the spread is the mass's and the efficiency's,
// common to all legs of a trip. badInput where a mass or a spread is negative or not finite, or the
// efficiency is not between 0 and 1.
Result<Estimate<Consumption>> litresPerHeight(const ClimbingCar& car);

// What the sections of a route climb whose km are the profile's.
void addClimbs(Route& route, const HeightProfile& profile, double rolling = ClimbingCar().rolling);

} // namespace undermark
