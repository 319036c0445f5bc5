// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/speed_mode.h"

#include "engine/base/records.h"

#include <cmath>
#include <utility>

namespace undermark {

namespace {

constexpr double kFadeS = 60.0;
constexpr double kLongestStepS = 2.0;
constexpr double kLeastDrivenS = 30.0;
constexpr double kStandsKmh = 1.0;
constexpr double kTownKmh = 45.0, kOpenRoadKmh = 95.0, kHysteresisKmh = 5.0;

} // namespace

void SpeedMode::add(Seconds time, Speed speed)
{
    const std::optional<Seconds> before = std::exchange(m_time, time);
    const double stepS = before ? (time - *before).count() : 0.0;
    if (!(stepS > 0.0 && stepS <= kLongestStepS) || speed.kmPerHour() < kStandsKmh)
        return;
    const double kept = std::exp(-stepS / kFadeS);
    m_weightS = kept * m_weightS + stepS;
    m_kmhS = kept * m_kmhS + stepS * speed.kmPerHour();
    m_drivenS += stepS;
    if (m_drivenS < kLeastDrivenS)
        return;
    const double mean = m_kmhS / m_weightS;
    // Past a bound by the hysteresis, seen from where it is now.
    const auto bound = [this](double kmh, Kind below) {
        return m_kind == Kind::none ? kmh : m_kind <= below ? kmh + kHysteresisKmh : kmh - kHysteresisKmh;
    };
    m_kind = mean < bound(kTownKmh, Kind::town) ? Kind::town
        : mean < bound(kOpenRoadKmh, Kind::openRoad) ? Kind::openRoad
                                                     : Kind::motorway;
}

std::optional<const char*> SpeedMode::mode() const
{
    switch (m_kind) {
    case Kind::none: break;
    case Kind::town: return kTown;
    case Kind::openRoad: return kOpenRoad;
    case Kind::motorway: return kMotorway;
    }
    return std::nullopt;
}

} // namespace undermark
