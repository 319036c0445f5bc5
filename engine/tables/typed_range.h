// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/logbook/column.h"
#include "engine/tables/csv_reader.h"

namespace undermark {

// What a person may type for a number of this column, in the unit that the column's name
// states. Mostly not bounded above: the logbook says so itself.
NumberRange typedRange(const logbook::CsvShape& shape);

} // namespace undermark
