// SPDX-License-Identifier: GPL-3.0-or-later
//
// The risk of the whole way, from the level on each arrival.
#pragma once

#include "engine/base/normal_law.h"
#include "engine/planning/risk/run_risk.h"
#include "engine/planning/risk/shared_errors.h"

#include <cstddef>
#include <vector>

namespace undermark::planning {

// P(level below its limit at one of the arrivals or more). Fuel only falls between stops, so the
// arrivals at stops and at the finish are all that is needed.
//
// Given c the runs are independent of each other, and each is exact (run_risk.h). The
// integral over the first c, which should be the one that matters, is by Gauss-Legendre
// between the places where the integrand turns (missed: below 1e-5 of the risk); over the
// others at the places of errorNodes(). Below 1e-8 the risk is the sum of those of the arrivals,
// which is never too low.
class TripLaw {
public:
    explicit TripLaw(std::vector<ArrivalLevel> levels);

    void setRoom(std::size_t arrival, double litres) { m_levels[arrival].room = litres; }
    // Some hundred times RunRisk::at of each run, for each further c some times that.
    double risk();

private:
    struct Run {
        std::size_t first; // arrival
        RunRisk law;
        std::vector<double> room; // of each arrival, given c
    };
    struct Turn {
        double at;    // c
        double width; // c
    };

    double sumOfRisks() const;
    double overFirst();
    double given(double first);
    std::vector<double> places() const;
    std::vector<Turn> turns() const;
    void addCorners(const Run& run, std::vector<Turn>& turns) const;

    std::vector<ArrivalLevel> m_levels;
    std::vector<double> m_sd; // of the rest
    std::vector<Run> m_runs;
    std::vector<ErrorNode> m_nodes;
    std::vector<double> m_room; // of each arrival, given all c but the first
};

// P(level < limit) on one arrival, `room` its mean above the limit. Without spread 1 below
// the limit (by more than 1e-9 L), else 0.
double arrivalRisk(double room, double sd);


} // namespace undermark::planning
