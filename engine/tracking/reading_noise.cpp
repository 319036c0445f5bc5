// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/reading_noise.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// Measured on four open drives: means over 300 s still scatter by 0.6 to 0.9 % of
// the range.
constexpr double kSlow = 0.015;            // of the range
constexpr double kSlowS = 150.0;           // first-order process
constexpr double kSlowGain = 0.02;         // how fast its size is learnt, per block
constexpr double kLeastSlow = 0.1;         // of kSlow
constexpr double kMostSlow = 2.5;
constexpr double kLeastNoise = 0.1;        // of the block's own noise, below kLeastSlow

// Slosh of one reading: never believed smaller than this share of the range.
constexpr double kLeastStanding = 0.003;
constexpr double kLeastMoving = 0.01;
constexpr double kSloshGain = 0.1;
constexpr double kHarsh = 0.7;             // m/s^2, mean over a block; doubles the variance
constexpr double kNisGain = 0.005;

} // namespace

double ReadingNoise::slowErrorSdL() const
{
    return kSlow * std::max(m_share, kLeastSlow) * m_rangeL;
}

double ReadingNoise::slowErrorSdUnlearntL() const
{
    return kSlow * m_rangeL;
}

double ReadingNoise::slowErrorKept(double seconds) const
{
    return std::exp(-seconds / kSlowS);
}

double ReadingNoise::varianceL2(const BlockSummary& block, const BlockDrive& past)
{
    const double share = blockMeanVariance(Seconds(std::max(block.seconds, 1.0)),
                                           m_sloshCorrelation);
    // The spread within the block misses the part that moves the whole block.
    const double seen = block.sdL * block.sdL / std::max(0.3, 1.0 - share);
    double& known = m_sloshL2[past.moved];
    const double least = std::pow((past.moved ? kLeastMoving : kLeastStanding) * m_rangeL, 2);
    known = known == 0.0 ? seen : known + kSloshGain * (seen - known);
    const double slosh = std::max({known, 0.5 * seen, least});
    const double harsh = 1.0 + std::pow(past.acceleration() / kHarsh, 2);
    const double clipped = std::pow(block.atStopShare * block.sdL, 2);
    return slosh * share * harsh * std::min(1.0, m_share / kLeastSlow) + clipped;
}

void ReadingNoise::learn(double nis)
{
    m_nisSum += nis;
    ++m_nisCount;
    m_nisRecent += kNisGain * (std::min(nis, 9.0) - m_nisRecent);
    m_share = std::clamp(m_share * std::exp(kSlowGain * (std::min(nis, 6.0) - 1.0)),
                         kLeastNoise * kLeastSlow, kMostSlow);
}

} // namespace undermark
