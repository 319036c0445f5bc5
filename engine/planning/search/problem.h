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

#include <cstdint>
#include <limits>
#include <vector>

namespace undermark::planning {

inline constexpr double kNoLimit = std::numeric_limits<double>::infinity();

// What is done at a point: nothing, a purchase of any amount, or a full tank that
// makes the level known. At a point with own cans the choice is their number.
enum Action : int { kPass, kPart, kFull };
inline constexpr int kChoices = 32;

// What may be bought at a point, priced by the aim.
struct Offer {
    std::uint32_t choices = ~std::uint32_t(0); // bits; all but where a search is narrowed
    bool open = false;
    bool fromCans = false;     // in whole own cans
    bool clicks = true;        // filling up here makes the level known (no can does)
    double perLitre = 0.0;     // objective
    double perStop = 0.0;      // objective
    double least = 0.0;        // L
    double most = kNoLimit;    // L
    double detourLitres = 0.0; // burnt by stopping, half before and half after

    bool allows(int choice) const { return choice >= kChoices || (choices >> choice & 1U) != 0; }
};

// A purchase as the algorithms decide it.
struct Purchase {
    int point;
    double litres;
    bool full; // makes the level known again
    int cans;

    bool isPart() const { return cans == 0 && !full; }
    int choice() const { return cans > 0 ? cans : full ? kFull : kPart; }
};

struct Problem {
    int points = 0;
    int modes = 1;
    double capacity = 0.0;      // L
    double start = 0.0;         // L
    double startVariance = 0.0; // L^2
    double fullVariance = 0.0;  // L^2
    double z = 0.0;             // normal quantile of the confidence, on every arrival
    double stopZ = 0.0;         // the same where one stops and at the finish, of the floor
    double canLitres = 0.0;
    int cans = 0;
    bool uncertain = false;     // any spread at all
    bool spreadGrows = true;    // no negative covariance: a longer run is never surer
    bool someTimed = false;     // else every section counts as timed
    bool carryingCosts = false; // aim weight
    bool hasHours = false;      // some open offer has opening hours
    double floor = 0.0;         // L, on arrival
    double atFinish = 0.0;      // L, on arrival at the finish, the floor or more
    double noisePerKm = 0.0;    // L^2/km
    std::vector<double> at;     // km
    std::vector<double> fuelTo; // L, to the arrival at each point
    std::vector<double> kmTo;   // km by mode, points x modes; empty where there is one
    std::vector<char> timed;    // the section from here on
    std::vector<double> covariance;
    std::vector<Offer> offers;
    std::vector<double> worth; // objective per litre on arrival at each point; empty: none
    std::optional<Timetable> timetable; // where hours, departure and speed are known

    // Litres that must be there on arrival, without spread.
    double leastAt(int point) const { return point + 1 == points ? atFinish : floor; }
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

    // Variance in L^2 of the level on arrival at `point` after a run that began at
    // `since` (kStart: the start level). O(modes^2).
    double variance(int since, int point) const;
    // The part of it that is not the rates': of the level then, and of the sections.
    double ownVariance(int since, int point) const;
    // The supply with which one drives on from a full tank at `point`.
    double highestSupply(int point) const
    {
        const auto i = static_cast<std::size_t>(point);
        return fuelTo[i] + capacity - offers[i].detourLitres / 2;
    }

    // Least supply with which a run since `since` may arrive at `point`.
    double leastSupply(int since, int point) const;
    // The same where one stops there, and for the finish.
    double leastSupplyToStop(int since, int point) const;
};

inline constexpr int kStart = -1;

// Errors as of plan(). O(points).
Result<Problem> makeProblem(const PlanRequest& request);

} // namespace undermark::planning
