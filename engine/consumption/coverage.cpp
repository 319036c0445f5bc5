// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/coverage.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// Step on the log width per outcome: slow enough to cost no sharpness, fast
// enough to follow a changed driver within some tens of tanks.
constexpr double kStep = 0.025;
constexpr double kWidest = 4;

} // namespace

void BandFactors::observe(const std::array<bool, 3>& hit)
{
    for (std::size_t k = 0; k < hit.size(); ++k) {
        const double step = kStep * (kBandLevels[k] - (hit[k] ? 1.0 : 0.0));
        m_factor[k] = std::clamp(m_factor[k] * std::exp(step), 1 / kWidest, kWidest);
    }
    // Bands stay nested: the quotients of neighbouring t quantiles are below these.
    m_factor[1] = std::max(m_factor[1], 0.55 * m_factor[0]);
    m_factor[2] = std::max(m_factor[2], 0.80 * m_factor[1]);
}

BandFactors BandFactors::over(const BandFactors& base) const
{
    BandFactors both = *this;
    for (std::size_t k = 0; k < m_factor.size(); ++k)
        both.m_factor[k] *= base[k];
    return both;
}

double intervalScore(double low, double high, double outcome, double level)
{
    const double outside = std::max({low - outcome, outcome - high, 0.0});
    return high - low + 2 / (1 - level) * outside;
}

} // namespace undermark
