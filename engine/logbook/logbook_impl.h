// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a Logbook holds. Only for the files of engine/logbook.
#pragma once

#include "engine/logbook/database.h"
#include "engine/logbook/logbook.h"

struct undermark::Logbook::Impl {
    SQLite::Database database;
    std::filesystem::path file;
};
