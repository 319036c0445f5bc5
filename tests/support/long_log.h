// SPDX-License-Identifier: GPL-3.0-or-later
//
// Twenty years of an invented car, for measurements.
#pragma once

#include "engine/logbook/logbook.h"

#include <algorithm>
#include <random>

namespace undermark::test {

// A new logbook of one vehicle with so many fills, and trips spread between them.
inline Result<void> writeLongLog(const std::filesystem::path& file, int fillCount, int tripCount)
{
    const Instant start = std::chrono::sys_days{std::chrono::year{2006} / 1 / 1};
    std::mt19937_64 random(7);
    std::normal_distribution<double> spread(1.0, 0.08);
    auto logbook = Logbook::open(file, OpenMode::createIfMissing);
    if (!logbook)
        return fail(logbook.error());
    Vehicle car;
    car.name = "Long log";
    car.capacity = Volume::fromLitres(52);
    const auto id = logbook->addVehicle(car, start);
    const std::chrono::hours step(24 * 365 * 20 / std::max(fillCount, 1));
    const int tripsPerFill = std::max(1, tripCount / std::max(fillCount, 1));
    std::vector<Fill> fills;
    std::vector<Trip> trips;
    double odometerKm = 1000;
    for (int i = 0; i < fillCount; ++i) {
        const Instant time = start + step * i;
        const double km = 500 * spread(random);
        odometerKm += km;
        Fill fill;
        fill.time = time;
        fill.volume = Volume::fromLitres(0.075 * km * spread(random));
        fill.odometer = Distance::fromKm(odometerKm);
        fills.push_back(fill);
        for (int k = 0; k < tripsPerFill && i > 0; ++k) {
            Trip trip;
            trip.time = time - step + step * (k + 1) / (tripsPerFill + 1);
            trip.distance = Distance::fromKm(0.95 * km / tripsPerFill);
            trip.mode = k % 3 == 0 ? kTown : k % 3 == 1 ? kOpenRoad : kMotorway;
            trips.push_back(trip);
        }
    }
    const auto first = logbook->addAll<Fill>(*id, fills, start);
    if (!first)
        return fail(first.error());
    const auto second = logbook->addAll<Trip>(*id, trips, start);
    return second ? Result<void>{} : fail(second.error());
}

} // namespace undermark::test
