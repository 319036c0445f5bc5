// SPDX-License-Identifier: GPL-3.0-or-later
//
// Levels on arrival whose errors are partly shared, and at which values of those errors
// to look.
#pragma once

#include <cstddef>
#include <vector>

namespace undermark::planning {

// A level on arrival as a normal variable: limit + room - common'c + rest. c are independent
// standard normals shared by the whole way (the errors of the rates); the rest is the
// error of the run: of the level at its start and of the sections since.
struct ArrivalLevel {
    double room;                // L, the mean above its limit
    std::vector<double> common; // L per unit of each c; as long on every arrival
    double variance;            // of the rest, L^2; within a run not falling
    int run;                    // arrivals of one run are neighbours

    double first() const; // of common; 0 where there is none
    double sd() const;    // of the level, L
};

// Values of all c but the first.
struct ErrorNode {
    std::vector<double> c;
    double weight; // the probability it stands for
};

// Where to take, given all c but the first, the probability that some arrival fails, so
// that the weighted sum is the whole probability, mostly to 1e-5 of it, to 3e-4 at worst
// (run_risk_test prints what is missed on ways drawn by chance).
// Whatever the rooms: a change of them leaves the places as they are. One node without
// c where there is one error or none. Of three errors and more that would ask for many places
// 128 are taken, spread evenly: what that misses is within the noise of 200,000 drives
// (plan_modes_test).
// O(arrivals^2 x errors^2), and the nodes.
std::vector<ErrorNode> errorNodes(const std::vector<ArrivalLevel>& levels);

} // namespace undermark::planning
