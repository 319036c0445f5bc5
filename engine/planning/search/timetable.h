// SPDX-License-Identifier: GPL-3.0-or-later
//
// When the car is where, and what is open then. A stop counts if its place is
// open on arrival; nobody waits. The clock on arrival is exact in three terms:
// the driving, the minutes of the stops made before (a sum of fixed numbers), and
// the pouring, which the supply itself tells:
//
//     clock = departure + km x minutesPerKm + stopMinutes
//             + (supply - start) x minutesPerLitre
//
// so an opening window is an interval of supply for each sum of stop minutes.
// Inner type of the planner: bare minutes, litres and km.
#pragma once

#include "engine/planning/search/pieces.h"

#include <vector>

namespace undermark::planning {

struct Timetable {
    struct Window {
        double opens = 0.0;        // since midnight
        double closes = 24 * 60.0; // below `opens`: past midnight
    };
    double departure = 0.0; // since midnight
    double minutesPerKm = 0.0;
    double minutesPerLitre = 0.0; // of pouring; may be 0
    double startKm = 0.0;
    double startLitres = 0.0;
    std::vector<Window> hours;       // of every point
    std::vector<double> stopMinutes; // of a stop there, without the pouring
    int last = -1;                   // the last point with hours

    // On arrival at a point at `km` with `supply`, after `stopped` minutes of stops.
    double clock(double km, double supply, double stopped) const;
    bool isOpen(int point, double clock) const;
    // The parts of `pieces` with which `point` at `km` is found open. O(pieces).
    Pieces openParts(int point, double km, double stopped, const Pieces& pieces) const;
};

} // namespace undermark::planning
