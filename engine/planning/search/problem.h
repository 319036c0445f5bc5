// SPDX-License-Identifier: GPL-3.0-or-later
//
// The planner's question in bare numbers: litres, km, and one objective that is
// linear in litres bought and carried. Made once from a PlanRequest; what the
// algorithms and the evaluation of a plan share. Kept small, and made in one pass
// over the route: on long routes the time is that of reading and writing memory.
//
// Levels are counted along the road as **supply** = start + everything bought
// (less what detours burnt): driving does not change it, the tank's content on
// arrival at point j is supply - fuelTo[j].
#pragma once

#include "engine/planning/plan.h"
#include "engine/planning/search/timetable.h"
#include "engine/range/level_spread.h"

#include <algorithm>
#include <limits>
#include <vector>

namespace undermark::planning {

inline constexpr double kNoLimit = std::numeric_limits<double>::infinity();

// What may be bought at a point, priced by the aim.
struct Offer {
    bool open = false;
    bool fromCans = false;     // in whole own cans
    bool clicks = true;        // filling up here makes the level known (no can does)
    double perLitre = 0.0;     // objective
    double perStop = 0.0;      // objective
    double least = 0.0;        // L
    double most = kNoLimit;    // L
    double detourLitres = 0.0; // burnt by stopping, half before and half after
};

// A purchase as the algorithms decide it.
struct Purchase {
    int point;
    double litres;
    bool full; // makes the level known again
    int cans;
};

struct Problem {
    int points = 0;
    int modes = 1;
    double capacity = 0.0;      // L
    double start = 0.0;         // L
    double startVariance = 0.0; // L^2
    double fullVariance = 0.0;  // L^2
    AllowedRisk allowed;        // on every arrival
    std::optional<AllowedRisk> shared; // an arrival's share of the whole way's, of the floor
    double canLitres = 0.0;
    int cans = 0;
    bool uncertain = false;     // any spread at all
    bool needsGrow = true;      // a longer run never asks for less
    bool someTimed = false;     // else every section counts as timed
    bool carryingCosts = false; // aim weight
    bool hasHours = false;      // some open offer has opening hours
    double floor = 0.0;         // L, on arrival, by wish
    double atFinish = 0.0;      // L, on arrival at the finish, by wish
    double noisePerKm = 0.0;    // L^2/km
    std::vector<double> at;     // km
    std::vector<double> fuelTo; // L, to the arrival at each point
    std::vector<double> kmTo;   // km by mode, points x modes; empty where there is one
    std::vector<double> kmPast; // by mode: before the route, since the level was last known
    std::vector<double> surgeTo; // L that must be there on arrival, by the mode; empty: none
    std::vector<char> timed;    // the section from here on
    std::vector<double> rates;  // L/km by mode, mean
    std::vector<double> covariance; // as RateModel
    std::vector<RateWorld> worlds{{1.0, 1.0, 0.0}};
    std::vector<Offer> offers;
    std::optional<Timetable> timetable; // where hours, departure and speed are known

    // With less than this on arrival the engine starves.
    double dryAt(int point) const
    {
        return surgeTo.empty() ? 0.0 : surgeTo[static_cast<std::size_t>(point)];
    }
    double floorAt(int point) const { return std::max(floor, dryAt(point)); }
    // Litres that must be there on arrival, without spread.
    double leastAt(int point) const
    {
        return point + 1 == points ? std::max(atFinish, floorAt(point)) : floorAt(point);
    }
    // The section from here on counts for the litre-km carried.
    bool counts(int point) const
    {
        return !someTimed || timed[static_cast<std::size_t>(point)] != 0;
    }
    // Objective per litre carried over the section from `point` on; not of the finish.
    double holdFrom(int point) const
    {
        const auto i = static_cast<std::size_t>(point);
        return carryingCosts && counts(point) ? at[i + 1] - at[i] : 0.0;
    }

    // Of the level on arrival at `point` after a run that began at `since` (kStart: where
    // the level at the start was last known). O(modes^2).
    LevelSpread spread(int since, int point) const;
    double variance(int since, int point) const { return varianceOf(spread(since, point), worlds); }
    // The km by mode of that run.
    double km(int since, int point, int mode) const;
    // Litres above a limit that the mean on arrival must be; 0 where nothing is uncertain.
    double room(const AllowedRisk& risk, const LevelSpread& spread) const
    {
        return uncertain ? roomFor(risk, spread, worlds) : 0.0;
    }
    // The supply with which one drives on from a full tank at `point`.
    double highestSupply(int point) const
    {
        const auto i = static_cast<std::size_t>(point);
        return fuelTo[i] + capacity - offers[i].detourLitres / 2;
    }

    // Least supply with which a run since `since` may arrive at `point`.
    double leastSupply(int since, int point) const;
    // The same where one stops there: half of the detour is burnt before.
    double leastSupplyToStop(int since, int point) const;
};

inline constexpr int kStart = -1;

// Errors as of plan(). O(points).
Result<Problem> makeProblem(const PlanRequest& request);

} // namespace undermark::planning
