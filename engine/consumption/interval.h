// SPDX-License-Identifier: GPL-3.0-or-later
//
// From what the user wrote down to what can be learnt from: the fuel burnt
// between two known levels, and the driving done in between.
#pragma once

#include "engine/base/records.h"

#include <functional>
#include <span>

namespace undermark {

// One stretch between two known levels, usually from full to full.
struct Interval {
    Instant begin{};
    Instant end{};
    Estimate<Volume> burnt;      // sd: what is known beyond the click (neck, partial); 0 for click to click
    int clickEnds = 2;           // ends at the first click (0 to 2), each with the click's own scatter
    Distance distance;           // by odometer or trip meter, > 0
    bool byTripMeter = false;    // typed as a distance, not the difference of two odometers
    std::map<std::string, Distance> byMode;   // what trips account for, at most `distance`
    Distance claimedByTrips;     // what they add up to as logged, before being scaled down
    double idleHours = 0;        // of the trips, standing with the engine running
    double coldStarts = 0;
    Distance climbed;            // of height, net, by the trips that tell it
    Distance climbedOver;        // the road of those trips
    std::size_t firstFill = 0;   // position of the fill that began it
    std::size_t lastFill = 0;    // position of the fill that ended it
};

// Usable litres at a reading of the sender; nothing at a float stop.
using LevelOf = std::function<std::optional<Estimate<Volume>>(Signal)>;

struct IntervalOptions {
    // Litres that filling to the neck adds after the first click. Common
    // practice, no source: several litres.
    Estimate<Volume> neckExtra{Volume::fromLitres(4), Volume::fromLitres(2)};
    // Converts readings; without it partial fills wait for the next full one.
    LevelOf levelOf;
    // What levelOf gives at the first click; needed with levelOf.
    Volume fullLevel;
    // Positions of fills, in order, at which no stretch ends: what was in the tanks before is not
    // known. The next one begins there.
    std::vector<std::size_t> anew{};
};

// Full-to-full stretches in order. `fills` and `trips` must be sorted by time;
// a trip belongs to the stretch whose later fill is the first at or after it.
//  * partial fills are summed into the next full one; before the first full
//    and after the last one, partial fills with a reading bound a stretch;
//  * a fill to the neck is the click plus neckExtra, with its sd;
//  * the distance is the odometer's; the trip meter's where that is missing or
//    was reset; an unknown distance, or one that is not positive, ends the chain,
//    and the next known level starts afresh;
//  * trips that claim more than the distance are scaled down to it in
//    proportion: the odometer is trusted.
// Cost: O(fills + trips).
std::vector<Interval> intervalsFrom(std::span<const Fill> fills, std::span<const Trip> trips,
                                    const IntervalOptions& options = {});

} // namespace undermark
