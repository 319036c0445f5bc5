// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/noise_split.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// Scatter of one click over the litres of a usual stretch. On tanks of 40 L that is 0.25 to
// 1 L (common practice, no source, says some tenths of a litre up to one); on three real
// logs 0.014 to 0.022 forecast best.
constexpr std::array kClickShare{0.006, 0.011, 0.018, 0.027};
constexpr std::array kClickPrior{0.15, 0.30, 0.40, 0.15};
// Share of the road in the variance of a usual stretch. Trips one by one are as unlike each
// other as makes all of it road; days that go on as they began leave next to none.
constexpr std::array kRoadShare{0.05, 0.2, 0.5, 1.0};
constexpr std::array kRoadPrior{0.05, 0.15, 0.35, 0.45};
// Of the road of a usual stretch: 1.14e-3 L^2 per km, measured on real trips of cars that
// burn about 8 L/100 km, on 500 km and 40 L.
constexpr double kLeastRoad = 3.6e-4;
constexpr double kSplitKeep = 0.995;   // per stretch, towards the prior
constexpr double kSplitBound = 3;      // sds beyond which an error counts no more

} // namespace

NoiseSplit::NoiseSplit()
{
    for (std::size_t i = 0; i < m_logWeight.size(); ++i)
        m_logWeight[i] = std::log(kClickPrior[i / kRoads] * kRoadPrior[i % kRoads]);
    average();
}

double NoiseSplit::roadVariance(double s2, double share) { return std::max(s2 * share, kLeastRoad); }

void NoiseSplit::average()
{
    const double most = *std::ranges::max_element(m_logWeight);
    double click = 0, road = 0, weights = 0;
    for (std::size_t i = 0; i < m_logWeight.size(); ++i) {
        const double weight = std::exp(m_logWeight[i] - most);
        click += weight * kClickShare[i / kRoads] * kClickShare[i / kRoads];
        road += weight * kRoadShare[i % kRoads];
        weights += weight;
    }
    m_click = click / weights;
    m_road = road / weights;
}

void NoiseSplit::observe(double error, double known, double s2, double size, int clickEnds)
{
    static const std::array<double, kClicks * kRoads> kLogPrior = NoiseSplit().m_logWeight;
    for (std::size_t i = 0; i < m_logWeight.size(); ++i) {
        const double click = kClickShare[i / kRoads] / size;
        const double road = kRoadShare[i % kRoads];
        const double variance =
            known + clickEnds * click * click + s2 * (1 - road) + roadVariance(s2, road) / size;
        const double bounded = std::min(error * error / variance, kSplitBound * kSplitBound);
        m_logWeight[i] = kSplitKeep * m_logWeight[i] + (1 - kSplitKeep) * kLogPrior[i]
            - 0.5 * (bounded + std::log(variance));
    }
    // Only differences of the weights mean anything.
    const double most = *std::ranges::max_element(m_logWeight);
    for (double& weight : m_logWeight)
        weight -= most;
    average();
}

} // namespace undermark
