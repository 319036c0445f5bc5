// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/trend.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

enum Feature : std::size_t { kLevel, kRecent, kCosine, kSine, kPace, kRecentPace, kFeatures };

// Round numbers, chosen on simulated cars together with one real log; none is a
// sharp optimum.
constexpr double kRecentWeight = 0.4;      // of the newest stretch
constexpr double kTrendKeep = 0.995;            // per stretch, towards the prior
constexpr double kLongMemory = 60;         // stretches, of the usual pace
constexpr double kTrendBound = 2.0;             // scales beyond which a stretch counts less
// Bounding takes from the scale: of a normal error only E[min(z^2, kTrendBound^2)] =
// 0.9205 is seen, so what is learnt is that share of the variance.
constexpr double kSeenOfVariance = 0.9205;
constexpr double kPacePersists = 0.4;      // of the last stretch's pace, where the next is unknown
constexpr double kPaceBound = 2.0;         // standard deviations of this driver's pace
// Prior of the noise factor: mean 1, and about five tanks' worth.
constexpr double kTrendPriorShape = 3.5;
constexpr double kDaysPerYear = 365.2425;

ConjugateRegression trendPriorRegression()
{
    // Of the recent pace: minus b * p, which takes out what the pace explained.
    constexpr double kMean[kFeatures] = {0, 0.4, 0, 0, -0.03, 0.012};
    // Spreads of the coefficients: with a noise factor of 1 they are as stated.
    constexpr double kSd[kFeatures] = {0.05, 0.2, 0.05, 0.05, 0.05, 0.03};
    std::vector<double> covariance(kFeatures * kFeatures, 0.0);
    for (std::size_t i = 0; i < kFeatures; ++i)
        covariance[i * kFeatures + i] = kSd[i] * kSd[i];
    return {{kMean, kMean + kFeatures}, covariance, kTrendPriorShape, kTrendPriorShape - 1};
}

double yearAngle(Instant time)
{
    const double days = std::chrono::duration<double, std::ratio<86400>>(time.time_since_epoch()).count();
    return 2 * std::numbers::pi * days / kDaysPerYear;
}

} // namespace

double Trend::noiseFactor() const { return m_regression.noiseVariance() / kSeenOfVariance; }

double litresPerDay(Volume burnt, Instant begin, Instant end)
{
    const double days = std::chrono::duration<double, std::ratio<86400>>(end - begin).count();
    return burnt.litres() / (std::max(days, 0.0) + 1);
}

Trend::Trend() : m_regression(trendPriorRegression()) {}

std::vector<double> Trend::features(const Circumstances& now) const
{
    std::vector<double> x(kFeatures, 0.0);
    x[kLevel] = 1;
    x[kRecent] = m_recent;
    if (now.begin) {
        x[kCosine] = std::cos(yearAngle(*now.begin));
        x[kSine] = std::sin(yearAngle(*now.begin));
    }
    if (now.litresPerDay && m_count > 0) {
        // A car that stood for months says no more than one that stood for weeks.
        const double reach = kPaceBound * std::sqrt(m_paceVariance);
        x[kPace] = std::clamp(std::log(*now.litresPerDay) - m_paceMean, -reach, reach);
    } else {
        x[kPace] = kPacePersists * m_lastPace;
    }
    x[kRecentPace] = m_recentPace;
    return x;
}

StudentT Trend::predict(const Circumstances& now, double relativeVariance) const
{
    double variance = relativeVariance;
    if (!now.litresPerDay) {
        const double slope = m_regression.mean()[kPace];
        variance += slope * slope * m_paceVariance / m_regression.noiseVariance();
    }
    StudentT law = m_regression.predict(features(now), variance);
    law.scale /= std::sqrt(kSeenOfVariance);
    return law;
}

void Trend::observe(const Circumstances& then, double y, double relativeVariance)
{
    const StudentT expected = predict(then, relativeVariance);
    const double away = std::abs(y - expected.location) / expected.scale;
    const double excess = std::max(1.0, away / kTrendBound);
    m_regression.forget(kTrendKeep);
    m_regression.observe(features(then), y, relativeVariance * excess * excess);

    m_count = std::min(m_count + 1, kLongMemory);
    const double reach = 1.25 * kTrendBound * expected.scale;
    const double bounded = std::clamp(y, expected.location - reach, expected.location + reach);
    m_recent += std::max(kRecentWeight, 1 / m_count) * (bounded - m_recent);
    if (!then.litresPerDay)
        return;
    m_lastPace = features(then)[kPace];
    m_recentPace += std::max(kRecentWeight, 1 / m_count) * (m_lastPace - m_recentPace);
    const double step = std::log(*then.litresPerDay) - m_paceMean;
    m_paceMean += step / m_count;
    m_paceVariance += (step * step * (1 - 1 / m_count) - m_paceVariance) / (m_count + 1);
}

} // namespace undermark
