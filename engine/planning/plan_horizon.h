// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fuel horizon along a planned route, leg by leg: for every way between two
// stops the strip of engine/range/horizon.h, seen from the stop one leaves. It
// says what the fuel aboard does if nobody stops again, so where it thins out
// behind the next stop is the margin of the plan.
#pragma once

#include "engine/planning/plan.h"
#include "engine/range/horizon.h"

namespace undermark {

struct LegHorizon {
    std::size_t from = 0; // points of the route, as in Gap
    std::size_t to = 0;
    Horizon strip; // from `from` to the finish: 1 is the finish
};

// How names of pegs are laid out: as in HorizonRequest.
struct HorizonNames {
    double characterWidth = 0.012;
    int labelRows = 3;
};

// One per Gap of a feasible plan (bug otherwise), in driving order; legs of no
// length have none. Pegs are the points ahead where one may buy fuel, or the plan pours some. The
// zero post is absent where the tank states no zero mark. What idling burns on a
// leg is taken off where it begins. `bands` as in HorizonRequest. Cost: well
// under a millisecond a leg.
std::vector<LegHorizon> planHorizons(const PlanRequest& request, const Plan& plan, int bands = 96,
                                     const HorizonNames& names = {});

} // namespace undermark
