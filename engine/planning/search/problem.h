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
#include <cmath>
#include <limits>
#include <vector>

namespace undermark::planning {

inline constexpr double kNoLimit = std::numeric_limits<double>::infinity();

// What may be bought at a point, priced by the aim.
struct Offer {
    bool open = false;
    bool fromCans = false;     // in whole cans: own ones,
    bool fromCrew = false;     // or the crew's
    bool clicks = true;        // filling up here makes the level known (no can does)
    double perLitre = 0.0;     // objective
    double perStop = 0.0;      // objective
    double least = 0.0;        // L
    double arriveWith = 0.0;   // L there at least, mean, where one stops here
    double most = kNoLimit;    // L
    double detourLitres = 0.0; // burnt by stopping, half before and half after
    double detourKm = 0.0;     // of that, driven in the mode of the section from here on
    int detourMode = 0;
};

// A purchase as the algorithms decide it.
struct Purchase {
    int point;
    double litres;
    bool full; // makes the level known again
    int cans;
};

inline constexpr int kStart = -1;
inline constexpr int kNoMode = -1;

// The road since the level was last known: from the full fill at `since`, or (kStart) from
// where the level at the start was known.
struct Run {
    int since = kStart;
    std::vector<double> detoured = {}; // km by mode to stops made in it; empty: none
};

struct Problem {
    int points = 0;
    int modes = 1;   // where heights are known one more, whose km are of height and make no noise:
    int climbMode = kNoMode;
    double capacity = 0.0;      // L
    double start = 0.0;         // L
    double startVariance = 0.0; // L^2
    double fullVariance = 0.0;  // L^2
    AllowedRisk allowed;        // on every arrival,
    std::optional<AllowedRisk> onStage; // but at the end of a timed section
    std::optional<AllowedRisk> shared; // an arrival's share of the whole way's, of the floor
    double clickZ = 0.0; // deviations that an early click is kept away by
    double canLitres = 0.0;
    int cans = 0;
    int crewCans = 0;
    bool uncertain = false;     // any spread at all
    bool needsGrow = true;      // a longer run never asks for less
    bool falls = false;         // some section leads down, which takes some of a climb's spread back
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
    std::vector<double> climbBackTo; // km of height, the route driven backwards; empty: none
    std::vector<double> surgeTo; // L that must be there on arrival, by the mode; empty: none
    std::vector<double> floors; // L wished for on arrival at a point; empty: none
    std::vector<char> timed;    // the section from here on
    std::vector<double> rates;  // L/km by mode, mean
    std::vector<double> covariance; // as RateModel
    std::vector<RateWorld> worlds{{1.0, 1.0, 0.0}};
    std::vector<Offer> offers;
    std::vector<double> more; // L asked for on arrival on top of that; empty: none
    std::optional<Timetable> timetable; // where departure and speed are known

    // With less than this on arrival the engine starves.
    double dryAt(int point) const
    {
        return surgeTo.empty() ? 0.0 : surgeTo[static_cast<std::size_t>(point)];
    }
    double floorAt(int point) const
    {
        const double own = floors.empty() ? 0.0 : floors[static_cast<std::size_t>(point)];
        return std::max({floor, own, dryAt(point)});
    }
    const AllowedRisk& allowedAt(int point) const
    {
        return onStage && point > 0 && timed[static_cast<std::size_t>(point - 1)] ? *onStage : allowed;
    }
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

    // Of the level on arrival at `point` after a run. O(modes^2).
    LevelSpread spread(int since, int point) const;
    LevelSpread spread(const Run& run, int point) const;
    double variance(int since, int point) const { return varianceOf(spread(since, point), worlds); }
    // The km by mode of that run; after a fill with the way back from it.
    double km(int since, int point, int mode) const;
    double km(const Run& run, int point, int mode) const;
    // Of the road between two points, driven back.
    double kmBackBetween(int from, int to, int mode) const;
    // The run with so much (a half, or all) of the detour to a stop at `point` in it.
    Run withDetour(Run run, int point, double part) const;
    double fuelBefore(int point) const { return fuelTo[static_cast<std::size_t>(point)]; }
    // Of the road between two points.
    double kmBetween(int from, int to, int mode) const;
    // Behind it the road leads down, before it did not: the level is known worse than further on.
    bool isSummit(int point) const
    {
        return falls && point > 0 && point + 1 < points && kmBetween(point, point + 1, climbMode) < 0 &&
               kmBetween(point - 1, point, climbMode) >= 0;
    }
    // L^2 of the level that a run begins with.
    double knownVariance(int since) const { return since == kStart ? startVariance : fullVariance; }
    // Of a level known to `known` L^2 before a road of kmOf(mode).
    template <class KmOf> LevelSpread spreadOver(double known, KmOf kmOf) const;
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
    // The pump clicks when the tank is full, which is where it is only as well as fullVariance
    // says. Counted litres end so far below the mean of that, L.
    double clickRoom(int point) const
    {
        return offers[static_cast<std::size_t>(point)].clicks ? clickZ * std::sqrt(fullVariance) : 0.0;
    }
    // Where litres are limited, a fill is sure to reach the click with so many to spare, L.
    double fillRoom(int since, int point) const
    {
        return clickZ * std::sqrt(variance(since, point) + fullVariance);
    }

    // Litres that the confidence asks for on arrival.
    double needed(const LevelSpread& spread, int point) const;
    // Litres that a run needs at `from`, not stopping there, so as to be safe on arrival at `to`,
    // a stop or the finish, and on the way. O(points between) where surge asks for fuel.
    double enoughTo(const Run& run, int from, int to) const;
    // Least supply with which a run since `since` may arrive at `point`.
    double leastSupply(int since, int point) const;
    // The same where one stops there: half of the detour is driven before.
    double leastSupplyToStop(int since, int point) const;

private:
    double leastOnArrival(const LevelSpread& spread, int point) const;
};

template <class KmOf> LevelSpread Problem::spreadOver(double known, KmOf kmOf) const
{
    const auto n = static_cast<std::size_t>(modes);
    const auto common = [this, n](int i, int j) {
        return covariance[static_cast<std::size_t>(i) * n + static_cast<std::size_t>(j)];
    };
    LevelSpread spread;
    double all = 0.0;
    for (int i = 0; i < modes; ++i) {
        const double x = kmOf(i);
        all += i == climbMode ? 0.0 : x;
        spread.burnt += x * rates[static_cast<std::size_t>(i)];
        spread.residual += x * x * common(i, i);
        for (int j = 0; j < i; ++j)
            spread.residual += x * kmOf(j) * (common(i, j) + common(j, i));
    }
    spread.residual = std::max(spread.residual, 0.0);
    spread.own = known + noisePerKm * all;
    return spread;
}

// Errors as of plan(). O(points).
Result<Problem> makeProblem(const PlanRequest& request);

} // namespace undermark::planning
