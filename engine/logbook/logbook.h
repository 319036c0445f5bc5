// SPDX-License-Identifier: GPL-3.0-or-later
//
// The logbook: everything that people recorded about their cars, in one SQLite
// file that only grows.
//
//  * An entry (a vehicle, mode, calibration, fill, trip, proof, further tank,
//    verification, live source, pump, photo, hand-over or kept level) is one or more rows: the
//    first as it was recorded, each correction a new row. Nothing is ever changed or deleted; triggers in the file see to that.
//  * The entry's id is the UUID of its first row and never changes.
//  * `undo` adds a row that withdraws the row in force; the one before it is in
//    force again, or the entry is gone.
//  * In force is, of the rows not withdrawn, the one of the highest revision,
//    then of the newest UTC time, then of the highest UUID. A correction's
//    revision is one above all that its author saw, so it always beats those,
//    whatever the clocks said; only corrections made on two devices that had not
//    met yet are settled by time. The rule looks at nothing but the set of rows,
//    so merging logbooks is the union of their rows, in any order.
//  * One action is one IMMEDIATE transaction, synced before it is acknowledged:
//    a program killed or unplugged at any instant loses nothing acknowledged.
//  * Impossible values are refused (badInput, the field is named) before SQL;
//    the CHECKs in the file are the second wall. Implausible ones are stored.
//  * A file that is not a sound logbook is refused and left as it is, to the byte.
//
// Not for use by two threads at once; two programs on one file are fine.
#pragma once

#include "engine/base/error.h"
#include "engine/base/records.h"
#include "engine/logbook/log_page.h"

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace undermark {

enum class OpenMode {
    readOnly,         // never changes the file; its folder may be read-only too
    readWrite,        // the file must exist
    createIfMissing,  // also makes the folders above it; the file is 0600
};

inline constexpr std::chrono::milliseconds kBusyTimeout{5000};

// What a merge brought, in rows of the ledger (recordings, corrections, withdrawals).
struct MergeReport {
    std::int64_t added = 0;
    std::int64_t known = 0;      // were there already
    // Vehicles in force that share their name since: two devices made them apart.
    std::vector<std::string> sameName;
};

// T below is one of Mode, Calibration, Fill, Trip, Proof, ExtraTank,
// VerificationRecord, LiveSource, OwnPump, Photo, HandOverRecord, LevelRecord; where it says so, also Vehicle. Every call may return busy (another program held the file for longer
// than the timeout), fileAccess or damaged; only further errors are listed.
class Logbook {
public:
    // Errors: fileAccess (missing, no permission), damaged (not a logbook, or a
    // broken one; a broken one is also copied to FILE.damaged-N, unless opened
    // readOnly or the folder cannot be written), newerSchema.
    // A newer file opens readOnly where that program said that this one can read it.
    static Result<Logbook> open(const std::filesystem::path& file, OpenMode mode,
                                std::chrono::milliseconds busyTimeout = kBusyTimeout);
    Logbook(Logbook&&) noexcept;
    Logbook& operator=(Logbook&&) noexcept;
    ~Logbook();

    // A new vehicle with the four standard modes. badInput if the name is taken.
    Result<EntryId> addVehicle(const Vehicle& vehicle, Instant now);
    Result<std::vector<Entry<Vehicle>>> vehicles() const;

    // One new entry, or all of them or none. notFound: no such vehicle, or the
    // vehicle lacks the mode or tank that is named; badInput: the name of a mode or
    // tank is taken, or what the car's journal says is kept already.
    template <class T>
    Result<EntryId> add(const EntryId& vehicle, const T& value, Instant now);
    template <class T>
    Result<std::vector<EntryId>> addAll(const EntryId& vehicle, std::span<const T> values,
                                        Instant now);

    // The entries in force; order as in VehicleLog. notFound: no such vehicle.
    template <class T>
    Result<std::vector<Entry<T>>> entries(const EntryId& vehicle) const;
    // All of them, as of one instant. Cost: about 1 us per fill or trip.
    Result<VehicleLog> load(const EntryId& vehicle) const;

    // Replaces an entry (T also Vehicle); also brings back one that was undone.
    // notFound: no entry of that kind; badInput: a mode or tank cannot be renamed,
    // because entries name it.
    template <class T>
    Result<void> supersede(const EntryId& id, const T& value, Instant now);

    // Takes the last step on an entry back (see above). badInput if nothing of it
    // is left, or it is a mode or tank that entries name.
    Result<void> undo(const EntryId& id, Instant now);
    // The same of many entries: of all of them, or of none.
    Result<void> undoAll(std::span<const EntryId> ids, Instant now);

    // Every row of an entry, the first one first (T also Vehicle).
    template <class T>
    Result<std::vector<Version<T>>> versions(const EntryId& id) const;

    // The log as a list, newest first (log_page.h), `kind` absent: all kinds. notFound: no
    // such vehicle; fileAccess also where the file is not in its place any more.
    // Cost: of a page, that of its rows and of those skipped, whatever the log's length;
    // of a count or a row, about 1 us per entry that is counted.
    Result<LogPage> logPage(const EntryId& vehicle, const LogPageWish& wish) const;
    Result<LogCount> logCount(const EntryId& vehicle, std::optional<LogKind> kind) const;
    // How many rows are listed before this entry; where it is gone, before its place.
    Result<std::int64_t> logRow(const EntryId& vehicle, std::optional<LogKind> kind,
                                const EntryId& entry, const LogPlace& place) const;

    // Another value than last time means that another program wrote since; this
    // object's own writes do not count. Cheap enough to ask every second.
    Result<std::int64_t> dataVersion() const;
    // Whether anybody at all wrote: this object's own writes count, too.
    Result<FileState> state() const;

    // The schema of a newer Undermark that wrote this file, which then is open for reading
    // only; nothing for a file of this one's schema or an older.
    Result<std::optional<std::int64_t>> newerSchema() const;

    // The whole file read and verified, references between rows too; damaged with what
    // was found.
    Result<void> checkIntegrity() const;

    // Takes in every row of another logbook or bundle that is not here yet, in one
    // transaction. The logbook is then the union of both: merging is commutative,
    // associative and idempotent in what is in force. The other file is only read.
    // Errors as Logbook::open of the other file; badInput where one of its rows
    // could not have been written by any Undermark, or it is larger than 256 MiB.
    Result<MergeReport> merge(const std::filesystem::path& other);

    // The whole logbook as one new file, 0600, by SQLite's online backup: others may
    // go on writing meanwhile. fileAccess where the file exists already or cannot be
    // written; nothing is left of it then.
    Result<void> copyTo(const std::filesystem::path& file) const;

    const std::filesystem::path& file() const;

private:
    struct Impl;
    explicit Logbook(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> m_impl;
};

} // namespace undermark
