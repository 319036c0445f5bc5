// SPDX-License-Identifier: GPL-3.0-or-later
//
// The owner of a vehicle of the promise campaign: drives it, fills it, and keeps the log
// through Car as a program would, honestly or with what people forget and mistype.
#pragma once

#include "app/car/car.h"
#include "tests/accuracy/promise/driving.h"

#include <memory>

namespace undermark::test {

// From a moment on with nobody filling up: the truth that promises are held against.
struct Run {
    double toZeroKm = 0.0, toDryKm = 0.0;
    double partKm = 0.0;              // where the level is asked for on the way
    Instant partTime{};
    double readAtRest = 0.0, readMoving = 0.0;   // there
};

class Owner {
public:
    // Sets the car up in a new logbook in `folder`, calibrated with so many points.
    Owner(Kind kind, int points, const std::filesystem::path& folder, std::uint64_t seed);

    // Drives until the tank is filled and the fill is in the log, full and truthful.
    void toNextFullFill();
    // The same with whatever happens on the way: partial, forgotten, mistyped.
    void toNextFill();

    // Another future each time it is asked; nothing of it happens. `part`: of the litres
    // above zero, those left where the level is asked for.
    Run ahead(double part);

    Car& car() { return m_car; }
    const Machine& machine() const { return m_machine; }
    double odometerKm() const { return m_odometerKm; }
    bool isHonest() const { return m_isHonest; }
    bool logsTrips() const { return m_logsTrips; }
    bool notesReadings() const { return m_notesReadings; }
    bool isSettled() const { return m_tanksSinceChange > 4; }
    int fills() const { return m_fills; }
    // For good, as a trailer that stays on.
    void hitch(double factor);
    void setTime(Instant time) { *m_clock = time; }

private:
    struct Stretch {
        double km = 0.0;
        std::map<std::string, double> byMode;
    };
    void changeOfLife();
    void driveTo(double litres);
    void fill(bool truthful);
    void logTrips();
    void record(double pouredL, bool full, bool truthful, std::optional<double> reading);

    Random m_random;
    Machine m_machine;
    Driving m_driving;
    std::shared_ptr<Instant> m_clock;
    Car m_car;
    bool m_isHonest, m_logsTrips, m_notesReadings;
    double m_partialShare, m_meter;       // the usual pump's error
    double m_litres, m_odometerKm;
    int m_fills = 0, m_tanksSinceChange = 99, m_boxTanks = 0;
    double m_box = 1.0;
    Stretch m_stretch;
};

} // namespace undermark::test
