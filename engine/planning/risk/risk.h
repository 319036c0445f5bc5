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

// P(level < limit at one of the arrivals or more). Fuel only falls between stops, so the
// arrivals at stops and at the finish are all that is needed.
//
// Given c the runs are independent of each other, and each is exact (run_risk.h). The
// integral over the first c, which should be the one that matters, is by Gauss-Legendre
// between the places where the integrand turns (missed: below 1e-5 of the risk); over the
// others at the places of errorNodes(). Below 1e-8 the risk is the sum of those of the arrivals,
// which is never too low.
class TripLaw {
public:
    explicit TripLaw(std::vector<ArrivalLevel> levels,
                     RunRisk::Rounding rounding = RunRisk::Rounding::up);

    void setLevel(std::size_t arrival, double litres) { m_levels[arrival].mean = litres; }
    // `slope`, where given, becomes the derivative by each mean, 1/L. Some hundred times
    // RunRisk::at of each run, for each further c some times that.
    double below(double limit, std::vector<double>* slope = nullptr);
    // Nearly the same, quicker: one shared error, what the others do counts as the runs'
    // own; and these roughly.
    TripLaw rough() const;
    // How many values of the errors but the first are looked at.
    std::size_t nodes() const { return m_nodes.size(); }
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
    struct Turn {
        double at;    // c
        double width; // c
    };

    double sumOfRisks(double limit, std::vector<double>* slope) const;
    double overFirst(double weight, std::vector<double>* slope);
    double given(double first, double weight, std::vector<double>* slope);
    std::vector<double> places() const;
    std::vector<Turn> turns() const;
    void addCorners(const Run& run, std::vector<Turn>& turns) const;

    std::vector<ArrivalLevel> m_levels;
    std::vector<double> m_sd; // of the rest
    std::vector<Run> m_runs;
    std::vector<ErrorNode> m_nodes;
    std::vector<double> m_room; // of each arrival, given all c but the first
};

// P(level < limit) on one arrival, and its derivative by the mean, 1/L.
double arrivalRisk(double mean, double sd, double limit);
double arrivalRiskSlope(double mean, double sd, double limit);

// The standard normal's quantile at 1 - risk. A risk below 1e-280 or above 1 - 1e-15 is
// taken as that.
double quantileForRisk(double risk);

} // namespace undermark::planning
