// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/fuel_use.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kGuessedLPerKm = 0.08;       // a mid-size car; known to 60 % only
constexpr double kGuessedLPerHour = 5.0;      // level alone: anything from idling to motorway
constexpr double kWalking = 3.0;              // km/h
constexpr double kGapSeconds = 60.0;
constexpr double kMostUnknownL = 3.0;         // an unseen stretch of driving
constexpr double kFastest = 300.0;            // km/h; a distance step beyond is a new count

} // namespace

FuelUse::FuelUse(const TrackerSettings& settings)
    : m_litresPerKm(settings.rate ? settings.rate->mean.litresPerKm() : kGuessedLPerKm),
      m_idleLPerS(settings.idle.litresPerHour() / 3600.0),
      m_rateSd(settings.rate ? settings.rate->sd / settings.rate->mean : 0.6),
      m_stated(settings.rate.has_value())
{
}

double FuelUse::scaleSd() const
{
    if (m_measured)
        return 0.15;
    return m_km ? std::hypot(m_rateSd, 0.1) : 0.6;
}

std::optional<double> FuelUse::litresPerKm() const
{
    return m_measured || !m_km ? std::nullopt : std::optional(m_litresPerKm);
}

// The car was most likely parked, unless it moved at both ends.
double FuelUse::gapLitres2(const TrackerSample& sample, UseStep& step) const
{
    const bool drove = m_speed && sample.speed && *m_speed > kWalking
        && sample.speed->kmPerHour() > kWalking;
    const double km = drove ? 0.5 * (*m_speed + sample.speed->kmPerHour()) * step.seconds / 3600.0
                            : 0.0;
    step.usedL = m_litresPerKm * km;
    step.km = km;
    const double spread = drove ? 0.5 * step.usedL : std::min(0.3 * step.seconds / 3600.0, 1.0);
    return std::pow(std::min(spread, kMostUnknownL), 2);
}

double FuelUse::counted(const TrackerSample& sample, UseStep& step)
{
    const double now = sample.speed ? sample.speed->kmPerHour() : 0.0;
    if (sample.speed) {
        m_km = true;
        const double before = m_speed.value_or(now);
        step.km = 0.5 * (before + now) * step.seconds / 3600.0;
        if (step.seconds > 0.0)
            step.acceleration = std::abs(now - before) / 3.6 / step.seconds;
    }
    if (sample.distance) {
        m_km = true;
        const double delta = sample.distance->km() - m_distance.value_or(sample.distance->km());
        if (delta >= 0.0 && delta <= kFastest * step.seconds / 3600.0 + 1.0)
            step.km = delta;
    }
    if (sample.fuelRate) {
        m_measured = true;
        return sample.fuelRate->litresPerHour() * step.seconds / 3600.0;
    }
    if (!sample.speed && !sample.distance)
        return kGuessedLPerHour * step.seconds / 3600.0;
    return m_litresPerKm * step.km + (step.moving ? 0.0 : m_idleLPerS * step.seconds);
}

UseStep FuelUse::step(const TrackerSample& sample)
{
    UseStep step;
    const double time = sample.time.count();
    step.seconds = m_first ? 0.0 : time - m_time;
    if (step.seconds < 0.0) {
        step.clockJump = true;
        step.seconds = 0.0;
    }
    step.motionKnown = sample.speed.has_value();
    step.moving = !sample.speed || sample.speed->kmPerHour() > kWalking
        || m_speed.value_or(0.0) > kWalking;
    step.gap = step.seconds > kGapSeconds;
    if (step.gap && !sample.distance) {
        step.unknownL2 = gapLitres2(sample, step);
    } else if (step.gap) {
        step.unknownL2 = 0.01;
        TrackerSample parked = sample;   // the distance tells; the rate at the end does not
        parked.fuelRate.reset();
        step.moving = true;              // no idling is assumed for the gap
        step.usedL = counted(parked, step);
    } else {
        step.usedL = counted(sample, step);
    }
    m_first = false;
    m_time = time;
    m_speed = sample.speed ? std::optional(sample.speed->kmPerHour()) : std::nullopt;
    if (sample.distance)
        m_distance = sample.distance->km();
    return step;
}

} // namespace undermark
