// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where to stop for fuel, how much to take on, and what the risk is.
//
// The rule: on arrival at every point, P(usable fuel >= floor) >= confidence, by the one
// law of level and rates (engine/range/level_spread.h): in a world of the rates the level
// is normal, with
//     sd^2 = sd0^2 + x' C x + n,
// sd0 that of the last known level (the start, or the last full fill), x the km
// driven since then in each mode (before the route as well), C the covariance of the
// modes' rates (so a common error adds linearly over the run), n the noise of the road
// (in quadrature). Only a full fill makes the level known again; litres poured
// are counted exactly. Levels are means; a partial fill keeps the run going.
//
// Which algorithm serves which request, its cost, sources, and what is not
// exact: engine/planning/README.md.
#pragma once

#include "engine/planning/route.h"
#include "engine/range/rate_model.h"

#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

struct Tank {
    Volume capacity;                // usable litres at the first click, > 0
    // Usable litres now, the mean from 0 to capacity. The level was known, as well as `sd`
    // says, before the road of `driven`: what that took, and what the road ahead will
    // take, share the rates' errors.
    Estimate<Volume> start;
    std::vector<RouteLeg> driven;   // by the rates' modes; empty: the level is known now
    Volume floor;                   // never below this on arrival
    Volume end;                     // wanted at the finish (the larger of it and floor counts)
    Volume fullSd;                  // of the level after a full fill
    std::vector<Volume> surge;      // by the rates' modes: unusable in it; empty: nothing
    std::optional<Volume> zeroMark; // usable litres at the gauge's zero: for pictures only
};

enum class Aim {
    cost,   // fuel and stop costs
    stops,  // fewest purchases, then cost
    time,   // stop minutes, litres at the pump's flow, detours; then cost
    weight, // litre-km carried on timed sections (on all if none is), then cost
};

struct Rules {
    std::optional<Distance> autonomy; // demanded between two chances to refuel
    double autonomySafety = 0.0;      // 0.10 = ten per cent on top
    bool zonesOnly = false;           // pumps do not count
    bool cansForbidden = false;
    bool zoneLimitDemanded = false; // a zone without a limit is bad input
};

struct ModeSpeed {
    std::string mode;
    Speed speed; // > 0
};

struct PlanRequest {
    Route route;
    Tank tank;
    RateModel rates;
    Aim aim = Aim::cost;
    Probability confidence = Probability::of(0.99); // of each arrival, 0.5 to below 1
    // Of each arrival at the end of a timed section, where it is dearer to run dry: as `confidence`.
    std::optional<Probability> stageConfidence;
    std::optional<Probability> tripConfidence; // of the whole way
    double stopCost = 0.0;                          // per purchase, >= 0
    std::string currency;                           // of prices and costs, ISO 4217; empty: none is stated
    Volume leastStop; // a stop at a pump or zone for less is made only where it must be, >= 0
    int cans = 0;                                   // full own cans on board
    int crewCans = 0;                               // full ones that the crew brings to where it waits
    Volume canVolume;                               // of each can, > 0 if there are any
    Rules rules;
    std::optional<FlowRate> pumpFlow; // see pumpFlowOf
    std::optional<Speed> speed;       // for opening hours, due times and the time of detours
    std::vector<ModeSpeed> modeSpeeds; // of modes that are driven otherwise; need `speed`
    std::optional<Minutes> departure; // since midnight
    std::optional<std::chrono::sys_days> departureDay; // for places with dates
    Minutes mostWait{};               // at a place that is not open yet; 0 to a day
    std::vector<Sentence> startNotes; // what is to be said of the start's litres; not looked at
};

// What a pump delivers: as the request says, else 40 L/min (common practice, no
// source: road pumps give 35 to 45).
FlowRate pumpFlowOf(const PlanRequest& request);
Minutes pouringTime(const PlanRequest& request, Volume poured);

Minutes drivingTime(Speed speed, Distance way);
Speed speedIn(const PlanRequest& request, const std::string& mode); // request.speed must be there
// To each point from the first one: driven, idled and rested, without stops. request.speed must
// be there.
std::vector<Minutes> timesOnTheWay(const PlanRequest& request);

// What stopping at a point takes, without the pouring: the stop itself, and the detour
// where the request knows the speed.
Minutes stoppingTime(const PlanRequest& request, const RoutePoint& point);

// A pump or refuel zone from which the rules let one buy.
bool sellsFuel(const Rules& rules, const RoutePoint& point);

