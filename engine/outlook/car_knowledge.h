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

#include <optional>
#include <string>
#include <vector>

namespace undermark {

// A proof that could not be used, or that contradicts what was known.
struct ProofFlag {
    std::size_t proof = 0;   // position in VehicleLog::proofs
    Sentence text;
};

struct CarKnowledge {
    VehicleLog log;
    Gauge gauge;                         // of the latest calibration
    HiddenReserve reserve;
    Screened consumption;                // the model, its flags and stretches
    CorrectedFills corrections;          // what the options below changed of the litres
    std::vector<ProofFlag> proofFlags;
    // The day for which everybody asks who names no other: of the season, for the rates.
    // Without it that of the last fill.
    std::optional<Instant> today;
    Circumstances now() const { return {.begin = today, .days = {}, .burnsMore = {}}; }

    const Vehicle& vehicle() const { return log.vehicle.value; }
    // Litres that surge makes unusable in a mode; none for the usual mix.
    Volume surgeMargin(const std::string& mode) const;
};

// Of the level after a full fill: where the pump clicks, and how much the tank holds then. Litres
// that are told without their spread are known no better.
Volume fullFillSd(const CarKnowledge& car);

// Errors: badInput where a stored calibration cannot be fitted.
// Cost: O(fills * modes^3 + trips + points^2).
// `corrections` are off by default; they change the litres that consumption is
// learnt from, never the log. Its `fuel` is the vehicle's, whatever is given.
Result<CarKnowledge> learn(VehicleLog log, CorrectionOptions corrections = {});

} // namespace undermark
