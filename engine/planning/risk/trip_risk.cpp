// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk/trip_risk.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr std::size_t kMostJoined = 1'000;

// The litres by which each arrival (row) is wrong for each independent error of the rates
// (column): first along the mean of all arrivals, then the principal components of what
// that leaves, the largest first.
Eigen::MatrixXd independentErrors(const Problem& problem, const std::vector<Arrival>& arrivals,
                                  const RateWorld& world)
{
    using Matrix = Eigen::MatrixXd;
    const auto modes = static_cast<Eigen::Index>(problem.modes);
    const auto mean = Eigen::Map<const Eigen::VectorXd>(problem.rates.data(), modes);
    const Matrix covariance =
        world.factorMean * world.factorMean *
            Eigen::Map<const Matrix>(problem.covariance.data(), modes, modes) +
        world.factorSd * world.factorSd * mean * mean.transpose();
    const Eigen::SelfAdjointEigenSolver<Matrix> rates(covariance);
    const Matrix root =
        rates.eigenvectors() * rates.eigenvalues().cwiseMax(0.0).cwiseSqrt().asDiagonal();
    Matrix errors(static_cast<Eigen::Index>(arrivals.size()), modes);
    Matrix relative = errors;
    for (Eigen::Index i = 0; i < errors.rows(); ++i) {
        const Arrival& arrival = arrivals[static_cast<std::size_t>(i)];
        Eigen::VectorXd km(modes);
        for (Eigen::Index m = 0; m < modes; ++m)
            km(m) = problem.km(arrival.since, arrival.point, static_cast<int>(m));
        errors.row(i) = km.transpose() * root;
        const double variance = problem.spread(arrival.since, arrival.point).varianceIn(world);
        relative.row(i) = errors.row(i) / std::sqrt(std::max(variance, 1e-300));
    }
    Eigen::VectorXd along = relative.colwise().sum().transpose();
    along = along.norm() > 0 ? along.normalized().eval() : Eigen::VectorXd::Unit(modes, 0).eval();
    relative -= relative * along * along.transpose();
    const Eigen::SelfAdjointEigenSolver<Matrix> components(relative.transpose() * relative);
    Matrix independent = errors;
    independent.col(0) = errors * along;
    errors -= independent.col(0) * along.transpose();
    independent.rightCols(modes - 1) =
        errors * components.eigenvectors().rightCols(modes - 1).rowwise().reverse();
    return independent;
}

// Above the limit of being dry, in a world.
double roomIn(const Problem& problem, const Arrival& arrival, const RateWorld& world)
{
    return arrival.level - problem.dryAt(arrival.point) +
           problem.spread(arrival.since, arrival.point).shiftIn(world);
}

TripRisk riskIn(const Problem& problem, const std::vector<Arrival>& arrivals,
                const RateWorld& world)
{
    const Eigen::MatrixXd errors = independentErrors(problem, arrivals, world);
    std::vector<ArrivalLevel> levels;
    levels.reserve(arrivals.size());
    for (const Arrival& arrival : arrivals) {
        const auto row = errors.row(static_cast<Eigen::Index>(levels.size()));
        levels.push_back({roomIn(problem, arrival, world),
                          {row.begin(), row.end()},
                          problem.spread(arrival.since, arrival.point).own,
                          arrival.since});
    }
    TripLaw law(levels);
    TripRisk risk;
    risk.dry = risk.belowFloor = law.risk();
    if (problem.floor == 0)
        return risk;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const int point = arrivals[i].point;
        law.setRoom(i, levels[i].room - problem.floorAt(point) + problem.dryAt(point));
    }
    risk.belowFloor = law.risk();
    return risk;
}

} // namespace

std::vector<Arrival> arrivalsOf(const Problem& problem, const std::vector<Purchase>& purchases)
{
    std::vector<Arrival> arrivals;
    arrivals.reserve(purchases.size() + 1);
    double supply = problem.start;
    int since = kStart, from = 0;
    const auto arrive = [&](int to) {
        const std::size_t first = arrivals.size();
        double asked = -1.0; // by what follows
        for (int i = to; i > from; --i) {
            if (problem.dryAt(i) <= asked)
                continue;
            asked = problem.dryAt(i);
            arrivals.push_back({since, i, supply - problem.fuelTo[static_cast<std::size_t>(i)]});
            if (problem.surgeTo.empty())
                break;
        }
        std::reverse(arrivals.begin() + static_cast<std::ptrdiff_t>(first), arrivals.end());
        from = to;
    };
    for (const Purchase& purchase : purchases) {
        arrive(purchase.point);
        supply +=
            purchase.litres - problem.offers[static_cast<std::size_t>(purchase.point)].detourLitres;
        if (purchase.full)
            since = purchase.point;
    }
    arrive(problem.points - 1);
    return arrivals;
}

TripRisk riskOfTrip(const Problem& problem, const std::vector<Arrival>& arrivals)
{
    TripRisk risk;
    if (arrivals.size() > 1 && arrivals.size() <= kMostJoined) {
        for (const RateWorld& world : problem.worlds) {
            const TripRisk one = riskIn(problem, arrivals, world);
            risk.dry += world.weight * one.dry;
            risk.belowFloor += world.weight * one.belowFloor;
        }
        return {std::min(risk.dry, 1.0), std::min(risk.belowFloor, 1.0)};
    }
    for (const Arrival& arrival : arrivals) { // one, or too many to join
        const LevelSpread spread = problem.spread(arrival.since, arrival.point);
        const double dry = problem.dryAt(arrival.point);
        const double floor = problem.floorAt(arrival.point);
        risk.dry += riskBelow(arrival.level - dry, spread, problem.worlds);
        risk.belowFloor += riskBelow(arrival.level - floor, spread, problem.worlds);
    }
    return {std::min(risk.dry, 1.0), std::min(risk.belowFloor, 1.0)};
}

} // namespace undermark::planning
