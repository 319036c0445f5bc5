// SPDX-License-Identifier: GPL-3.0-or-later
//
// A database as one new file. Only for the files of engine/logbook.
#pragma once

#include "engine/base/error.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>

namespace undermark::logbook {

// As Logbook::copyTo.
Result<void> copyWhole(SQLite::Database& database, const std::filesystem::path& file);

// A copy of the logbook in `other`, which is only read, once it is found sound. Errors: those
// of Logbook::open, checkIntegrity and copyTo.
Result<void> copySound(const std::filesystem::path& other, const std::filesystem::path& copy);

// Removes a logbook's file with everything that SQLite puts beside it.
void removeLogbook(const std::filesystem::path& file);

} // namespace undermark::logbook
