// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/trip_risk.h"

#include <Eigen/Core>
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

// One row for each independent error of the rates: times the km by mode of a run it is
// the run's error in litres.
Eigen::MatrixXd independentErrors(const Problem& problem)
{
    using Matrix = Eigen::MatrixXd;
    const auto modes = static_cast<Eigen::Index>(problem.modes);
    Matrix left = Eigen::Map<const Matrix>(problem.covariance.data(), modes, modes);
    const Km whole = kmBetween(problem, 0, problem.points - 1);
    const double enough = 1e-12 * whole.dot(left * whole);
    Matrix errors(0, modes);
    Km along = whole;
    while (errors.rows() < modes) {
        const Km shared = left * along;
        const double variance = along.dot(shared);
        if (!(variance > enough))
            break;
        errors.conservativeResize(errors.rows() + 1, Eigen::NoChange);
        errors.bottomRows(1) = shared.transpose() / std::sqrt(variance);
        left -= shared * shared.transpose() / variance;
        Eigen::Index most = 0;
        left.diagonal().cwiseProduct(whole.cwiseAbs2()).maxCoeff(&most);
        along = Km::Unit(modes, most) * whole(most);
    }
    return errors;
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
    const Eigen::MatrixXd errors = independentErrors(problem);
    std::vector<ArrivalLevel> levels;
    levels.reserve(arrivals.size());
    for (const Arrival& arrival : arrivals) {
        const Km km = kmBetween(problem, arrival.since, arrival.point);
        const Km common = errors * km;
        levels.push_back({arrival.level,
                          {common.begin(), common.end()},
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
