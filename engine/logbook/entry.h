// SPDX-License-Identifier: GPL-3.0-or-later
//
// What comes out of the logbook: entries, their history, all of one vehicle.
#pragma once

#include "engine/base/records.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

// What a Logbook's file holds, seen through that one Logbook: equal as long as
// neither it nor another program writes.
struct FileState {
    std::int64_t byOthers = 0;   // SQLite's data_version
    std::int64_t byThis = 0;     // rows written by this Logbook
    friend bool operator==(const FileState&, const FileState&) = default;
};

struct EntryId {
    std::string uuid;   // version 4, 36 lower-case characters
    friend bool operator==(const EntryId&, const EntryId&) = default;
};

// An entry as it stands now. `recorded` is when the row in force was written.
template <class T>
struct Entry {
    EntryId id;
    Instant recorded{};
    T value;
};

// Without where they stand in the log.
template <class T>
std::vector<T> valuesOf(const std::vector<Entry<T>>& entries)
{
    std::vector<T> values;
    values.reserve(entries.size());
    for (const Entry<T>& entry : entries)
        values.push_back(entry.value);
    return values;
}

// One row of an entry's history.
template <class T>
struct Version {
    std::string uuid;       // of this row
    Instant recorded{};
    T value;
    std::optional<Instant> withdrawn;   // when it was undone, if it was
};

// Everything of one vehicle that is in force. What has a time of its own is
// in its order, then in that of recording.
struct VehicleLog {
    Entry<Vehicle> vehicle;
    std::vector<Entry<Mode>> modes;                  // in order of recording
    std::vector<Entry<Calibration>> calibrations;    // of all tanks, in order of time
    std::optional<Entry<Calibration>> calibration;   // the latest of the vehicle's own tank
    std::vector<Entry<Fill>> fills;
    std::vector<Entry<Trip>> trips;
    std::vector<Entry<Proof>> proofs;
    std::vector<Entry<LevelRecord>> levels;          // of all tanks
    std::vector<Entry<ExtraTank>> tanks;             // in order of recording
    std::vector<Entry<VerificationRecord>> verifications;
    std::vector<Entry<Photo>> photos;
    std::vector<Entry<HandOverRecord>> handOvers;
    std::vector<Entry<LiveSource>> sources;          // in order of recording
    std::vector<Entry<OwnPump>> pumps;               // in order of recording
    FileState state;                                 // of the file, when this was read

    // The latest of a tank; absent: the vehicle's own.
    const Entry<Calibration>* latestCalibration(const std::optional<std::string>& tank) const;
    // The latest of the vehicle's own tank that is of its present calibration; or null.
    const VerificationRecord* latestVerification() const;
};

} // namespace undermark
