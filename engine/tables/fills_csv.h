// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fills from a CSV: `date,litres` and one of `km` (since the fill before) or
// `odometer_km`, optionally `full` (1, the default, or 0 for partial) and
// `price_per_l`, `blend` (e0, e10, diesel, …) and `temperature_c` of the fuel.
#pragma once

#include "engine/base/error.h"
#include "engine/base/records.h"
#include "engine/tables/csv_reader.h"

#include <filesystem>
#include <string_view>
#include <vector>

namespace undermark {

inline const NumberRange kFuelTemperature{-60, 80, Sentence::of("degrees Celsius from -60 to 80")};

struct FillRow {
    Fill fill;
    long row = 0;    // of data, from 1 (the header is not counted)
    long line = 0;   // of the file, from 1
};

struct FillsFile {
    std::vector<FillRow> rows;                  // in the order of the file
    std::vector<std::string> unknownColumns;    // for a warning
};

// Reads the whole file. Errors: fileAccess; badInput with line and column for
// what is malformed or impossible (no number, litres or km not above 0, no such
// day, `full` other than 0 or 1, neither or both of km and odometer_km, no row).
Result<FillsFile> readFillsCsv(const std::filesystem::path& file);

// "2024-05-31", or with a time of day "2024-05-31T17:05" or "...:30", with or
// without "Z"; always UTC. Errors: badInput without a place.
Result<Instant> parseInstant(std::string_view text);

} // namespace undermark
