// SPDX-License-Identifier: GPL-3.0-or-later
//
// Opens the logbook's file, or says why not, without touching what it refuses.
// Only for the files of engine/logbook.
#pragma once

#include "engine/base/error.h"
#include "engine/logbook/logbook.h"
#include "engine/logbook/migrate.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace undermark::logbook {

// Of every damaged logbook: what is wrong, and what to do.
Sentence withWhatToDo(const Sentence& detail);

// What SQLite says, as an Error: busy, damaged, fileAccess or internal.
Error toError(const SQLite::Exception& exception, const std::filesystem::path& file);

// Runs `action`, which returns some Result<T>; what SQLiteCpp throws in it stops
// here and becomes that Result's error.
template <class Action>
auto guarded(const std::filesystem::path& file, Action action) -> decltype(action())
{
    try {
        return action();
    } catch (const SQLite::Exception& exception) {
        return fail(toError(exception, file));
    }
}

// Errors as in Logbook::open. A file of an older schema is brought up to `schema`: the
// file itself, or a copy in memory where it is opened readOnly.
Result<SQLite::Database> openDatabase(const std::filesystem::path& file, OpenMode mode,
                                      std::chrono::milliseconds busyTimeout,
                                      const Schema& schema = releasedSchema());

} // namespace undermark::logbook
