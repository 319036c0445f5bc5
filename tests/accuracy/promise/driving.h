// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a vehicle of the promise campaign is driven: day by day and trip by trip, with cold
// starts, weather, seasons, wear, holidays, jams, and changes of life.
#pragma once

#include "tests/accuracy/promise/vehicle.h"

#include <string>

namespace undermark::test {

struct Drive {
    double km = 0.0, litres = 0.0;
    std::string mode;
};

class Driving {
public:
    Driving(Kind kind, double litresPer100Km, Random& random);

    // The next trip; time passes to its end.
    Drive next(Random& random);
    Instant time() const { return m_start + std::chrono::seconds(std::int64_t(m_days * 86400.0)); }

    // A roof box, a trailer, another driver: from now on this much more than before.
    void burnMore(double factor) { m_life *= factor; }

private:
    void toNextDay(Random& random);
    double factor(double km) const;   // of mode

    Kind m_kind;
    double m_rate;                    // L/km, warm, on a mild day
    double m_tripKm, m_tripSpread, m_tripsPerDay, m_tripSd;
    double m_coldKm;                  // what a cold start burns, in km
    double m_town, m_motorway;        // against the open road
    double m_season, m_daySd, m_driftSd, m_holidays;
    double m_life = 1.0, m_drift = 0.0, m_day = 0.0;   // the last two as logarithms
    double m_days = 0.0;
    Instant m_start;
};

} // namespace undermark::test
