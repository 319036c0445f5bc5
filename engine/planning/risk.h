// SPDX-License-Identifier: GPL-3.0-or-later
//
// The risk of the whole way, from the level on each arrival.
#pragma once

#include "engine/planning/run_risk.h"

#include <cstddef>
#include <vector>

namespace undermark::planning {

// A level on arrival as a normal variable: mean - common'c + rest. c are independent
// standard normals shared by the whole way (the errors of the rates); the rest is the
// error of the run: of the level at its start and of the sections since.
struct ArrivalLevel {
    double mean;                // L
    std::vector<double> common; // L per unit of each c; as long on every arrival
    double variance;            // of the rest, L^2; within a run not falling
    int run;                    // arrivals of one run are neighbours

    double sd() const; // of the level, L
};

// P(level < limit at one of the arrivals or more). Fuel only falls between stops, so the
// arrivals at stops and at the finish are all that is needed.
//
// Given c the runs are independent of each other, and each is exact (run_risk.h). The
// integral over the first c is by Gauss-Legendre between the places where the integrand
// turns, over the others by Gauss-Hermite: the first should be the one that matters.
// Below 1e-8 the risk is the sum of those of the arrivals, which is never too low.
class TripLaw {
public:
    explicit TripLaw(std::vector<ArrivalLevel> levels,
                     RunRisk::Rounding rounding = RunRisk::Rounding::up);

    void setLevel(std::size_t arrival, double litres) { m_levels[arrival].mean = litres; }
    // `slope`, where given, becomes the derivative by each mean, 1/L. Some hundred times
    // RunRisk::at of each run, for each further c some times that.
    double below(double limit, std::vector<double>* slope = nullptr);
    // Nearly the same with one shared error: what the others do counts as the runs' own.
    TripLaw withOneError() const;
    std::size_t errors() const { return m_levels.front().common.size(); }
    // What below() takes, in about 0.1 us.
    std::size_t work() const;

private:
    struct Run {
        std::size_t first; // arrival
        RunRisk law;
        std::vector<double> room; // of each arrival, given c
        std::vector<double> slope;
        double risk;
    };
    struct Node { // of all c but the first
        std::vector<double> c;
        double weight;
    };

    void findNodes();
    double sumOfRisks(double limit, std::vector<double>* slope) const;
    double overFirst(double weight, std::vector<double>* slope);
    double given(double first, double weight, std::vector<double>* slope);
    std::vector<double> turns() const;
    std::vector<double> corners() const;
    double firstOf(std::size_t arrival) const;

    std::vector<ArrivalLevel> m_levels;
    std::vector<double> m_sd; // of the rest
    std::vector<Run> m_runs;
    std::vector<Node> m_nodes;
    std::vector<double> m_room; // of each arrival, given all c but the first
};

// P(level < limit) on one arrival, and its derivative by the mean, 1/L.
double arrivalRisk(double mean, double sd, double limit);
double arrivalRiskSlope(double mean, double sd, double limit);

// The standard normal: its density, and its quantile at 1 - risk. A risk below 1e-280
// or above 1 - 1e-15 is taken as that.
double normalDensity(double z);
double quantileForRisk(double risk);

} // namespace undermark::planning
