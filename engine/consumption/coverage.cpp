// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/coverage.h"

#include "engine/consumption/log_law.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kStep = 0.05;   // of the logarithm, for a miss that should never be
constexpr double kNarrowest = 0.5;
constexpr double kWidest = 2.5;
// Promises stay in order: a factor is at least this share of its inner neighbour's. The
// quotients of neighbouring quantiles of the t are at most 0.752.
constexpr double kOfInner = 0.76;
constexpr std::size_t kMiddle = kPromises.size() / 2;   // first promise above the middle
// Standard normal scores of kPromises.
constexpr std::array<double, 8> kScores{-2.3263, -1.6449, -1.2816, -0.6745,
                                        0.6745,  1.2816,  1.6449,  2.3263};

// Quantiles of a normal law over those of HeavyTail with its sd; for "sure" (0.93) no less than 1.
const std::array<double, 8>& ofNormal()
{
    static const std::array<double, 8> made = [] {
        std::array<double, 8> quotients{};
        for (std::size_t k = 0; k < quotients.size(); ++k)
            quotients[k] = std::max(1.0, kScores[k] / HeavyTail{}.quantile(kPromises[k]));
        return quotients;
    }();
    return made;
}

} // namespace

double valueAt(const std::array<double, 8>& given, double score)
{
    if (score <= kScores.front())
        return given.front();
    for (std::size_t k = 1; k < kScores.size(); ++k) {
        if (score > kScores[k])
            continue;
        const double t = (score - kScores[k - 1]) / (kScores[k] - kScores[k - 1]);
        return given[k - 1] + t * (given[k] - given[k - 1]);
    }
    return given.back();
}

void PromiseFactors::observe(const std::array<bool, 8>& below)
{
    for (std::size_t k = 0; k < below.size(); ++k) {
        const bool upper = k >= kMiddle;
        const double promised = upper ? kPromises[k] : 1 - kPromises[k];
        const bool kept = below[k] == upper;
        m_factor[k] = std::clamp(m_factor[k] * std::exp(kStep * (promised - (kept ? 1.0 : 0.0))),
                                 kNarrowest, kWidest);
    }
    for (std::size_t k = kMiddle + 1; k < m_factor.size(); ++k) {
        m_factor[k] = std::max(m_factor[k], kOfInner * m_factor[k - 1]);
        const std::size_t mirror = m_factor.size() - 1 - k;
        m_factor[mirror] = std::max(m_factor[mirror], kOfInner * m_factor[mirror + 1]);
    }
}

PromiseFactors PromiseFactors::diluted(double share) const
{
    PromiseFactors some = *this;
    for (std::size_t k = 0; k < some.m_factor.size(); ++k) {
        const double learnt = some.m_factor[k], normal = ofNormal()[k];
        some.m_factor[k] = std::sqrt((1 - share) * learnt * learnt + share * normal * normal);
    }
    return some;
}

PromiseFactors PromiseFactors::over(const PromiseFactors& base) const
{
    PromiseFactors both = *this;
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
