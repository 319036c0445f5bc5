// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk/trip_risk.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr std::size_t kMostJoined = 1'000;

using Km = Eigen::VectorXd; // by mode

Km kmBetween(const Problem& problem, int from, int to)
{
    const auto first = static_cast<std::size_t>(std::max(from, 0));
    const auto last = static_cast<std::size_t>(to);
    if (problem.kmTo.empty())
        return Km::Constant(1, problem.at[last] - problem.at[first]);
    const auto modes = static_cast<std::size_t>(problem.modes);
    const auto kmTo = [&](std::size_t point) {
        return Eigen::Map<const Km>(problem.kmTo.data() + point * modes, problem.modes);
    };
    return kmTo(last) - kmTo(first);
}

// The litres by which each arrival (row) is wrong for each independent error of the rates
// (column): first along the mean of all arrivals, then the principal components of what
// that leaves, the largest first.
Eigen::MatrixXd independentErrors(const Problem& problem, const std::vector<Arrival>& arrivals)
{
    using Matrix = Eigen::MatrixXd;
    const auto modes = static_cast<Eigen::Index>(problem.modes);
    const Matrix covariance = Eigen::Map<const Matrix>(problem.covariance.data(), modes, modes);
    const Eigen::SelfAdjointEigenSolver<Matrix> rates(covariance);
    const Matrix root =
        rates.eigenvectors() * rates.eigenvalues().cwiseMax(0.0).cwiseSqrt().asDiagonal();
    Matrix errors(static_cast<Eigen::Index>(arrivals.size()), modes);
    Matrix relative = errors;
    for (Eigen::Index i = 0; i < errors.rows(); ++i) {
        const Arrival& arrival = arrivals[static_cast<std::size_t>(i)];
        errors.row(i) = kmBetween(problem, arrival.since, arrival.point).transpose() * root;
        const double variance = problem.variance(arrival.since, arrival.point);
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

} // namespace

std::vector<Arrival> arrivalsOf(const Problem& problem, const std::vector<Purchase>& purchases)
{
    std::vector<Arrival> arrivals;
    arrivals.reserve(purchases.size() + 1);
    double supply = problem.start;
    int since = kStart;
    const auto arrive = [&](int point) {
        arrivals.push_back(
            {since, point, supply - problem.fuelTo[static_cast<std::size_t>(point)]});
    };
    for (const Purchase& purchase : purchases) {
        if (purchase.point > 0)
            arrive(purchase.point);
        supply +=
            purchase.litres - problem.offers[static_cast<std::size_t>(purchase.point)].detourLitres;
        if (purchase.full)
            since = purchase.point;
    }
    arrive(problem.points - 1);
    return arrivals;
}

TripLaw lawOf(const Problem& problem, const std::vector<Arrival>& arrivals,
              RunRisk::Rounding rounding)
{
    const Eigen::MatrixXd errors = independentErrors(problem, arrivals);
    std::vector<ArrivalLevel> levels;
    levels.reserve(arrivals.size());
    for (const Arrival& arrival : arrivals) {
        const auto row = errors.row(static_cast<Eigen::Index>(levels.size()));
        levels.push_back({arrival.level,
                          {row.begin(), row.end()},
                          problem.ownVariance(arrival.since, arrival.point),
                          arrival.since});
    }
    return TripLaw(std::move(levels), rounding);
}

TripRisk riskOfTrip(const Problem& problem, const std::vector<Arrival>& arrivals)
{
    if (arrivals.size() <= kMostJoined) {
        TripLaw law = lawOf(problem, arrivals);
        const double belowFloor = law.below(problem.floor);
        return {problem.floor == 0 ? belowFloor : law.below(0.0), belowFloor};
    }
    TripRisk risk;
    for (const Arrival& arrival : arrivals) {
        const double sd = std::sqrt(problem.variance(arrival.since, arrival.point));
        risk.dry += arrivalRisk(arrival.level, sd, 0.0);
        risk.belowFloor += arrivalRisk(arrival.level, sd, problem.floor);
    }
    return {std::min(risk.dry, 1.0), std::min(risk.belowFloor, 1.0)};
}

} // namespace undermark::planning
