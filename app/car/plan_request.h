// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the command line and the touch screen share of planning: from a route
// file and a car to a PlanRequest. The rest is in the engine already:
//
//     auto file = readRouteFile(path);                    // engine/tables/route_file.h
//     auto car = tankFromCar(knowledge);
//     PlanRequest request = planRequest(file->route, *car);
//     request.aim = Aim::time;                            // wishes are its plain fields
//     auto answer = plan(request);                        // engine/planning/plan.h
//     auto change = whatIfClosed(request, "Alder");       // engine/planning/what_if.h
//     auto cures = findCures(request);                    // engine/planning/cures.h
//     auto strips = planHorizons(request, *answer);       // engine/planning/plan_horizon.h
#pragma once

#include "engine/outlook/outlook.h"
#include "engine/planning/cures.h"
#include "engine/planning/plan.h"
#include "engine/planning/what_if.h"

namespace undermark {

// The tank as it is now and the rates, as the planner takes them.
struct TankAndRate {
    Tank tank;
    RateModel rates;
    FuelKind fuel = FuelKind::petrol;
    std::string currency; // of its prices; empty: none is stated
    bool ofCar = false; // the logbook's: planned for with the usual prices of stopping and of a stage
    std::vector<Sentence> warnings; // of the level
};

// The level, capacity, zero mark and rates that the logbook knows now, or with what the
// question tells of the level (its mode is not looked at) and of what burns more; road that
// states no mode (a GPX track) is driven in the usual mix. Errors: those of outlook().
Result<TankAndRate> tankFromCar(const CarKnowledge& car, const Question& question = {});

// Least cost where any point states a price, else fewest stops.
Aim usualAim(const Route& route);

// No pump or zone lacks the price that another one states: the cost can be planned for.
bool pricesAreKnown(const Route& route);

// What a stop counts as where nobody says: the median price of a litre on the route, so that no
// ten minutes are spent on cents (common practice, no source); 0 where there are no prices.
double usualStopCost(const Route& route);

// Of arrivals at the end of a timed section, where running dry is the end of the event and not a
// push: a tenth of the risk that is taken elsewhere (common practice, no source).
Probability usualStageConfidence(Probability confidence);

// Another confidence of each arrival, and with it the stages' where they have one of their own.
void setConfidence(PlanRequest& request, Probability confidence);

// A request with the usual aim and confidence (0.99 of each arrival), of the logbook's car with
// the above; everything else is asked for by setting its fields.
PlanRequest planRequest(Route route, const TankAndRate& car);

} // namespace undermark
