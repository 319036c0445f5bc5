// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/noise_split.h"

#include "engine/consumption/conjugate_regression.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// Half to three times the stated sd. The click repeats to some tenths of a litre
// up to one (common practice), so the middle is the likeliest.
constexpr std::array kSdFactor{0.5, 0.7, 1.0, 1.4, 2.0, 2.8};
constexpr std::array kPrior{0.10, 0.20, 0.30, 0.20, 0.15, 0.05};
constexpr double kSplitKeep = 0.995;         // per stretch, towards the prior, as in the trend
constexpr double kSplitPriorShape = 3.5;     // of the scale, as in the trend
constexpr double kSplitBound = 3;            // scales beyond which an error counts no more

} // namespace

NoiseSplit::NoiseSplit()
{
    for (std::size_t i = 0; i < kCandidates; ++i) {
        m_logWeight[i] = std::log(kPrior[i]);
        m_shape[i] = kSplitPriorShape;
        m_rate[i] = kSplitPriorShape - 1;
    }
    m_clickFactor = meanFactor();
}

double NoiseSplit::meanFactor() const
{
    const double most = *std::ranges::max_element(m_logWeight);
    double sum = 0;
    double weights = 0;
    for (std::size_t i = 0; i < kCandidates; ++i) {
        const double weight = std::exp(m_logWeight[i] - most);
        sum += weight * kSdFactor[i] * kSdFactor[i];
        weights += weight;
    }
    return sum / weights;
}

void NoiseSplit::observe(double error, double clickVariance, double otherVariance)
{
    for (std::size_t i = 0; i < kCandidates; ++i) {
        const double variance = kSdFactor[i] * kSdFactor[i] * clickVariance + otherVariance;
        const StudentT law{0, std::sqrt(m_rate[i] / m_shape[i] * variance), 2 * m_shape[i]};
        const double bounded = std::clamp(error, -kSplitBound * law.scale, kSplitBound * law.scale);
        m_logWeight[i] = kSplitKeep * m_logWeight[i] + (1 - kSplitKeep) * std::log(kPrior[i])
            + law.logDensity(bounded);
        m_shape[i] = kSplitKeep * m_shape[i] + (1 - kSplitKeep) * kSplitPriorShape + 0.5;
        m_rate[i] = kSplitKeep * m_rate[i] + (1 - kSplitKeep) * (kSplitPriorShape - 1)
            + 0.5 * bounded * bounded / variance;
    }
    // Only differences of the weights mean anything.
    const double most = *std::ranges::max_element(m_logWeight);
    for (double& weight : m_logWeight)
        weight -= most;
    m_clickFactor = meanFactor();
}

} // namespace undermark
