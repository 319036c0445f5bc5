// SPDX-License-Identifier: GPL-3.0-or-later
//
// The log as a list, in pages: fills, trips, proofs, kept levels and the latest calibration that
// are in force, the newest first. Entries of the same second are listed by kind,
// then in order of recording.
#pragma once

#include "engine/logbook/entry.h"

#include <variant>

namespace undermark {

enum class LogKind { fill, trip, proof, calibration, level };

// What the list is sorted by.
struct LogPlace {
    Instant time{};
    LogKind kind = LogKind::fill;
    std::int64_t order = 0;   // of recording, in this file
    friend bool operator==(const LogPlace&, const LogPlace&) = default;
};

struct LogRow {
    EntryId id;
    LogPlace place;
    std::variant<Fill, Trip, Proof, Calibration, LevelRecord> value;
};

// Which rows are wanted: the next `rows` from a row that is known already. A page
// is found by that row's place, so that what is written meanwhile shifts nothing.
struct LogPageWish {
    std::optional<LogKind> kind;    // absent: all
    std::optional<LogPlace> from;   // not itself listed; absent: from the list's end
    bool newer = false;             // towards the newer rows, else towards the older ones
    std::int64_t skip = 0;
    std::int64_t rows = 0;
};

struct LogPage {
    std::vector<LogRow> rows;   // newest first, whichever way they were reached
    FileState state;
};

struct LogCount {
    std::int64_t rows = 0;
    FileState state;
};

} // namespace undermark
