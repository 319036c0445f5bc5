// SPDX-License-Identifier: GPL-3.0-or-later
//
// The risk of the whole way, from the levels on arrival at the stops and at the
// finish (between stops fuel only falls, so these are enough).
//
// With several modes the error of an arrival is x'e, x the km by mode since the
// level was last known, e the error of the rates, common to the whole way. What
// all arrivals share is taken as one error: of arrival i the part t s_i, with
// s_i = x_i'C w / sqrt(w'C w), w the km of the whole way, and t <= 1 the largest
// number with t^2 s_i s_j <= x_i'C x_j for every two arrivals. So every two are
// taken as correlated at most as much as they are, and by Slepian's inequality
// (Bell System Technical Journal 41 (1962), 463; from memory) the risk is never
// below the true one. Where two arrivals are negatively correlated, or there are
// more than a thousand, the sum of the single risks is taken (Boole).
// With one mode t = 1 and nothing is lost.
#pragma once

#include "engine/planning/problem.h"
#include "engine/planning/risk.h"

namespace undermark::planning {

struct Arrival {
    int since; // where its run began
    int point;
    double level; // L, mean
};

// The arrivals at the stops and at the finish. O(purchases).
std::vector<Arrival> arrivalsOf(const Problem& problem, const std::vector<Purchase>& purchases);

// The risk of a way whose arrivals are known; their levels may be changed.
class TripLaw {
public:
    // O(arrivals^2 x modes), with one mode O(arrivals).
    TripLaw(const Problem& problem, const std::vector<Arrival>& arrivals);

    void setLevel(std::size_t arrival, double litres) { m_levels[arrival].mean = litres; }
    // P(below `limit` somewhere); `slope`, where given, becomes the derivative by each
    // level, 1/L. O(arrivals^2).
    double below(double limit, std::vector<double>* slope = nullptr) const;

private:
    std::vector<ArrivalLevel> m_levels;
    bool m_summed = false; // the single risks are added up
};

struct TripRisk {
    double dry = 0.0;        // below 0 somewhere
    double belowFloor = 0.0; // below the floor somewhere
};

TripRisk riskOfTrip(const Problem& problem, const std::vector<Arrival>& arrivals);

} // namespace undermark::planning
