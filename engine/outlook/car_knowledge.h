// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a logbook teaches about one car: level curve, hidden reserve, rates and
// the entries that look wrong. Made once, then asked (outlook.h).
//
// Simplifications: the stated capacity is no evidence about the reserve (its
// error is not known); proofs are weighed with the rates as they are now.
#pragma once

#include "engine/base/sentence.h"
#include "engine/calibration/gauge.h"
#include "engine/consumption/fuel_corrections.h"
#include "engine/consumption/screening.h"
#include "engine/logbook/logbook.h"
#include "engine/tank/hidden_reserve.h"

#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

// A proof that could not be used, or that contradicts what was known.
struct ProofFlag {
    std::size_t proof = 0;   // position in VehicleLog::proofs
    Sentence text;
};

// Of a car of several tanks gauge and reserve are its own tank's, and each further tank is a car of
// its own (several_tanks.h) whose rates are the whole car's. The sums below are of all tanks in
// use: their errors are the tanks' own, so the variances add.
struct CarKnowledge {
    VehicleLog log;
    Gauge gauge;                         // of the latest calibration
    HiddenReserve reserve;
    Screened consumption;                // the model, its flags and stretches
    CorrectedFills corrections;          // what the options below changed of the litres
    std::vector<ProofFlag> proofFlags;
    // The day for which everybody asks who names no other: of the season, for the rates.
    // Without it that of the last fill.
    std::optional<Instant> today{};
    std::vector<Fill> fills{};           // of all tanks together: WholeFills
    Volume clickSd{};                    // of one first click of this tank, as its log shows
    TankFeed feed = TankFeed::chosen;    // of a further tank
    std::optional<Instant> inUse{};      // of a further tank: since when there may be fuel in it
    double burnShare = 1.0;              // of what the car burns, while this tank feeds
    std::vector<CarKnowledge> further{}; // in order of recording
    Circumstances now() const { return {.begin = today, .days = {}, .burnsMore = {}}; }

    const Vehicle& vehicle() const { return log.vehicle.value; }
    // Litres that surge makes unusable in a mode; none for the usual mix.
    Volume surgeMargin(const std::string& mode) const;
    Estimate<Volume> hiddenReserve() const;  // usable litres below the zero marks
    Estimate<Volume> usableCapacity() const; // to the first clicks
    // The further tank of this name; null: there is none.
    const CarKnowledge* tank(const std::string& name) const;
};

// Of the level after a full fill: where the pump clicks, and how much the tank holds then. Litres
// that are told without their spread are known no better.
Volume fullFillSd(const CarKnowledge& car);

// `one` and what the further tanks in use add to it, which `of` says of each.
template <class Of>
Estimate<Volume> withFurther(Estimate<Volume> one, const CarKnowledge& car, Of&& of)
{
    for (const CarKnowledge& tank : car.further) {
        if (!tank.inUse)
            continue;
        const Estimate<Volume> more = of(tank);
        one = {one.mean + more.mean,
               Volume::fromLitres(std::hypot(one.sd.litres(), more.sd.litres()))};
    }
    return one;
}

// Errors: badInput where a stored calibration cannot be fitted.
// Cost: O(fills * modes^3 + trips + points^2).
// `corrections` are off by default; they change the litres that consumption is
// learnt from, never the log. Its `fuel` is the vehicle's, whatever is given.
Result<CarKnowledge> learn(VehicleLog log, CorrectionOptions corrections = {});

} // namespace undermark
