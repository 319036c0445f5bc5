// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fills, trips and levels from somebody else's table: the user says which of its columns is
// which, and in what units; nothing is guessed.
//
// The columns are those of export_csv.h, so what was exported comes back, and price_total
// of a fill. Needed are date,litres of fills, date,km,mode of trips, and date with signal, usable_l or
// total_l of levels; full is 1 where it is empty. Rows of another vehicle are left out.
#pragma once

#include "engine/base/error.h"
#include "engine/logbook/logbook.h"
#include "engine/tables/csv_reader.h"
#include "engine/tables/date_text.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace undermark {

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

inline const NumberRange kFuelTemperature{-60, 80, Sentence::of("degrees Celsius from -60 to 80")};
inline constexpr std::size_t kMostImportedRows = 1'000'000;

// What the rows of a table are, by the names in its header.
enum class TableKind { fills, trips, levels, proofs, points, unknown };

// Points have signal and poured_l or total_l (and not origin), proofs date and kind, levels date and signal or
// usable_l; fills and trips have what
// they need. `options` name columns. Errors: as every CSV here; badInput as readTable for
// a mapped column that is not one of ours.
Result<TableKind> tableKind(const std::filesystem::path& file, const ImportOptions& options = {});

template <class T>
struct Imported {
    std::vector<T> rows;                         // in the order of the file
    std::vector<long> lines;                     // of the file, from 1
    std::vector<std::string> ids;                // as the file states them; empty: none
    std::size_t ofOthers = 0;                    // rows of other vehicles, left out
    std::vector<std::string> unknownColumns;     // for a warning
};

// T is Fill, Trip or LevelRecord. Errors: as every CSV here; badInput for a mapped column that is not
// one of ours, a date that is none, an impossible number, a file without rows or with more
// than kMostImportedRows. Cost: O(file).
template <class T>
Result<Imported<T>> readTable(const std::filesystem::path& file, const ImportOptions& options = {});

// Positions of the rows that are not in the log yet. A row is there if an entry of its
// id is, or one like it: the same instant, litres and kilometres (fills), instant,
// kilometres and mode (trips), or instant, tank, reading and litres (levels), to a millionth. The same fill twice in one file is one
// fill; trips of one day may be alike, so each entry stands for one row of the file.
std::vector<std::size_t> newRows(const Imported<Fill>& file, const std::vector<Entry<Fill>>& known);
std::vector<std::size_t> newRows(const Imported<Trip>& file, const std::vector<Entry<Trip>>& known);
std::vector<std::size_t> newRows(const Imported<LevelRecord>& file, const std::vector<Entry<LevelRecord>>& known);

} // namespace undermark
