// SPDX-License-Identifier: GPL-3.0-or-later
//
// Corrections to pumped litres that are off unless the user turns them on, each
// saying what it changed: volume at 15 C, and energy of the blend.
#pragma once

#include "engine/base/records.h"
#include "engine/base/sentence.h"

#include <span>
#include <string>

namespace undermark {

// Kilograms per cubic metre at 15 C.
inline constexpr double kPetrolDensity15 = 745;
inline constexpr double kDieselDensity15 = 835;

// Volume at 15 C over volume at `temperature`: exp(-a dT (1 + 0.8 a dT)), with
// dT = t - 15 and a = K0/rho^2 + K1/rho + K2 by density class (ASTM D1250 /
// API MPMS 11.1, metric constants of 1980). Density 653 to 1075 kg/m3,
// nothing outside.
std::optional<double> volumeCorrection(double density15_kgPerM3, Temperature temperature);

// Energy per litre against petrol without ethanol (e0) or plain diesel: e10
// .966, e85 .734 of e10; a number in between is taken as a straight line in the
// ethanol share. Nothing for a blend that is not known. Upper or lower case.
std::optional<double> energyOfBlend(const std::string& blend);

struct CorrectionOptions {
    bool to15Celsius = false;
    bool blendEnergy = false;
    FuelKind fuel = FuelKind::petrol;
};

struct Correction {
    std::size_t fill = 0;    // position
    Volume before;
    Volume after;
    std::vector<Sentence> why;
};

struct CorrectedFills {
    std::vector<Fill> fills;             // same order and count
    std::vector<Correction> changes;     // only what changed
    std::size_t unknown = 0;             // fills without the temperature or blend that was needed
};

// Applies what is switched on; with both off the fills come back untouched.
// What is burnt until a fill was bought at the fill before, so the energy is
// that of the blend before (the rest in the tank is neglected): rates are then
// in litres of the pure fuel.
CorrectedFills correctFills(std::span<const Fill> fills, const CorrectionOptions& options);

} // namespace undermark
