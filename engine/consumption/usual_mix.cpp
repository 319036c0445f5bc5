// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/usual_mix.h"

#include <algorithm>
#include <numeric>

namespace undermark {

namespace {

// How closely driving that no trip accounts for keeps to the usual mix.
constexpr double kConcentration = 10;

} // namespace

std::vector<double> UsualMix::shares() const
{
    const double total = std::accumulate(m_km.begin(), m_km.end(), 0.0);
    std::vector<double> shares = m_km;
    for (double& share : shares)
        share /= total;
    return shares;
}

double UsualMix::variance(std::span<const double> rates) const
{
    const std::vector<double> mix = shares();
    double first = 0;
    double second = 0;
    for (std::size_t i = 0; i < mix.size(); ++i) {
        first += mix[i] * rates[i];
        second += mix[i] * rates[i] * rates[i];
    }
    return std::max(second - first * first, 0.0) / (kConcentration + 1);
}

void UsualMix::fade(double keep)
{
    for (std::size_t i = 0; i < m_km.size(); ++i)
        m_km[i] = keep * m_km[i] + (1 - keep) * m_prior_km[i];
}

void UsualMix::observe(std::size_t mode, Distance distance) { m_km[mode] += distance.km(); }

void UsualClimb::fade(double keep)
{
    m_climb_km *= keep;
    m_road_km *= keep;
}

void UsualClimb::observe(Distance climbed, Distance road)
{
    m_climb_km += climbed.km();
    m_road_km += road.km();
}

} // namespace undermark
