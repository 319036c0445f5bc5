// SPDX-License-Identifier: GPL-3.0-or-later
//
// The columns of a fill that the file, tables and answers state in different ways. Only for
// record_tables.cpp.
#pragma once

#include "engine/base/records.h"
#include "engine/logbook/column.h"

#include <vector>

namespace undermark::logbook {

// How far it was filled: two yes-or-no columns, the second of which may be missing.
std::vector<CsvField<Fill>> extentInTables();

// What the whole fill cost, where the price of a litre is not stated. Read, never written.
CsvField<Fill> totalPrice(const ColumnRange& range);

// The user's ruling: a word in the file and in answers, yes or no in tables.
Column<Fill> ruling();

} // namespace undermark::logbook
