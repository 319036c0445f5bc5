// SPDX-License-Identifier: GPL-3.0-or-later
//
// fill_logbook FILE FILLS TRIPS: a logbook of an invented car that is as long as
// asked for, for benchmarks.
#include "engine/logbook/logbook.h"

#include <cstdio>
#include <cstdlib>
#include <random>

using namespace undermark;

int main(int argc, char** argv)
{
    if (argc != 4) {
        std::fprintf(stderr, "usage: fill_logbook FILE FILLS TRIPS\n");
        return 2;
    }
    const int fillCount = std::atoi(argv[2]);
    const int tripCount = std::atoi(argv[3]);
    const Instant start = std::chrono::sys_days{std::chrono::year{2006} / 1 / 1};
    std::mt19937_64 random(7);
    std::normal_distribution<double> spread(1.0, 0.08);
    auto logbook = Logbook::open(argv[1], OpenMode::createIfMissing);
    if (!logbook)
        return std::fprintf(stderr, "%s\n", describe(logbook.error()).c_str()), 1;
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
    const auto second = logbook->addAll<Trip>(*id, trips, start);
    if (!first || !second)
        return std::fprintf(stderr, "could not write the entries\n"), 1;
    return 0;
}
