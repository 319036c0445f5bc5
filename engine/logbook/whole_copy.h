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

// Removes a logbook's file with everything that SQLite puts beside it.
void removeLogbook(const std::filesystem::path& file);

} // namespace undermark::logbook