struct Plan;
// How many cans the plan pours where there are such ones, of the stops before `until`.
int cansPoured(const PlanRequest& request, const Plan& plan, FuelSource from,
               Distance until = Distance::fromKm(std::numeric_limits<double>::infinity()));

struct PlannedStop {
    std::size_t point = 0; // in the route
    Volume buy;            // litres to ask for (mean, where it is to full)
    bool toFull = false;
    Volume buySd;       // of what a fill to the click takes; else 0
    bool known = false; // the level is known anew from here on, to Tank::fullSd
    int cans = 0;       // own cans poured, where the fuel is a can's
    Estimate<Volume> arrive;
    Volume leave;
    double cost = 0.0; // fuel and stop cost
    Minutes wait{};    // until it opens
    Sentence why;      // it is made for so little (PlanRequest::leastStop); empty: it is for more
};

// What decides whether one drives past a place that sells fuel.
struct GoPast {
    Volume with;          // at least, as the level is known there by the plan's law
    std::size_t next = 0; // the point that this is enough to: the next fuel, or the finish
};

// One row of the plan: a point of the route as it is passed.
struct Passage {
    std::size_t point = 0;
    Volume used; // since the point before, mean
    Estimate<Volume> climb; // of that, what heights took; below 0 where the way led down
    Estimate<Volume> arrive;
    Volume sure;             // on arrival with 99 %; may be below 0
    Volume leave;
    double belowFloor = 0.0; // probability on arrival
    double dry = 0.0;        // probability on arrival
    std::optional<Minutes> clock; // on arrival, since midnight of the departure's day
    std::optional<Minutes> late;  // behind RoutePoint::due, of the nearest day; below 0: to spare
    Volume margin;           // arrival mean above what the confidence demands
    Distance marginDistance; // the same at the rate of the section behind
    std::optional<GoPast> goPast; // where fuel can be had
};

// The way between two stops (or start, or finish).
struct Gap {
    std::size_t from = 0; // points
    std::size_t to = 0;
    // Until here the car can still turn round and reach the place it left at the chosen
    // confidence, with fuel to the floor, each section at its own rate both ways; empty where
    // that holds all the way. A timed section is driven one way only: its start at the latest.
    std::optional<Distance> noReturn;
    bool oneWay = false; // noReturn is where such a section starts
};

// Why there is no plan.
struct Shortfall {
    Distance farthest;       // on the route, at the confidence
    Volume missing;          // to the next fuel, or the finish
    std::size_t from = 0;    // the section that fails starts here
    std::size_t towards = 0; // the next fuel or the finish
};

struct RuleFinding {
    Sentence rule;
    bool kept = true;
    Sentence text;    // what fails, where and by how much
    Distance overBy;  // km a section between two chances to refuel is too long
    Volume shortBy;   // litres the tank is too small for the autonomy
};

struct Plan {
    bool feasible = false;
    std::vector<PlannedStop> stops;
    std::vector<Passage> passages; // every point, from the start
    std::vector<Gap> gaps;
    Volume bought;
    double cost = 0.0;    // fuel and stop costs
    Minutes stopTime{};   // stops, pouring, detours and waiting
    double litreKm = 0.0; // carried on the sections that count
    Estimate<Volume> finish;
    double dryRisk = 0.0;   // of the whole way: usable below 0 somewhere
    double floorRisk = 0.0; // of the whole way: below the floor somewhere
    // No plan is better by more than this, in the aim's unit (money, stops, minutes,
    // litre-km). 0: the plan is optimal. Above 0 only with a tripConfidence, or where opening
    // hours leave too many ways to be late.
    double tripGap = 0.0;
    bool stopped = false; // by GoOn: a better one may be found
    std::optional<Shortfall> shortfall;
    std::vector<RuleFinding> rules;
    std::vector<Sentence> notes; // simplifications that touched this plan
};

// Errors (badInput): what checkRoute says, an impossible tank, rate or
// probability, a mode without a rate, a zone without a limit where the rules
// demand one, a price that is missing while others are stated (aim cost). An
// infeasible plan is an answer: feasible is false and shortfall says why.
// The request's route must be in the order it is driven.
//
// Where planning takes several searches, `goOn` is asked between them, with the Plan::tripGap of
// the best plan so far (nothing while there is none). Once it says no, that plan is answered as
// soon as there is one: after two searches, of a way of 500 points and more after a quicker one.
using GoOn = std::function<bool(std::optional<double> gap)>;
Result<Plan> plan(const PlanRequest& request, const GoOn& goOn = {});

} // namespace undermark
