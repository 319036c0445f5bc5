// SPDX-License-Identifier: GPL-3.0-or-later
//
// What would make an infeasible way feasible, each cure the least of its kind
// and proven by planning again.
#pragma once

#include "engine/planning/plan.h"

namespace undermark {

enum class CureKind {
    startWithMore, // litres on top at the start
    carryInCans,   // litres in own cans, poured in on the way with the engine off
    driveGentler,  // every rate lower by a fraction
    anotherPump,   // one more place that sells fuel, on the section that fails
};

struct Cure {
    CureKind kind;
    Volume litres = {};    // startWithMore, carryInCans: least, rounded up to 0.1 L
    Fraction gentler = {}; // driveGentler: least, rounded up to 0.1 %
    Distance latest = {};  // anotherPump: as far as the fuel lasts, rounded down to 1 km
    Plan plan = {};        // what planning again with the cure gave: feasible
};

// Nothing where the request is feasible as it is. Cans are left out where the
// rules forbid them; another pump where one would not do. Costs a few dozen plans, before each
// of which `goOn` is asked (if it says no, what was found is answered).
Result<std::vector<Cure>> findCures(const PlanRequest& request, const GoOn& goOn = {});

} // namespace undermark
