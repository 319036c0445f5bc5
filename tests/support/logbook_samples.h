// SPDX-License-Identifier: GPL-3.0-or-later
//
// Invented records for the logbook's tests: of each kind one with every field
// filled and one with as little as is allowed.
#pragma once

#include "engine/logbook/logbook.h"

#include <algorithm>

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

// What schema 2 added. They name the tank of fullTank().
inline const char* const kWingTank = "wing tank";

inline ExtraTank fullTank()
{
    ExtraTank t;
    t.name = kWingTank;
    t.capacity = Volume::fromLitres(42.5);
    t.feed = TankFeed::pumpedOver;
    t.transfer = FlowRate::fromLitresPerHour(240);
    t.leftBehind = litres(0.9, 0.2);
    t.unusable = litres(0.4, 0.1);
    t.zeroMark = Volume::fromLitres(2);
    t.sender = {CircuitKind::counts, "counts", 5.0, 470.0, Signal::of(1)};
    return t;
}

inline ExtraTank leastTank(const std::string& name = "jerrycan rack")
{
    ExtraTank t;
    t.name = name;
    t.capacity = Volume::fromLitres(20);
    return t;
}

inline Calibration shapedCalibration()
{
    Calibration c;
    c.time = at(1'700'700'000);
    c.zeroMark = Volume::fromLitres(4);
    c.tank = kWingTank;
    c.lobes = LobeVolumes{Volume::fromLitres(35), Volume::fromLitres(15)};
    c.shape = StatedShape{{TankForm::ellipse, Distance::fromMetres(0.5), Distance::fromMetres(0.25),
                           Distance::fromMetres(0.75), Distance::fromMetres(0.125), -3.5},
                          Signal::of(0.5), Signal::of(4.5)};
    c.note = "by the drawing";
    return c;
}

inline VerificationRecord fullVerification()
{
    VerificationRecord v;
    v.time = at(1'700'800'000);
    v.measuredSd = Volume::fromLitres(0.1);
    v.confidence = Probability::of(0.99);
    v.passed = true;
    v.tank = kWingTank;
    v.note = "taken out at the feed line";
    for (int i = 0; i < 3; ++i)
        v.levels.push_back({{Volume::fromLitres(30.0 - 10 * i), Signal::of(3.0 - i), Signal::of(0.5),
                             Signal::of(0.01), 2},
                            litres(29.5 - 10 * i, 0.7),
                            i != 1});
    return v;
}

inline LiveSource fullSource()
{
    return {"can:can0,dbc=car.dbc", "FuelLevel", "VERSION \"\"\nBO_ 1 A: 8 X\n", kWingTank};
}

inline OwnPump fullPump()
{
    return {"Farm at the bend", 61.25, -3.125, "Mo-Fr 08:00-17:00", FuelKind::diesel, "ring first", 1.75};
}

inline Photo fullPhoto()
{
    Photo p;
    p.time = at(1'700'900'000);
    p.sha256 = std::string(60, 'a') + "09ef";
    p.format = PhotoFormat::png;
    p.step = PhotoStep::base;
    p.added = Volume::fromLitres(5);
    p.tank = kWingTank;
    p.note = "the meter";
    return p;
}

inline HandOverRecord fullHandOver()
{
    return {at(1'701'000'000), "to the driver, who was shown the meter"};
}

inline Fill fillOfTank()
{
    Fill f = fullFill();
    f.currency = "NOK";
    f.tank = kWingTank;
    return f;
}

inline Trip writtenTrip(const std::string& journalId = "2026-11-27/3")
{
    Trip t = leastTrip();
    t.journalId = journalId;
    return t;
}

inline Proof proofOfTank()
{
    Proof p = fullProof();
    p.tank = kWingTank;
    return p;
}

// One of each in the logbook.
inline Result<void> addSchema2(Logbook& book, const EntryId& car)
{
    const auto added = [&](const auto& value) {
        const auto id = book.add(car, value, kNow);
        return id ? Result<void>() : fail(id.error());
    };
    return added(fullTank())
        .and_then([&] { return added(shapedCalibration()); })
        .and_then([&] { return added(fullVerification()); })
        .and_then([&] { return added(fullSource()); })
        .and_then([&] { return added(fullPump()); })
        .and_then([&] { return added(fullPhoto()); })
        .and_then([&] { return added(fullHandOver()); })
        .and_then([&] { return added(fillOfTank()); })
        .and_then([&] { return added(writtenTrip()); })
        .and_then([&] { return added(proofOfTank()); });
}

// Whether all of them are there, in every field, alone.
inline bool holdsSchema2(const Logbook& book, const EntryId& car)
{
    const auto only = [&]<class T>(const T& value) {
        const auto all = book.entries<T>(car);
        return all && std::ranges::count(*all, value, &Entry<T>::value) == 1;
    };
    return only(fullTank()) && only(shapedCalibration()) && only(fullVerification())
           && only(fullSource()) && only(fullPump()) && only(fullPhoto())
           && only(fullHandOver()) && only(fillOfTank())
           && only(writtenTrip()) && only(proofOfTank());
}

// What schema 3 added.
inline LevelRecord fullLevel(Instant time = at(1'700'650'000))
{
    LevelRecord l;
    l.time = time;
    l.signal = Signal::of(1.25);
    l.signal2 = Signal::of(-0.5);
    l.signalSd = Signal::of(0.01);
    l.usable = litres(22.5, 0.4);
    l.added = litres(-0.25, 0.3);
    l.odometer = Distance::fromKm(123789.5);
    l.origin = LevelOrigin::followed;
    l.journalId = "2026-11-27/3/level";
    l.tank = kWingTank;
    l.note = "on the ferry";
    return l;
}

inline LevelRecord leastLevel(Instant time = at(1'700'660'000))
{
    LevelRecord l;
    l.time = time;
    l.signal = Signal::of(2.5);
    return l;
}

inline const Instant kZeroSince = at(1'650'000'000);

inline Calibration zeroedCalibration()
{
    Calibration c = fullCalibration(at(1'700'010'000));
    c.zeroSince = kZeroSince;
    return c;
}

inline ExtraTank zeroedTank()
{
    ExtraTank t = leastTank("re-zeroed tank");
    t.zeroSince = kZeroSince;
    return t;
}

// One of each in the logbook, which has those of schema 2.
inline Result<void> addSchema3(Logbook& book, const EntryId& car)
{
    Vehicle vehicle = fullVehicle();
    vehicle.zeroSince = kZeroSince;
    const auto added = [&](const auto& value) {
        const auto id = book.add(car, value, kNow);
        return id ? Result<void>() : fail(id.error());
    };
    return added(fullLevel())
        .and_then([&] { return added(leastLevel()); })
        .and_then([&] { return added(zeroedCalibration()); })
        .and_then([&] { return added(zeroedTank()); })
        .and_then([&] { return book.supersede(car, vehicle, kNow); });
}

// Whether all of them are there, in every field, alone.
inline bool holdsSchema3(const Logbook& book, const EntryId& car)
{
    const auto only = [&]<class T>(const T& value) {
        const auto all = book.entries<T>(car);
        return all && std::ranges::count(*all, value, &Entry<T>::value) == 1;
    };
    const auto log = book.load(car);
    return log && log->levels.size() == 2 && log->vehicle.value.zeroSince == kZeroSince
           && only(fullLevel()) && only(leastLevel()) && only(zeroedCalibration()) && only(zeroedTank());
}

} // namespace undermark::test
