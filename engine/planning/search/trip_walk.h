// SPDX-License-Identifier: GPL-3.0-or-later
//
// A way whose stops are settled, and what of it is full, but not the litres: what
// follows from the litres of the partial purchases. All of it is linear in them.
#pragma once

#include "engine/planning/search/problem.h"

namespace undermark::planning {

using Litres = std::vector<double>; // of each partial purchase

struct Walked {
    double objective = 0.0;    // as search() counts it
    std::vector<double> slack; // of each limit in L, 0 or more where it is kept
    Litres level;              // on each arrival, as of arrivalsOf()
};

class TripWalk {
public:
    // `stops` in driving order; their choices count, and the litres of cans. With a
    // timetable each stop is to be reached while its place is open; if it is open twice,
    // for the first time. The problem must outlive this.
    TripWalk(const Problem& problem, std::vector<Purchase> stops);

    const std::vector<Purchase>& stops() const { return m_stops; }
    std::size_t parts() const { return m_parts; }
    Litres given() const; // as the stops have them now

    // Every purchase as large as those after it let it be: all levels are then as high
    // as they can be at once, and no litres are safer.
    Litres mostPossible() const;

    // Sets the litres of the stops. O(points).
    Walked walk(const Litres& litres);

    // What a solver better varies than litres: those bought since the last full tank.
    // They are the levels, on which the risk depends nearly one by one.
    Litres toSums(Litres litres) const;
    Litres fromSums(const Litres& sums) const;

private:
    struct Window { // of the supply with which a stop is found open
        double from, to;
    };

    const Offer& offer(const Purchase& stop) const;
    double most(const Purchase& stop) const;
    double roomAfterFull(const Purchase& stop, double supply) const;
    void findWindows();
    void drive(Walked& walked, double supply, int since, int from, int to) const;

    const Problem& m_problem;
    std::vector<Purchase> m_stops;
    std::vector<Window> m_windows; // of each stop
    std::size_t m_parts = 0;
};

} // namespace undermark::planning
