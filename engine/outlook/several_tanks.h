// SPDX-License-Identifier: GPL-3.0-or-later
//
// A car of several tanks, taken apart and seen as one.
//
//     VehicleLog --logOfTank--> the log as of one further tank --learn--> its gauge and reserve
//                --wholeFills-> the fills as of all tanks together ----> the car's rates, its level
//
// What all tanks burn between two moments at which all of them were full is what went into all of
// them in between, whichever fed the engine: so rates, and the level by the log, ask no tap. A
// further tank counts from its first fill on; before that it is taken for empty. One that shares
// its level with the vehicle's own (TankFeed::shared) is filled through the same neck: a fill of
// either is one of both.
#pragma once

#include "engine/logbook/entry.h"

#include <map>
#include <vector>

namespace undermark {

// A halt: fills within so long without a trip or, by the odometer or the trip meter, more than
// so far between them (from pump to pump; judgement, no source).
inline constexpr std::chrono::hours kHaltTime{3};
inline constexpr Distance kHaltWay = Distance::fromKm(5);

// The log as if this tank were the vehicle's own and only one: its capacity, sender,
// calibrations, fills, proofs, levels, photos and verifications; everything else is the vehicle's.
VehicleLog logOfTank(const VehicleLog& log, const ExtraTank& tank);

// What is driven on while both fall together: the tank's share of it, by capacity. 1 for a tank
// that feeds alone; `name` empty: the vehicle's own.
double burnShare(const VehicleLog& log, const std::string& name);

struct WholeFills {
    // Same order and count. Full is what left all tanks full at one halt: its last fill, which
    // then has the halt's odometer and trip meter. Of one tank: as logged.
    std::vector<Fill> fills;
    // Positions of full ones before which a further tank was filled for the first time: what it
    // held is not known, so no stretch ends there.
    std::vector<std::size_t> anew;
    std::map<std::string, Instant> inUse; // further tanks, and since when
};

// O(fills + trips).
WholeFills wholeFills(const VehicleLog& log);

} // namespace undermark
