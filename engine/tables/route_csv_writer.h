// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/planning/route.h"

#include <filesystem>

namespace undermark {

// A new file as readRouteCsv takes it, with every column; only what the route says is
// in the cells, and reading gives the same route back (opening hours to the minute).
// Errors: as checkRoute; fileAccess, also where the file is there already: nothing is
// ever written over.
Result<void> writeRouteCsv(const Route& route, const std::filesystem::path& file);

} // namespace undermark
