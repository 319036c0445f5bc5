// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the command line and the touch screen share of import, export and merge, on
// top of the engine's own (engine/tables/export_csv.h, import_csv.h, Logbook::merge).
// Without Qt.
//
// Guarantees (each has a test in tests/app/cli/transfer_test.cpp or
// tests/app/screen/logbook/transfer_view_model_test.cpp):
//  * before anything is taken in, the logbook is backed up beside itself;
//  * a table is taken in whole or not at all; what is there already is left out;
//  * after an error nothing of an export is left, and nothing is ever written over.
#pragma once

#include "engine/logbook/logbook.h"
#include "engine/tables/import_csv.h"

#include <filesystem>
#include <string>
#include <vector>

namespace undermark {

// What an import would add. T is Fill, Trip or LevelRecord.
template <class T>
struct ImportPreview {
    std::vector<T> fresh;              // in the order of the file
    std::size_t duplicates = 0;        // in the log already
    std::size_t ofOthers = 0;          // of other vehicles
    std::vector<Sentence> warnings;    // columns that are not imported
};

// Reads the table against the log of the vehicle, whose name is put into `options`.
// Errors: as readTable and Logbook::entries.
template <class T>
Result<ImportPreview<T>> previewImport(const Logbook& logbook, const Entry<Vehicle>& vehicle,
                                       const std::filesystem::path& file, ImportOptions options);

struct ImportDone {
    std::vector<EntryId> added;
    std::filesystem::path backup; // the logbook as it was; empty where nothing was added
};

// Errors: as backUp and Logbook::addAll; nothing is added then.
template <class T>
Result<ImportDone> takeIn(Logbook& logbook, const EntryId& vehicle, const ImportPreview<T>& preview,
                          Instant now);

struct MergeDone {
    MergeReport report;
    std::filesystem::path backup;      // the logbook as it was
    std::vector<Sentence> warnings;    // vehicles that share a name now, photos left out
};

// Its photos are taken in, too. Errors: as backUp, Logbook::merge and takePhotos; of the first
// two nothing is taken in then.
Result<MergeDone> takeInLogbook(Logbook& logbook, const std::filesystem::path& other, Instant now);

// The whole logbook as one new file, its photos beside it. Errors: as Logbook::copyTo and
// takePhotos.
Result<void> exportBundle(const Logbook& logbook, const std::filesystem::path& file);

// The tables of engine/tables/export_csv.h in a new folder. Errors: as readForExport and
// exportCsv.
Result<void> exportTables(const Logbook& logbook, const std::filesystem::path& folder);

// The tables, and the whole logbook as a bundle, logbook.sqlite, in a new folder
// export-YYYYMMDDTHHMMSSZ in `into`. Its path. Errors as exportTables and exportBundle.
Result<std::filesystem::path> exportEverything(const Logbook& logbook, const std::filesystem::path& into,
                                               Instant now);

} // namespace undermark
