// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk/trip_risk.h"

#include "engine/planning/risk/union_risk.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <numeric>

namespace undermark::planning {

namespace {

constexpr std::size_t kMostJoined = 1'000;

// A world whose share of the risk is below this counts with the sum of its risks.
constexpr double kLeastShare = 1e-4;

// S = root root'.
Eigen::MatrixXd rootOfCovariance(const Problem& problem)
{
    const auto modes = static_cast<Eigen::Index>(problem.modes);
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> rates(
        Eigen::Map<const Eigen::MatrixXd>(problem.covariance.data(), modes, modes));
    return rates.eigenvectors() * rates.eigenvalues().cwiseMax(0.0).cwiseSqrt().asDiagonal();
}

// In a world, against the limit of being dry.
std::vector<ArrivalLevel> levelsIn(const Problem& problem, const std::vector<Arrival>& arrivals,
                                   const Eigen::MatrixXd& root, const RateWorld& world)
{
    std::vector<ArrivalLevel> levels;
    levels.reserve(arrivals.size());
    for (const Arrival& arrival : arrivals) {
        Eigen::VectorXd km(root.rows());
        for (Eigen::Index m = 0; m < km.size(); ++m)
            km(m) = problem.km(arrival.run, arrival.point, static_cast<int>(m));
        const LevelSpread spread = problem.spread(arrival.run, arrival.point);
        const Eigen::VectorXd residual = world.factorMean * (root.transpose() * km);
        std::vector<double> common(residual.begin(), residual.end());
        common.push_back(world.factorSd * spread.burnt);
        const double room =
            arrival.level - problem.dryAt(arrival.point) + spread.shiftIn(world);
        levels.push_back({room, std::move(common), spread.own, arrival.run.since});
    }
    return levels;
}

// The weighted sum of all worlds.
double riskOver(const Problem& problem, const std::vector<std::vector<ArrivalLevel>>& levels)
{
    std::vector<double> sums; // each weighted: the most that its world can add
    for (std::size_t k = 0; k < levels.size(); ++k)
        sums.push_back(problem.worlds[k].weight * sumOfRisks(levels[k]));
    const double most = std::accumulate(sums.begin(), sums.end(), 0.0);
    double risk = 0.0;
    for (std::size_t k = 0; k < levels.size(); ++k) {
        const bool counts = sums[k] > kLeastShare * most;
        risk += counts ? problem.worlds[k].weight * unionRisk(levels[k]) : sums[k];
    }
    return std::min(risk, 1.0);
}

TripRisk joinedRisk(const Problem& problem, const std::vector<Arrival>& arrivals)
{
    const Eigen::MatrixXd root = rootOfCovariance(problem);
    std::vector<std::vector<ArrivalLevel>> levels;
    for (const RateWorld& world : problem.worlds)
        levels.push_back(levelsIn(problem, arrivals, root, world));
    TripRisk risk;
    risk.dry = risk.belowFloor = riskOver(problem, levels);
    if (problem.floor == 0 && problem.floors.empty())
        return risk;
    for (std::vector<ArrivalLevel>& inWorld : levels) {
        for (std::size_t i = 0; i < inWorld.size(); ++i) {
            const int point = arrivals[i].point;
            inWorld[i].room -= problem.floorAt(point) - problem.dryAt(point);
        }
    }
    risk.belowFloor = riskOver(problem, levels);
    return risk;
}

} // namespace

std::vector<Arrival> arrivalsOf(const Problem& problem, const std::vector<Purchase>& purchases)
{
    std::vector<Arrival> arrivals;
    arrivals.reserve(purchases.size() + 1);
    double supply = problem.start;
    Run run;
    int from = 0;
    const auto arrive = [&](int to, const Offer* stop) {
        const std::size_t first = arrivals.size();
        double dry = -1.0; // what is asked for by what follows
        double floor = -1.0;
        if (stop && stop->detourKm > 0) { // which makes it one also where the way begins
            dry = problem.dryAt(to);
            floor = problem.floorAt(to);
            arrivals.push_back({problem.withDetour(run, to, 0.5), to,
                                supply - stop->detourLitres / 2 - problem.fuelBefore(to)});
        }
        const bool alike = problem.surgeTo.empty() && problem.floors.empty() && !problem.falls;
        for (int i = to; i > from && !(alike && dry >= 0); --i) {
            if (problem.dryAt(i) <= dry && problem.floorAt(i) <= floor && !(i < to && problem.isSummit(i)))
                continue;
            dry = std::max(dry, problem.dryAt(i));
            floor = std::max(floor, problem.floorAt(i));
            arrivals.push_back({run, i, supply - problem.fuelBefore(i)});
        }
        std::reverse(arrivals.begin() + static_cast<std::ptrdiff_t>(first), arrivals.end());
        from = to;
    };
    for (const Purchase& purchase : purchases) {
        const Offer& offer = problem.offers[static_cast<std::size_t>(purchase.point)];
        arrive(purchase.point, &offer);
        supply += purchase.litres - offer.detourLitres;
        run = purchase.full ? Run{purchase.point} : problem.withDetour(run, purchase.point, 1.0);
    }
    arrive(problem.points - 1, nullptr);
    return arrivals;
}

TripRisk riskOfTrip(const Problem& problem, const std::vector<Arrival>& arrivals)
{
    if (arrivals.size() > 1 && arrivals.size() <= kMostJoined)
        return joinedRisk(problem, arrivals);
    TripRisk risk;
    for (const Arrival& arrival : arrivals) { // one, or too many to join
        const LevelSpread spread = problem.spread(arrival.run, arrival.point);
        const double dry = problem.dryAt(arrival.point);
        const double floor = problem.floorAt(arrival.point);
        risk.dry += riskBelow(arrival.level - dry, spread, problem.worlds);
        risk.belowFloor += riskBelow(arrival.level - floor, spread, problem.worlds);
    }
    return {std::min(risk.dry, 1.0), std::min(risk.belowFloor, 1.0)};
}

} // namespace undermark::planning
