// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/trip_risk.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr std::size_t kMostPaired = 1'000;

using Km = std::vector<double>; // by mode

Km kmBetween(const Problem& problem, int from, int to)
{
    const auto modes = static_cast<std::size_t>(problem.modes);
    Km km(modes);
    for (std::size_t m = 0; m < modes; ++m)
        km[m] = problem.kmTo[static_cast<std::size_t>(to) * modes + m] -
                problem.kmTo[static_cast<std::size_t>(std::max(from, 0)) * modes + m];
    return km;
}

// a'C b
double covarianceOf(const Problem& problem, const Km& a, const Km& b)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        for (std::size_t j = 0; j < b.size(); ++j)
            sum += a[i] * problem.covariance[i * b.size() + j] * b[j];
    }
    return sum;
}

// What each arrival shares with all others, L; nothing where two of them are
// negatively correlated or there are too many to look at all pairs.
std::optional<std::vector<double>> sharedErrors(const Problem& problem,
                                                const std::vector<Arrival>& arrivals)
{
    if (arrivals.size() > kMostPaired)
        return std::nullopt;
    const Km whole = kmBetween(problem, 0, problem.points - 1);
    const double wholeSd = std::sqrt(std::max(covarianceOf(problem, whole, whole), 0.0));
    std::vector<Km> km;
    std::vector<double> shared;
    for (const Arrival& arrival : arrivals) {
        km.push_back(kmBetween(problem, arrival.since, arrival.point));
        const double along = covarianceOf(problem, km.back(), whole);
        shared.push_back(wholeSd > 0 ? std::max(along / wholeSd, 0.0) : 0.0);
    }
    double square = 1.0; // t^2
    for (std::size_t i = 0; i < km.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            const double both = covarianceOf(problem, km[i], km[j]);
            if (both < 0)
                return std::nullopt;
            if (shared[i] * shared[j] > 0)
                square = std::min(square, both / (shared[i] * shared[j]));
        }
    }
    for (double& litres : shared)
        litres *= std::sqrt(square);
    return shared;
}

} // namespace

std::vector<Arrival> arrivalsOf(const Problem& problem, const std::vector<Purchase>& purchases)
{
    std::vector<Arrival> arrivals;
    arrivals.reserve(purchases.size() + 1);
    double supply = problem.start;
    int since = kStart;
    const auto arrive = [&](int point) {
        arrivals.push_back({since, point, supply - problem.fuelTo[static_cast<std::size_t>(point)]});
    };
    for (const Purchase& purchase : purchases) {
        if (purchase.point > 0)
            arrive(purchase.point);
        supply += purchase.litres -
                  problem.offers[static_cast<std::size_t>(purchase.point)].detourLitres;
        if (purchase.full)
            since = purchase.point;
    }
    arrive(problem.points - 1);
    return arrivals;
}

TripLaw::TripLaw(const Problem& problem, const std::vector<Arrival>& arrivals)
{
    const bool oneMode = problem.kmTo.empty();
    std::optional<std::vector<double>> shared;
    if (!oneMode) {
        shared = sharedErrors(problem, arrivals);
        m_summed = !shared;
    }
    // With one rate and no noise a run has one error besides the rate's: its level.
    const bool oneError = oneMode && problem.noisePerKm == 0;
    m_levels.reserve(arrivals.size());
    for (std::size_t i = 0; i < arrivals.size(); ++i) {
        const Arrival& arrival = arrivals[i];
        const double km = problem.at[static_cast<std::size_t>(arrival.point)] -
                          problem.at[static_cast<std::size_t>(std::max(arrival.since, 0))];
        double common = 0.0;
        if (!m_summed)
            common = oneMode ? km * std::sqrt(problem.covariance[0]) : (*shared)[i];
        const double variance = problem.variance(arrival.since, arrival.point);
        const double rest = std::sqrt(std::max(variance - common * common, 0.0));
        m_levels.push_back({arrival.level, common, rest, arrival.since, oneError});
    }
}

double TripLaw::below(double limit, std::vector<double>* slope) const
{
    if (!m_summed)
        return tripRisk(m_levels, limit, slope);
    double sum = 0.0;
    if (slope)
        slope->clear();
    for (const ArrivalLevel& level : m_levels) {
        sum += arrivalRisk(level.mean, level.rest, limit);
        if (slope)
            slope->push_back(arrivalRiskSlope(level.mean, level.rest, limit));
    }
    return std::min(sum, 1.0);
}

TripRisk riskOfTrip(const Problem& problem, const std::vector<Arrival>& arrivals)
{
    const TripLaw law(problem, arrivals);
    return {law.below(0.0), law.below(problem.floor)};
}

} // namespace undermark::planning
