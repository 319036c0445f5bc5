// SPDX-License-Identifier: GPL-3.0-or-later
//
// The risk of the whole way, from the risk on each arrival.
#pragma once

#include <vector>

namespace undermark::planning {

// A level on arrival as a normal variable: mean - common x c + rest, c a
// standard normal shared by the whole trip (the error of the rate), the rest
// independent from run to run and positively correlated within a run.
struct ArrivalLevel {
    double mean;   // L
    double common; // L per unit of c
    double rest;   // L, standard deviation
    int run;       // arrivals of one run are neighbours
    bool oneError; // the rest is one and the same error for the whole run
};

// P(level < limit at one of the arrivals or more). Fuel only falls between
// stops, so the arrivals at stops and at the finish are all that is needed.
//
// Given c the runs are independent, and the integral over c is by Gauss-Legendre
// between the places where the integrand turns. Within a run it is exact where
// the rest is one error, and else the bound 1 - prod(1 - p) of Slepian's
// inequality (never below the true risk).
//
// `slope`, where given, becomes the derivative by each mean, 1/L.
double tripRisk(const std::vector<ArrivalLevel>& arrivals, double limit,
                std::vector<double>* slope = nullptr);

// P(level < limit) on one arrival, and its derivative by the mean, 1/L.
double arrivalRisk(double mean, double sd, double limit);
double arrivalRiskSlope(double mean, double sd, double limit);

// The standard normal: its density, and its quantile at 1 - risk. A risk below 1e-280
// or above 1 - 1e-15 is taken as that.
double normalDensity(double z);
double quantileForRisk(double risk);

} // namespace undermark::planning
