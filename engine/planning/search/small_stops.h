// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/planning/search/solve.h"

namespace undermark::planning {

// What solve (solveForTrip, where the whole way's confidence is asked for) answers, without stops for less than request.leastStop (0: as it is).
// In the order of the road, such a stop
//  * is left out where there is a plan of fewer stops without it, which costs no more than
//    leastStop at the dearest price on top;
//  * else is made larger, if there is a plan with leastStop (or all that is sold) bought there;
//  * else stays; PlannedStop::why tells of these last two what it is for.
// So no way loses its plan. Own cans are let be. Cost: up to two more plans for each such stop,
// of which twenty are looked at.
Plan solveWithoutSmallStops(const PlanRequest& request, const Problem& problem, const GoOn& goOn);

} // namespace undermark::planning
