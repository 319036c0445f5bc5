// SPDX-License-Identifier: GPL-3.0-or-later
//
// When the car is where, and what is open then. A stop counts if its place is open on arrival,
// or opens within `mostWait`, which is then waited for. The clock on arrival is exact in three
// terms: the driving, idling and resting, the minutes of the stops made before, and the pouring, which
// the supply itself tells:
//
//     clock = departure + onTheWay + stopMinutes + (supply - start) x minutesPerLitre
//
// so an opening window is an interval of supply for each sum of stop minutes.
// Inner type of the planner: bare minutes, litres and km.
#pragma once

#include "engine/planning/search/pieces.h"

#include <limits>
#include <vector>

namespace undermark::planning {

struct Timetable {
    static constexpr double kForEver = std::numeric_limits<double>::infinity();
    // When one has to come by on the way, for a place that is off it: half of the detour before.
    struct Window {
        double opens = 0.0;        // since midnight
        double closes = 24 * 60.0; // below `opens`: past midnight; the same: the whole day
        // It opens on these days only, counted from the departure's; for ever: -inf and inf.
        double firstDay = -kForEver, lastDay = kForEver;
    };
    double departure = 0.0; // since midnight
    double minutesPerLitre = 0.0; // of pouring; may be 0
    double startLitres = 0.0;
    double mostWait = 0.0;           // for an opening, below a day
    double perMinuteWaited = 0.0;    // objective
    std::vector<double> onTheWay;    // minutes from the start to each point, without stops
    std::vector<Window> hours;       // of every point
    std::vector<double> stopMinutes; // of a stop there, without the pouring
    int last = -1;                   // the last point with hours

    // On arrival at a point with `supply`, after `stopped` minutes of stops.
    double clock(int point, double supply, double stopped) const;
    // Minutes until it opens; 0 where it is open, infinite where it opens no more.
    double waitAt(int point, double clock) const;

    // Levels with which a stop can be made, and what is waited for at the most before it.
    struct Found {
        Pieces pieces;
        double wait;
    };
    // The parts of `pieces` with which `point` is found open, or soon open: for one opening all
    // wait as long as the one that comes first, by litres poured, has to. O(pieces).
    std::vector<Found> found(int point, double stopped, const Pieces& pieces) const;
};

} // namespace undermark::planning
