// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fills and trips from somebody else's table: the user says which of its columns is
// which, and in what units; nothing is guessed.
//
//   fills  date,litres; optional odometer_km, trip_meter_km, full (1, 0; empty: 1),
//          to_the_neck, odometer_reset, price_per_l or price_total, signal, blend,
//          temperature_c, displayed_l_per_100km, counted
//   trips  date,km,mode; optional idle_min, starts
//   both   optional vehicle (rows of another one are left out), id
//
// These are the columns of export_csv.h, so what was exported comes back.
#pragma once

#include "engine/base/error.h"
#include "engine/logbook/logbook.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace undermark {

enum class DateOrder { yearFirst, dayFirst, monthFirst };   // 2026-05-31, 31.5.2026, 5/31/2026
enum class RateUnit { litresPer100Km, kmPerLitre, mpgUs, mpgImperial };

struct ImportOptions {
    std::map<std::string, std::string> columns;  // our name -> the file's
    Volume litre = Volume::fromLitres(1);        // what 1 in a column of litres is; price too
    Distance km = Distance::fromKm(1);           // what 1 in a column of kilometres is
    bool fahrenheit = false;
    RateUnit rate = RateUnit::litresPer100Km;    // of displayed_l_per_100km
    DateOrder dates = DateOrder::yearFirst;      // of dates with . / or - between; UTC
    std::string vehicle;                         // whose rows; empty: all rows are meant
};

inline constexpr std::size_t kMostImportedRows = 1'000'000;

template <class T>
struct Imported {
    std::vector<T> rows;                         // in the order of the file
    std::vector<long> lines;                     // of the file, from 1
    std::vector<std::string> ids;                // as the file states them; empty: none
    std::size_t ofOthers = 0;                    // rows of other vehicles, left out
    std::vector<std::string> unknownColumns;     // for a warning
};

// Errors: as every CSV here; badInput for a mapped column that is not one of ours, a
// date that is none, an impossible number, a file without rows or with more than
// kMostImportedRows. Cost: O(file).
Result<Imported<Fill>> readFillsToImport(const std::filesystem::path& file, const ImportOptions& options = {});
Result<Imported<Trip>> readTripsToImport(const std::filesystem::path& file, const ImportOptions& options = {});

// Positions of the rows that are not in the log yet. A row is there if an entry of its
// id is, or one like it: the same instant, litres and kilometres (fills), or instant,
// kilometres and mode (trips), to a millionth. The same fill twice in one file is one
// fill; trips of one day may be alike, so each entry stands for one row of the file.
std::vector<std::size_t> newRows(const Imported<Fill>& file, const std::vector<Entry<Fill>>& known);
std::vector<std::size_t> newRows(const Imported<Trip>& file, const std::vector<Entry<Trip>>& known);

} // namespace undermark
