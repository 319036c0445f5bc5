// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/risk.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr double kFarthest = 8.5; // the normal tail beyond is 1e-17

double tail(double below)
{
    return 0.5 * std::erfc(below / std::sqrt(2.0));
}

// Whoever is more than 8.5 deviations from the limit adds nothing.
bool isClose(const ArrivalLevel& arrival, double limit)
{
    return arrival.mean - limit < kFarthest * (arrival.common + arrival.rest) ||
           arrival.mean < limit;
}

// P(some arrival of the trip is below the limit | c)
class RiskGiven {
public:
    RiskGiven(const std::vector<ArrivalLevel>& arrivals, double limit)
        : m_arrivals(arrivals), m_limit(limit), m_risk(arrivals.size()), m_counts(arrivals.size())
    {
        for (std::size_t i = 0; i < arrivals.size(); ++i) {
            if (isClose(arrivals[i], limit))
                m_close.push_back(i);
        }
    }

    double at(double c)
    {
        double allWell = 1.0;
        std::size_t worst = 0; // of the run
        for (std::size_t k = 0; k < m_close.size(); ++k) {
            const std::size_t i = m_close[k];
            const ArrivalLevel& arrival = m_arrivals[i];
            m_risk[i] = arrivalRisk(arrival.mean - arrival.common * c, arrival.rest, m_limit);
            m_counts[i] = !arrival.oneError;
            if (!arrival.oneError) {
                allWell *= 1.0 - m_risk[i];
                continue;
            }
            if (k == 0 || runOf(k - 1) != arrival.run || m_risk[i] > m_risk[worst])
                worst = i;
            if (k + 1 == m_close.size() || runOf(k + 1) != arrival.run) {
                m_counts[worst] = true;
                allWell *= 1.0 - m_risk[worst];
            }
        }
        return m_all = 1.0 - allWell;
    }

    // Adds `weight` times the derivative by each mean, at the c asked for last.
    void addSlope(double c, double weight, std::vector<double>& slope) const
    {
        for (const std::size_t i : m_close) {
            const ArrivalLevel& arrival = m_arrivals[i];
            if (m_counts[i] && m_risk[i] < 1)
                slope[i] += weight * (1.0 - m_all) / (1.0 - m_risk[i]) *
                            arrivalRiskSlope(arrival.mean - arrival.common * c, arrival.rest, m_limit);
        }
    }

private:
    int runOf(std::size_t k) const { return m_arrivals[m_close[k]].run; }

    const std::vector<ArrivalLevel>& m_arrivals;
    double m_limit;
    std::vector<std::size_t> m_close;
    std::vector<double> m_risk;
    std::vector<char> m_counts; // of a run with one error only the worst does
    double m_all = 0.0;
};

// Where the integrand turns: around the c at which an arrival meets the limit.
std::vector<double> turns(const std::vector<ArrivalLevel>& arrivals, double limit)
{
    std::vector<double> places{-kFarthest, -6, -4, -3, -2, -1, 0, 1, 2, 3, 4, 6, kFarthest};
    for (const ArrivalLevel& arrival : arrivals) {
        if (arrival.common <= 0 || !isClose(arrival, limit))
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

// The same rule as for the risk: 10 places.
void addSlopeOver(double middle, double half, RiskGiven& given, std::vector<double>& slope)
{
    using Rule = boost::math::quadrature::gauss<double, 10>;
    for (std::size_t k = 0; k < Rule::abscissa().size(); ++k) {
        for (const double sign : {-1.0, 1.0}) {
            const double c = middle + sign * half * Rule::abscissa()[k];
            given.at(c);
            given.addSlope(c, half * Rule::weights()[k] * normalDensity(c), slope);
        }
    }
}

} // namespace

double normalDensity(double z)
{
    return std::exp(-z * z / 2) / std::sqrt(2 * M_PI);
}

double quantileForRisk(double risk)
{
    return -boost::math::quantile(boost::math::normal(), std::clamp(risk, 1e-280, 1.0 - 1e-15));
}

double arrivalRisk(double mean, double sd, double limit)
{
    if (sd > 0)
        return tail((mean - limit) / sd);
    return mean < limit - 1e-9 ? 1.0 : 0.0;
}

double arrivalRiskSlope(double mean, double sd, double limit)
{
    return sd > 0 ? -normalDensity((mean - limit) / sd) / sd : 0.0;
}

double tripRisk(const std::vector<ArrivalLevel>& arrivals, double limit, std::vector<double>* slope)
{
    const bool shared =
        std::ranges::any_of(arrivals, [](const ArrivalLevel& a) { return a.common > 0; });
    if (slope)
        slope->assign(arrivals.size(), 0.0);
    RiskGiven given(arrivals, limit);
    if (!shared) {
        const double risk = given.at(0.0);
        if (slope)
            given.addSlope(0.0, 1.0, *slope);
        return risk;
    }
    const std::vector<double> places = turns(arrivals, limit);
    double risk = 0.0;
    for (std::size_t i = 0; i + 1 < places.size(); ++i) {
        const double half = (places[i + 1] - places[i]) / 2;
        if (half <= 1e-12)
            continue;
        const double middle = places[i] + half;
        risk += half * boost::math::quadrature::gauss<double, 10>::integrate([&](double u) {
                    const double c = middle + half * u;
                    return given.at(c) * normalDensity(c);
                });
        if (slope)
            addSlopeOver(middle, half, given, *slope);
    }
    return std::clamp(risk, 0.0, 1.0);
}

} // namespace undermark::planning
