// SPDX-License-Identifier: GPL-3.0-or-later
//
// A world harder than the forecaster's own model: karts to trucks, noise with heavy tails
// that comes in weeks, seasons, a life that changes all at once or slowly, slips of the
// pen. Invented; deterministic by seed. For measuring, by tests/accuracy.
#pragma once

#include "tests/support/simulated_car.h"

#include "engine/consumption/interval.h"

#include <array>
#include <string>

namespace undermark::test {

struct Kind {
    const char* name;
    double capacityLow_l, capacityHigh_l;
    double rangeLow_km, rangeHigh_km;   // of a full tank
};
inline constexpr std::array<Kind, 6> kKinds{{{"kart", 5, 9, 25, 90},
                                             {"motorcycle", 9, 22, 160, 420},
                                             {"small car", 32, 48, 500, 950},
                                             {"car", 45, 70, 480, 1150},
                                             {"thirsty", 60, 95, 260, 480},
                                             {"truck", 200, 600, 700, 1700}}};

struct HarshTank {
    Interval stretch;          // as it was written down
    double truth_km = 0;       // for the litres written down, without a slip
    bool slip = false;
    int sinceChange = -1;      // tanks since a lasting change began; -1: none yet
};

struct HarshLog {
    double capacity_l = 0;
    std::vector<HarshTank> tanks;
};

struct HarshSetup {
    int tanks = 30;
    int changeAt = -1;         // tank at which the car changes for good
    double changeBy = 1;       // and by what factor
    int slipAt = -1;           // tank of which the fill before was forgotten
    double slipShare = 0.01;   // of other tanks with one slip or another
};

// Student's t with four degrees of freedom, of sd 1.
inline double heavy(std::mt19937_64& random)
{
    return std::student_t_distribution<double>(4)(random) / std::sqrt(2.0);
}

inline HarshLog harshLog(const Kind& kind, const HarshSetup& setup, std::mt19937_64& random)
{
    HarshLog log;
    log.capacity_l = uniform(random, kind.capacityLow_l, kind.capacityHigh_l);
    const double noise = std::exp(uniform(random, std::log(0.02), std::log(0.13)));
    const double weeks = noise * uniform(random, 0.3, 1.2), memory = uniform(random, 0.2, 0.85);
    const double season = uniform(random, 0, 0.1), drift = uniform(random, 0, 0.008);
    const double click_l = log.capacity_l * uniform(random, 0.004, 0.02);
    const double pace = uniform(random, 0, 0.12);   // long days burn less
    double level = std::log(log.capacity_l / std::exp(uniform(random, std::log(kind.rangeLow_km),
                                                              std::log(kind.rangeHigh_km))));
    double week = weeks * normal(random), over_l = click_l * normal(random), day = std::floor(uniform(random, 15000, 15365));
    for (int i = 0; i < setup.tanks; ++i) {
        HarshTank tank;
        level += drift * normal(random);
        week = memory * week + weeks * std::sqrt(1 - memory * memory) * normal(random);
        const double haste = normal(random);
        const double days = std::max(0.0, std::round(8 * std::exp(-0.7 * haste)));
        double rate = std::exp(level + week + noise * heavy(random) - pace * haste
                               + season * std::cos(2 * std::numbers::pi * (day - 15) / 365.25));
        if (setup.changeAt >= 0 && i >= setup.changeAt) {
            tank.sinceChange = i - setup.changeAt;
            rate *= setup.changeBy;
        }
        const double burnt_l = log.capacity_l * (uniform(random) < 0.1 ? uniform(random, 0.15, 0.5)
                                                                       : uniform(random, 0.6, 0.95));
        const double next_l = click_l * normal(random);
        double litres = std::max(burnt_l + next_l - over_l, 0.2 * burnt_l);
        over_l = next_l;
        double km = burnt_l / rate;
        tank.truth_km = km;
        Interval& s = tank.stretch;
        s.begin = Instant(std::chrono::days(std::lround(day)));
        s.end = Instant(std::chrono::days(std::lround(day + days)));
        day += days;
        if (i == setup.slipAt || uniform(random) < setup.slipShare) {
            tank.slip = true;
            if (i == setup.slipAt || uniform(random) < 0.5)
                km += uniform(random, 0.4, 1.2) * log.capacity_l / rate;   // a fill forgotten
            else
                litres *= uniform(random) < 0.5 ? 1 / kLitresPerUsGallon : uniform(random, 1.3, 1.8);
        }
        s.burnt.mean = Volume::fromLitres(litres);
        s.distance = Distance::fromKm(km);
        s.firstFill = std::size_t(i);
        s.lastFill = std::size_t(i + 1);
        log.tanks.push_back(tank);
    }
    return log;
}

} // namespace undermark::test
