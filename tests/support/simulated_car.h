// SPDX-License-Identifier: GPL-3.0-or-later
//
// Cars of known truth, to learn from and to be measured on: kinds of driving
// that come in runs, seasons, cold starts, a slow drift, the scatter of the
// click, and slips of the person who keeps the log. Deterministic by seed.
#pragma once

#include "engine/base/records.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <vector>

namespace undermark::test {

struct CarTruth {
    double town_lPerKm = 0.10;
    double motorway_lPerKm = 0.07;
    double coldStart_l = 0.10;
    double season = 0.05;          // amplitude, most in mid-January
    double drift = 0.002;          // random walk of log rate per tank
    double noise = 0.05;           // of log rate, per tank
    double tripNoise_l = 0.03;     // per square root of km
    double click_l = 0.5;          // sd of the level at "full"
    double tank_l = 50;
    double stickiness = 0.6;       // of the kind of driving, tank to tank
    double motorwayLean = 0.5;     // above 0: mostly motorway
    double paceTells = 2;          // log km per day gained from all town to all motorway
    double forgotten = 0;          // share of tanks with a slip of each kind
    double gallons = 0;
    double miles = 0;
    double tripsLogged = 0;        // share of the distance covered by trips
    double topUps = 0;             // share of tanks filled up again after a tenth
};

struct SimulatedLog {
    std::vector<Fill> fills;       // the first one only begins; each has an odometer
    std::vector<Trip> trips;
    std::vector<bool> slip;        // by fill
    std::vector<double> tenth_km;  // by fill: what the first tenth of the tank after it truly gave
    double tenth_l = 0;            // litres of that tenth
};

inline double normal(std::mt19937_64& random) { return std::normal_distribution<double>()(random); }

inline double uniform(std::mt19937_64& random, double low = 0, double high = 1)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}

// Splits a stretch into trips of both kinds until the logged share is covered.
inline void logTrips(std::vector<Trip>& trips, Instant begin, Instant end, double town_km,
              double motorway_km, double starts, double share)
{
    if (share <= 0)
        return;
    const Instant middle = begin + (end - begin) / 2;
    if (town_km > 0)
        trips.push_back({middle, Distance::fromKm(town_km * share), kTown, std::nullopt,
                         int(std::lround(starts * share))});
    if (motorway_km > 0)
        trips.push_back({middle, Distance::fromKm(motorway_km * share), kMotorway, std::nullopt,
                         std::nullopt});
}

// A car drawn at random, as the accuracy program uses them.
inline CarTruth randomCar(std::mt19937_64& random)
{
    CarTruth car;
    car.town_lPerKm = uniform(random, 0.07, 0.14);
    car.motorway_lPerKm = car.town_lPerKm * uniform(random, 0.6, 0.85);
    car.coldStart_l = uniform(random, 0, 0.15);
    car.season = uniform(random, 0, 0.10);
    car.drift = uniform(random, 0, 0.004);
    car.noise = uniform(random, 0.02, 0.07);
    car.click_l = uniform(random, 0.3, 0.9);
    car.tank_l = uniform(random, 40, 70);
    car.stickiness = uniform(random, 0.3, 0.85);
    car.motorwayLean = uniform(random, -0.5, 1);
    car.forgotten = uniform(random, 0, 0.008);
    car.gallons = uniform(random, 0, 0.004);
    car.miles = uniform(random, 0, 0.004);
    car.paceTells = uniform(random, 0, 3);
    car.tripNoise_l = uniform(random, 0.015, 0.05);
    return car;
}

// The next few kilometres of a tank: trips one after the other, each wholly of one kind and
// with luck of its own (traffic, wind, hills), the last one cut. Mean lengths and the spread
// of the luck: common practice, no source.
struct FewTrips {
    double motorway = 0;     // share of the distance
    double luck = 0;         // of the log of the rate, mean over the distance
};

inline FewTrips fewTrips(std::mt19937_64& random, double motorway, double km)
{
    constexpr double kTown_km = 8, kMotorway_km = 30, kLuck = 0.20;
    const double often = motorway / kMotorway_km, oftenTown = (1 - motorway) / kTown_km;
    FewTrips trips;
    for (double driven_km = 0; driven_km < km;) {
        const bool fast = uniform(random) * (often + oftenTown) < often;
        const double trip_km = std::min((fast ? kMotorway_km : kTown_km)
                                            * std::exponential_distribution<double>()(random),
                                        km - driven_km);
        driven_km += trip_km;
        trips.motorway += fast ? trip_km / km : 0;
        trips.luck += kLuck * normal(random) * trip_km / km;
    }
    return trips;
}

