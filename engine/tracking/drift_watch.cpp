// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/drift_watch.h"

#include "engine/tracking/burn_noise.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kAllowance = 0.5;     // sd; finds shifts of one sd quickest
constexpr double kDrift = 0.06;        // of the range: less than that is no fault
constexpr int kThin = 2;               // blocks per value of the cumulative sum

// Values of the cumulative sum between false alarms: 1000 km at 40 km/h.
double runLength(const TrackerSettings& settings)
{
    const double values = 1000.0 / 40.0 * 3600.0 / (settings.block.count() * kThin);
    return values / settings.falseAlarmsPer1000Km;
}

} // namespace

DriftWatch::DriftWatch(const TrackerSettings& settings, const Moment& now)
    : m_rangeL((settings.highest - settings.lowest).litres()),
      m_cusum(kAllowance, cusumThreshold(kAllowance, runLength(settings))), m_calmUp(now),
      m_calmDown(now)
{
}

void DriftWatch::clear(const Moment& now)
{
    m_cusum.reset();
    calm(now);
}

void DriftWatch::restart(const Moment& now)
{
    clear(now);
    m_sum = 0.0;
    m_summed = 0;
}

std::optional<DriftWatch::Drift> DriftWatch::add(const Innovation& seen, const Moment& now,
                                                 const ReadingNoise& noise, double curveSdL)
{
    m_sum += seen.residualL / std::sqrt(seen.varianceL2 * std::clamp(noise.recentNis(), 1.0, 3.0));
    if (++m_summed < kThin)
        return std::nullopt;
    // The mean of kThin innovations, standardised as if independent.
    const int alarm = m_cusum.add(m_sum / std::sqrt(double(kThin)));
    m_sum = 0.0;
    m_summed = 0;
    if (m_cusum.up() == 0.0)
        m_calmUp = now;
    if (m_cusum.down() == 0.0)
        m_calmDown = now;
    if (alarm == 0)
        return std::nullopt;
    const Moment onset = alarm > 0 ? m_calmUp : m_calmDown;
    const FuelFilter counted = countedOn(onset.filter, now.usedL - onset.usedL);
    const double apart = now.filter.levelL() - counted.levelL();
    const double slow = noise.slowErrorSdL();
    const double spread = 3.0 * std::sqrt(counted.levelVarianceL2() + 2.0 * curveSdL * curveSdL
                                          + 2.0 * slow * slow);
    if (alarm * apart < std::max(kDrift * m_rangeL, spread)) {
        m_cusum.hold();
        return std::nullopt;
    }
    clear(now);
    return Drift{alarm > 0, apart, onset};
}

} // namespace undermark
