// SPDX-License-Identifier: GPL-3.0-or-later
//
// The drive that is under way, kept beside the logbook until it is in it: a file to which a
// line is added now and then, each the whole drive so far.
//
// Guarantees (each has a test in tests/app/car/drive_keeper_test.cpp):
//  * a program killed at any instant loses what was driven since the last line, no more: a
//    line cut short counts for nothing;
//  * two programs never keep one journal: who comes second is told that it is held.
#pragma once

#include "engine/base/error.h"
#include "engine/base/records.h"
#include "engine/tracking/driven_ways.h"

#include <filesystem>
#include <vector>

namespace undermark {

// What is in a tank, as a tracker has it.
struct FollowedTank {
    std::optional<std::string> tank; // name of an ExtraTank; absent: the vehicle's own
    Estimate<Volume> added;          // litres since drained
    friend bool operator==(const FollowedTank&, const FollowedTank&) = default;
};

struct JournalDrive {
    std::string id;  // the drive's own; a trip's is this and its mode
    std::string car; // UUID
    Instant time{};  // of its newest way
    std::vector<ModeWay> ways;
    std::vector<FollowedTank> levels{}; // at that time
    friend bool operator==(const JournalDrive&, const JournalDrive&) = default;
};

// Its trips, one a mode, named by their journal ids.
std::vector<Trip> tripsOf(const JournalDrive& drive);
// And the levels at its end, one a tank, named likewise.
std::vector<LevelRecord> levelsOf(const JournalDrive& drive);

class DriveJournal {
public:
    // Made (0600) where it is not there. busy: another program holds it; fileAccess.
    static Result<DriveJournal> open(const std::filesystem::path& file);
    DriveJournal(DriveJournal&& other) noexcept;
    DriveJournal& operator=(DriveJournal&& other) noexcept;
    ~DriveJournal();

    // What the newest whole line says; nothing: no drive is under way.
    std::optional<JournalDrive> drive() const;
    // Durable once this returns. fileAccess.
    Result<void> note(const JournalDrive& drive);
    // Its drive is in the logbook. fileAccess.
    Result<void> clear();

private:
    DriveJournal(std::filesystem::path file, int handle) : m_file(std::move(file)), m_handle(handle) {}
    Error problem() const;

    std::filesystem::path m_file;
    int m_handle = -1;
};

} // namespace undermark