// `tanks` full-to-full stretches of that car.
inline SimulatedLog simulate(const CarTruth& car, std::size_t tanks, std::mt19937_64& random)
{
    constexpr double kDay = 86400;
    SimulatedLog log;
    double time_s = std::floor(uniform(random, 15000, 15365)) * kDay;
    double odometer_km = 1000;
    double level = 0;
    double style = normal(random);
    double over_l = car.click_l * normal(random);   // above the nominal full
    const auto now = [&] { return Instant(std::chrono::seconds(std::llround(time_s))); };
    Fill first;
    first.time = now();
    first.volume = Volume::fromLitres(car.tank_l);
    first.odometer = Distance::fromKm(odometer_km);
    log.fills.push_back(first);
    log.slip.push_back(false);
    log.tenth_l = car.tank_l / 10;
    // Trips are drawn apart, so that a log without short stretches does not depend on them.
    auto road = std::mt19937_64(std::mt19937_64(random)());
    for (std::size_t i = 0; i < tanks; ++i) {
        const double s = car.stickiness;
        style = s * style + std::sqrt(1 - s * s) * normal(random);
        level += car.drift * normal(random);
        double motorway = 1 / (1 + std::exp(-(1.5 * style + car.motorwayLean)));
        const double day = time_s / kDay;
        const double season = 1 + car.season * std::cos(2 * std::numbers::pi * (day - 15) / 365.25);
        const double factor = season * std::exp(level + car.noise * normal(random));
        const auto rateOf = [&](double share) {
            return ((1 - share) * car.town_lPerKm + share * car.motorway_lPerKm) * factor;
        };
        const double kmPerDay = 20 * std::exp(car.paceTells * motorway + 0.4 * normal(random));
        const bool topUp = car.topUps > 0 && uniform(random) < car.topUps;
        const double wanted_l = car.tank_l * (topUp ? uniform(random, 0.06, 0.14)
                                                    : uniform(random, 0.4, 0.95));
        double luck = 0;
        if (topUp) {
            const FewTrips trips = fewTrips(road, motorway, wanted_l / rateOf(motorway));
            motorway = trips.motorway;
            luck = trips.luck;
        }
        const double rate = rateOf(motorway) * std::exp(luck);
        const double starts =
            std::round((1 - motorway) * wanted_l / rate / 10 * uniform(random, 0.5, 1.5));
        const double km = wanted_l / rate;
        // The first tenth of the tank is trips of its own, the rest of the stretch makes the
        // share of the whole; noise of the road before and after it.
        const double starts_l = starts * car.coldStart_l / km;
        const FewTrips opening = fewTrips(road, motorway, car.tank_l / 10 / (rate + starts_l));
        const double perKm = rateOf(opening.motorway) * std::exp(opening.luck) + starts_l;
        const double tenth_km = std::min(car.tank_l / 10 / perKm, km);
        const double early_l = car.tripNoise_l * std::sqrt(tenth_km) * normal(random);
        const double late_l = car.tripNoise_l * std::sqrt(km - tenth_km) * normal(random);
        const double burnt_l = wanted_l + starts * car.coldStart_l + early_l + late_l;
        log.tenth_km.push_back((car.tank_l / 10 - early_l) / perKm);
        const double after_l = car.click_l * normal(random);
        const Instant begin = now();
        time_s += std::round(km / kmPerDay) * kDay;
        odometer_km += km;
        Fill fill;
        fill.time = now();
        fill.volume = Volume::fromLitres(std::max(burnt_l + after_l - over_l, 1.0));
        fill.odometer = Distance::fromKm(odometer_km);
        fill.sinceLast = Distance::fromKm(km);
        over_l = after_l;
        logTrips(log.trips, begin, fill.time + std::chrono::seconds(0), (1 - motorway) * km,
                 motorway * km, starts, car.tripsLogged);
        const double chance = uniform(random);
        const bool forgotten = chance < car.forgotten;
        const bool gallons = !forgotten && chance < car.forgotten + car.gallons;
        const bool miles = !forgotten && !gallons && chance < car.forgotten + car.gallons + car.miles;
        if (forgotten)   // the log shows two tanks' distance and one tank's litres
            fill.sinceLast = Distance::fromKm(km * uniform(random, 1.7, 2.3));
        if (gallons)
            fill.volume = Volume::fromLitres(fill.volume.usGallons());
        if (miles)
            fill.sinceLast = Distance::fromKm(km / kKmPerMile);
        log.slip.push_back(forgotten || gallons || miles);
        if (log.slip.back())
            fill.odometer.reset();
        log.fills.push_back(fill);
    }
    return log;
}

} // namespace undermark::test
