// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk.h"

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr double kFarthest = 8.5; // the normal tail beyond is 1e-17

double tail(double below)
{
    return 0.5 * std::erfc(below / std::sqrt(2.0));
}

// P(some arrival of the trip is below the limit | c)
double riskGiven(const std::vector<ArrivalLevel>& arrivals, double limit, double c)
{
    double allWell = 1.0;
    double runWorst = 0.0;
    for (std::size_t i = 0; i < arrivals.size(); ++i) {
        const ArrivalLevel& arrival = arrivals[i];
        const double risk = arrivalRisk(arrival.mean - arrival.common * c, arrival.rest, limit);
        if (!arrival.oneError) {
            allWell *= 1.0 - risk;
            continue;
        }
        runWorst = std::max(runWorst, risk);
        if (i + 1 == arrivals.size() || arrivals[i + 1].run != arrival.run) {
            allWell *= 1.0 - runWorst;
            runWorst = 0.0;
        }
    }
    return 1.0 - allWell;
}

// Where the integrand turns: around the c at which an arrival meets the limit.
std::vector<double> turns(const std::vector<ArrivalLevel>& arrivals, double limit)
{
    std::vector<double> places{-kFarthest, -6, -4, -3, -2, -1, 0, 1, 2, 3, 4, 6, kFarthest};
    for (const ArrivalLevel& arrival : arrivals) {
        if (arrival.common <= 0)
            continue;
        const double centre = (arrival.mean - limit) / arrival.common;
        const double width = arrival.rest / arrival.common;
        if (width > 1)
            continue; // smooth enough for the steps above
        for (const double steps : {-4.0, -1.5, 0.0, 1.5, 4.0}) {
            const double place = centre + steps * width;
            if (std::fabs(place) < kFarthest)
                places.push_back(place);
        }
    }
    std::ranges::sort(places);
    return places;
}

} // namespace

double arrivalRisk(double mean, double sd, double limit)
{
    if (sd > 0)
        return tail((mean - limit) / sd);
    return mean < limit - 1e-9 ? 1.0 : 0.0;
}

double tripRisk(const std::vector<ArrivalLevel>& arrivals, double limit)
{
    const bool shared =
        std::ranges::any_of(arrivals, [](const ArrivalLevel& a) { return a.common > 0; });
    if (!shared)
        return riskGiven(arrivals, limit, 0.0);
    // Whoever is more than 8.5 deviations from the limit adds nothing.
    std::vector<ArrivalLevel> close;
    std::ranges::copy_if(arrivals, std::back_inserter(close), [&](const ArrivalLevel& a) {
        return a.mean - limit < kFarthest * (a.common + a.rest);
    });
    const std::vector<double> places = turns(close, limit);
    double risk = 0.0;
    for (std::size_t i = 0; i + 1 < places.size(); ++i) {
        const double half = (places[i + 1] - places[i]) / 2;
        if (half <= 1e-12)
            continue;
        const double middle = places[i] + half;
        risk += half * boost::math::quadrature::gauss<double, 10>::integrate([&](double u) {
                    const double c = middle + half * u;
                    return riskGiven(close, limit, c) * std::exp(-c * c / 2) / std::sqrt(2 * M_PI);
                });
    }
    return std::clamp(risk, 0.0, 1.0);
}

} // namespace undermark::planning
