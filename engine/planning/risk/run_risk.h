// SPDX-License-Identifier: GPL-3.0-or-later
//
// The risk of one run: from where the level was last known to its last arrival.
#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <vector>

namespace undermark::planning {

// The error of the level on arrival is that of the level at the start of the run plus
// the sections' own noise so far: a random walk, so what is known on one arrival is all
// that matters for the next. The density of the error (and the risk that is still to
// come) is carried from arrival to arrival on an even mesh, where the trapezium rule is
// exact but for what a normal density holds beyond the mesh's frequency; where an
// arrival cuts it off, by the integral of the polynomial through six neighbours.
//
// Checked against closed forms: P(a symmetric random walk stays below 0 for n steps) =
// C(2n, n) / 4^n (E. Sparre Andersen 1954; from memory), and two arrivals by Owen's T.
// Relative error below 1e-4 of a small risk, mostly 1e-5.
class RunRisk {
public:
    // `variances`: of the error on each arrival, L^2, not falling. Not empty. Arrivals so
    // near to each other that the mesh cannot tell them apart (the noise between them below
    // a hundredth to a fifth of the average) share one error, that of the last of them:
    // never less risky than it is.
    explicit RunRisk(const std::vector<double>& variances);

    // P(error > room on one arrival or more), `room` the litres above the limit on each.
    // A room of less than 0 where there is no spread is risk 1. O(arrivals x mesh x reach
    // of a step).
    double at(const std::vector<double>& room);

private:
    struct Step { // from the group before
        double sd;
        Eigen::VectorXd kernel; // density times mesh, by distance in places, both ways
    };

    std::vector<double> group(const std::vector<double>& variances);
    void gather(const std::vector<double>& room);
    void lay();
    Eigen::Index nearCut(std::size_t group) const;
    Eigen::Index mayPass(std::size_t group) const;
    double belowCut(std::size_t group, Eigen::Index place) const;
    void spread(const Step& step, std::size_t fromGroup, const Eigen::VectorXd& from,
                std::size_t toGroup, Eigen::VectorXd& to) const;
    double riskToCome();

    double m_startSd = 0.0;
    double m_walkSd = 0.0;            // of all steps
    double m_mesh = 0.0;              // L
    std::vector<std::size_t> m_group; // of each arrival
    std::vector<Step> m_steps;        // to the second group, and so on
    std::vector<double> m_reach;      // of the walk between two groups, in places

    // Of the room asked for last, by group. Places are counted from the error m_lowest.
    std::vector<double> m_room;
    double m_lowest = 0.0;               // L
    double m_highest = 0.0;              // place; all are past it
    std::vector<double> m_cut;           // place
    std::vector<Eigen::Index> m_from;    // the places that count
    std::vector<Eigen::Index> m_to;
    std::vector<Eigen::VectorXd> m_kept;   // weight of each place below the cut
    std::vector<Eigen::VectorXd> m_toCome; // risk after the arrival, by error
    Eigen::VectorXd m_density;
    Eigen::VectorXd m_cutOff;
};

} // namespace undermark::planning
