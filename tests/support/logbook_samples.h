// SPDX-License-Identifier: GPL-3.0-or-later
//
// Invented records for the logbook's tests: of each kind one with every field
// filled and one with as little as is allowed.
#pragma once

#include "engine/logbook/logbook.h"

namespace undermark::test {

inline Instant at(long long seconds) { return Instant(std::chrono::seconds(seconds)); }

inline const Instant kNow = at(1'790'000'000);

inline Estimate<Volume> litres(double mean, double sd)
{
    return {Volume::fromLitres(mean), Volume::fromLitres(sd)};
}

inline Vehicle fullVehicle(const std::string& name = "Fjord wagon")
{
    Vehicle v;
    v.name = name;
    v.fuel = FuelKind::diesel;
    v.capacity = Volume::fromLitres(61.3);
    v.leftBehind = litres(1.7, 0.3);
    v.unusable = litres(1.1, 0.2);
    v.zeroMark = Volume::fromLitres(6.05);
    v.lamp = Volume::fromLitres(9);
    v.surgeMargin = {{"special-stage", Volume::fromLitres(2.5)}, {"town", Volume::fromLitres(0)}};
    v.sender = {CircuitKind::resistive, "ohm", 5.0, 220.0, Signal::of(0.01)};
    return v;
}

inline Vehicle leastVehicle(const std::string& name = "Plain van")
{
    Vehicle v;
    v.name = name;
    v.capacity = Volume::fromLitres(40);
    return v;
}

inline Calibration fullCalibration(Instant time = at(1'700'000'000))
{
    Calibration c;
    c.time = time;
    c.zeroMark = Volume::fromLitres(5);
    for (int i = 0; i < 12; ++i)
        c.points.push_back({Volume::fromLitres(5.1 * i), Signal::of(0.5 + 0.3 * i),
                            i % 2 ? std::optional(Signal::of(-0.1 * i)) : std::nullopt,
                            i % 3 ? std::optional(Signal::of(0.01)) : std::nullopt, 1 + i});
    return c;
}

inline Fill fullFill(Instant time = at(1'700'100'000))
{
    Fill f;
    f.time = time;
    f.volume = Volume::fromLitres(41.27);
    f.extent = FillExtent::neck;
    f.odometer = Distance::fromKm(123456.7);
    f.sinceLast = Distance::fromKm(512.3);
    f.odometerReset = true;
    f.pricePerLitre = 1.839;
    f.signalBefore = Signal::of(-0.25);
    f.blend = "e10";
    f.temperature = Temperature::fromCelsius(-12.5);
    f.displayed = Consumption::fromLitresPer100Km(6.9);
    f.counted = false;
    return f;
}

inline Fill leastFill(Instant time = at(1'700'200'000), double volume = 0.1 + 0.2)
{
    Fill f;
    f.time = time;
    f.volume = Volume::fromLitres(volume);
    return f;
}

inline Trip fullTrip(Instant time = at(1'700'300'000))
{
    Trip t;
    t.time = time;
    t.distance = Distance::fromKm(0);
    t.mode = kSpecialStage;
    t.idle = std::chrono::duration<double, std::ratio<60>>(7.3);
    t.starts = 2;
    return t;
}

inline Trip leastTrip(Instant time = at(1'700'400'000))
{
    Trip t;
    t.time = time;
    t.distance = Distance::fromKm(1.0 / 3.0);
    t.mode = kTown;
    return t;
}

inline Proof fullProof(Instant time = at(1'700'500'000))
{
    Proof p;
    p.time = time;
    p.kind = ProofKind::pastZero;
    p.volume = litres(5, 0.05);
    p.leftBehind = litres(1.5, 0.2);
    p.signal = Signal::of(0.87);
    p.distance = Estimate<Distance>{Distance::fromKm(31), Distance::fromKm(1.5)};
    p.mode = kMotorway;
    return p;
}

inline Proof leastProof(Instant time = at(1'700'600'000))
{
    Proof p;
    p.time = time;
    p.kind = ProofKind::base;
    p.volume = litres(5, 0);
    return p;
}

} // namespace undermark::test
