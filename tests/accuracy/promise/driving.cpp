// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/accuracy/promise/driving.h"

#include <numbers>

namespace undermark::test {

Driving::Driving(Kind kind, double litresPer100Km, Random& random)
    : m_kind(kind), m_rate(litresPer100Km / 100.0), m_tripSpread(between(random, 0.4, 0.9)),
      m_tripSd(between(random, 0.04, 0.14)), m_coldKm(between(random, 0.3, 2.0)),
      m_town(between(random, 1.0, 1.35)), m_motorway(between(random, 0.85, 1.2)),
      m_season(between(random, 0.0, 0.1)), m_daySd(between(random, 0.015, 0.05)),
      m_driftSd(between(random, 0.004, 0.015)), m_holidays(chance(random, 0.6) ? between(random, 0.005, 0.04) : 0.0)
{
    const KindRanges& range = kKindRanges[std::size_t(kind)];
    m_tripKm = range.tripKm * std::exp(normal(random, 0.4));
    m_tripsPerDay = range.tripsPerDay * std::exp(normal(random, 0.4));
    if (kind == Kind::kart) {   // on one track, always warm, in summer and winter
        m_tripSpread = 0.3;
        m_holidays = m_season = 0.0;
        m_coldKm = 0.2;
    }
    using namespace std::chrono;
    m_start = sys_days{year{2024} / 1 / 1} + hours(24 * (random() % 365)) + hours(9);
}

void Driving::toNextDay(Random& random)
{
    m_day = 0.6 * m_day + normal(random, 0.8 * m_daySd);   // weather lasts
}

double Driving::factor(double km) const
{
    if (m_kind == Kind::kart)
        return 1.0;
    return km < 12.0 ? m_town : km > 70.0 ? m_motorway : 1.0;
}

Drive Driving::next(Random& random)
{
    const double wait = -std::log(1.0 - between(random, 0.0, 1.0)) / m_tripsPerDay;
    if (std::floor(m_days + wait) > std::floor(m_days))
        toNextDay(random);
    m_days += wait;
    Drive drive;
    drive.km = std::max(0.5, m_tripKm * std::exp(normal(random, m_tripSpread)));
    if (chance(random, m_holidays))
        drive.km *= between(random, 4.0, 15.0);
    drive.mode = drive.km < 12.0 ? kTown : drive.km > 70.0 ? kMotorway : kOpenRoad;
    m_drift += normal(random, m_driftSd * std::sqrt(drive.km / 1000.0));
    // Coldest in the middle of January.
    const double year = (std::chrono::duration<double>(time().time_since_epoch()).count() / 86400.0 - 15.0) / 365.25;
    const double cold = std::cos(2.0 * std::numbers::pi * year);
    const double jam = chance(random, 0.02) ? between(random, 1.1, 1.6) : 1.0;
    const double rate = m_rate * m_life * factor(drive.km) * jam
        * std::exp(m_drift + m_day + m_season * cold + normal(random, m_tripSd));
    const double start = chance(random, 0.7) ? m_coldKm * m_rate * (1.0 + 0.5 * cold) : 0.0;
    drive.litres = rate * drive.km + start;
    return drive;
}

} // namespace undermark::test
