// SPDX-License-Identifier: GPL-3.0-or-later
//
// The plan that survives the closure of any one place, whichever it is.
#pragma once

#include "engine/planning/plan.h"

namespace undermark {

// What is left of the way where a stop of the plan turns out to be closed.
struct ClosedStop {
    PlanRequest request; // from there, with the litres and the spread of then
    Plan plan;
};

struct ForAnyClosure {
    Plan plan;
    // Of each stop of a feasible plan but one at the start, in driving order.
    std::vector<ClosedStop> closed;
    std::vector<Sentence> hopeless; // stops that no way goes on from, so none is planned there
};

// The best plan for the request's aim such that, at whichever one of its stops nothing is to be
// had, there is a plan for the rest of the way with what is in the tank on arrival there, all
// other places selling. Which place it is, one learns on arrival, detour included; at the start,
// before one leaves, so that a stop there is not looked at. Each rest is planned again, which
// proves it, with the same confidences.
//
// A stop that cannot be done without asks for more litres on arrival, by what its rest lacks;
// that is the least, so without spread the plan is the best one. With spread the litres
// depend on the road since the last full tank, and a plan with other full tanks might do with
// fewer. Errors: those of plan(). Cost: that of some plans a stop, a few rounds of them.
Result<ForAnyClosure> planForAnyClosure(const PlanRequest& request, const GoOn& goOn = {});

} // namespace undermark
