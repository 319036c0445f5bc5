// SPDX-License-Identifier: GPL-3.0-or-later
//
// The runs that a search has open at a point of the road, and which of them need not be
// followed any further.
#pragma once

#include "engine/planning/search/problem.h"

#include <vector>

namespace undermark::planning {

inline constexpr double kSameMinutes = 1e-6;

// Everything known about one run: the point where the level was last known, the
// cans used (own and the crew's, as one count), the minutes stops and waiting have taken (only where hours matter, else 0),
// and the least objective by supply.
struct OpenRun {
    int since;
    int cansUsed;
    double stopped;
    Pieces cost;

    bool isLike(const OpenRun& other) const
    {
        return since == other.since && cansUsed == other.cansUsed &&
               std::fabs(stopped - other.stopped) < kSameMinutes;
    }
};

void dropEmpty(std::vector<OpenRun>& runs);

// A run that began later has the smaller spread, now and ever after (where
// no covariance is negative): levels of earlier runs that cost as much are
// dropped. The start is later than nothing, but may be known less or better
// than a full tank, so its variance is compared. Runs of other minutes find
// other places open and are left alone.
void prune(const Problem& problem, int point, std::vector<OpenRun>& runs);

// Who is early may wait at a place that opens later, as long as `mostWait`, and never has to
// wait longer than he is early: later runs that know the level no better are dropped where
// they are no cheaper (by 1e-6 of the objective, which only breaks ties).
void pruneLate(const Problem& problem, const Timetable& timetable, int point,
               std::vector<OpenRun>& runs);

} // namespace undermark::planning
