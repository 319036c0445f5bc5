// SPDX-License-Identifier: GPL-3.0-or-later
//
// The file's schema, version 3: the ledger, and the tables of record_tables.h. Times are
// seconds UTC, quantities are in the unit that their column names. Only for the files of
// engine/logbook.
#pragma once

#include <cstdint>
#include <string>

namespace undermark::logbook {

inline constexpr std::uint32_t kApplicationId = 0x554D524B;   // "UMRK"
inline constexpr std::uint32_t kSchemaVersion = 3;            // user_version

// Makes that schema in an empty database, identification included; to be run
// inside a transaction. How an older schema becomes this one: migrate.h.
std::string createSchemaSql();

// Makes the indexes that are not there yet; a logbook made before them lacks them.
const char* indexSql();

} // namespace undermark::logbook
