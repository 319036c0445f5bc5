// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/tables/import_csv.h"

namespace undermark {

// A log of fills to forecast from, which needs to know how far each of them took the car:
// a table as readTable<Fill>() takes it, with the kilometres of every row in one of the
// columns km (since the fill before, above 0) and odometer_km.
// Errors: as readTable(); badInput for neither or both columns, and for a row without.
Result<Imported<Fill>> readFillLog(const std::filesystem::path& file);

} // namespace undermark
