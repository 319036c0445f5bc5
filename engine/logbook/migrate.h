// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a logbook of an older schema becomes one of today's. One small step per
// version, each in a transaction of its own, so that a migration cut short leaves a
// whole logbook of some version and goes on from there. Only for the files of
// engine/logbook, and for their tests, which bring steps of their own. The
// steps released: steps.cpp.
#pragma once

#include "engine/base/error.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <filesystem>
#include <span>
#include <string>

namespace undermark::logbook {

// From schema `from` to from + 1. A released step is never changed again.
struct MigrationStep {
    std::int64_t from;
    const char* sql;
    std::int64_t readableBy;   // the oldest schema whose programs may read the result
};

// A schema, and the way to it from the older ones; `steps` in order of `from`.
struct Schema {
    std::int64_t version;
    std::string create;        // as createSchemaSql()
    std::span<const MigrationStep> steps;
};

// From schema 1 on, in order.
std::span<const MigrationStep> releasedSteps();

// What this program writes.
const Schema& releasedSchema();

// The views and triggers of `schema`, as SQLite keeps their text. A file that holds any
// other was not written by an Undermark: its code would run whenever the logbook is read
// or written. A step that adds one therefore uses the very text of `create`.
bool holdsForeignCode(SQLite::Database& database, const Schema& schema);

// Brings an open database up to `schema`; nothing to do where it is there already.
// A copy of the file as it was is kept first, as FILE.schema-N (0600, with -2, -3 …
// where another content has that name). Two programs may do this at once: a step is
// done by the one that comes first. Errors: damaged where there is no way from its
// version, or the step left a reference without its row; fileAccess where the copy
// cannot be kept. Throws what SQLite throws. Cost: twice that of writing the file.
Result<void> migrate(SQLite::Database& database, const std::filesystem::path& file,
                     const Schema& schema);

// A logbook of an older schema for a program that must not write it: copied into
// memory and brought up there. Cost: the file's size in memory.
Result<SQLite::Database> migratedInMemory(SQLite::Database& database,
                                          const std::filesystem::path& file, const Schema& schema);

} // namespace undermark::logbook
