// SPDX-License-Identifier: GPL-3.0-or-later
//
// Cars for the tests of both programs: real ones, over a logbook in a folder of its own that
// goes with them.
#pragma once

#include "app/car/car.h"

#include <memory>

namespace undermark::test {

// An empty folder that is removed with everything in it.
struct TestFolder {
    TestFolder();
    ~TestFolder();
    TestFolder(const TestFolder&) = delete;
    TestFolder& operator=(const TestFolder&) = delete;
    std::filesystem::path path;
};

// 2026-09-01 at noon, a day after the demo car's last trip.
Instant testTime();

// A car over a new demo logbook (app/car/demo_logbook.h), demo.sqlite in `folder`.
Car demoCar(const std::filesystem::path& folder, const Clock& clock = testTime);
// The same logbook once more, at its first car, as another start opens it.
Car reopenedCar(const std::filesystem::path& folder, OpenMode mode = OpenMode::readWrite);
// A car whose logbook in `folder` does not exist yet.
Car emptyCar(const std::filesystem::path& folder, const Clock& clock = testTime);

// A folder, and a time that stands still until it is moved.
struct Bench {
    TestFolder ownFolder;
    std::shared_ptr<Instant> wallClock = std::make_shared<Instant>(testTime());
    Clock clock() const;
    void pass(std::chrono::seconds time) { *wallClock += time; }
};

struct DemoCar : Bench, Car {
    DemoCar() : Car(demoCar(ownFolder.path, clock())) {}
};

struct EmptyCar : Bench, Car {
    EmptyCar() : Car(emptyCar(ownFolder.path, clock())) {}
};

// So many km in one go after whatever was driven last.
void drive(Car& car, double km, const std::string& mode = kOpenRoad);
// The latest fill of the log.
Fill lastFill(Car& car);

// A further tank for it, 30 L, chosen by a tap; `used`: filled to the first click at the halt of
// the last fill.
ExtraTank auxTank();
void addAuxTank(Car& car, bool used);

// The demo car in a state that the screen must be able to show:
//  "calm";
//  "low": driven until the zero mark may be passed;
//  "warned": two fills wait for a ruling;
//  "far": another car, of a long name and a large tank;
//  "tanks": two tanks, both in use;
//  "workshop": one of thirty cars, of which two were calibrated and one was handed over;
//  "unknown": the logbook cannot be opened.
Car carInState(const std::string& state, const std::filesystem::path& folder);

} // namespace undermark::test
