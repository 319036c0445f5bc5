// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a car writes by itself: trips, one a mode and drive, counted by its sources, and the
// level at the end of a drive, one a tank that is followed; through a journal
// (drive_journal.h) that a kill does not harm.
//
// Guarantees (each has a test in tests/app/car/drive_keeper_test.cpp):
//  * a drive is in the logbook 10 s after it has fallen silent at a halt, or at end();
//  * killed at any instant: no trip twice, none missing, at most 10 s of the way lost;
//  * a trip is never older than what the log has already, whatever the clock says; a level of
//    which that cannot be said is not kept;
//  * fuel that went in is never counted twice: after it no level is kept before a fill is logged.
#pragma once

#include "app/car/car.h"
#include "app/car/drive_journal.h"
#include "app/car/live_level.h"
#include "engine/tracking/speed_mode.h"

namespace undermark {

// Of the vehicle's own tank and further ones that are heard; none while the own one's is not known,
// or has risen and may have been filled.
std::vector<FollowedTank> levelsToKeep(const LiveLevel& level);

class DriveKeeper {
public:
    // What an earlier program left is in the logbook after. `car` outlives it. Errors: as
    // DriveJournal::open, and as Car::record.
    static Result<DriveKeeper> start(Car& car);

    // `mode`: as the driver said; empty: as the speed says, which takes half a minute that then
    // is that mode's, too; the car's first where no speed is heard. Errors of
    // this and the next: as DriveJournal::note and Car::record; whether a trip was recorded.
    Result<bool> take(const Sample& sample, const std::string& mode);
    // Nothing may have come: is the drive over?
    Result<bool> look(Seconds now);
    // The program ends: what was driven is recorded.
    Result<bool> end();
    // Fuel goes in: the same, and the levels wait for the fill.
    Result<bool> fuelWentIn();
    // What the tanks hold now; kept with the drive that is under way.
    void tell(std::vector<FollowedTank> levels) { m_levels = std::move(levels); }
    // UUID of the car whose drives these are.
    const std::string& car() const { return m_driven; }

private:
    DriveKeeper(Car& car, DriveJournal journal) : m_car(&car), m_journal(std::move(journal)) {}
    Result<bool> record(JournalDrive drive);
    Result<void> note(Seconds now);
    std::string modeOf(const Sample& sample, const std::string& said);
    bool fillIsMissing();

    Car* m_car;
    DriveJournal m_journal;
    DrivenWays m_ways;
    SpeedMode m_speedMode;
    std::string m_driven;             // the car's UUID
    std::vector<std::string> m_modes; // its
    std::string m_id;                 // of the drive; empty: none is under way
    std::optional<Seconds> m_notedAt;
    std::vector<FollowedTank> m_levels;
    std::optional<Instant> m_fuelAt;  // went in, and no fill of it has been seen in the log
};

} // namespace undermark
