// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fills and trips from somebody else's table: the user says which of its columns is
// which, and in what units; nothing is guessed.
//
//   fills  date,litres; optional odometer_km, trip_meter_km, full (1, 0; empty: 1),
//          to_the_neck, odometer_reset, price_per_l, signal, blend, temperature_c,
//          displayed_l_per_100km
//   trips  date,km,mode; optional idle_min, starts
#pragma once

#include "engine/error.h"
#include "engine/records.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace undermark {

struct ImportOptions {
    std::map<std::string, std::string> columns;  // our name -> the file's
    Volume litre = Volume::fromLitres(1);        // what 1 in a column of litres is; price too
    Distance km = Distance::fromKm(1);           // what 1 in a column of kilometres is
};

template <class T>
struct Imported {
    std::vector<T> rows;                         // in the order of the file
    std::vector<long> lines;                     // of the file, from 1
    std::vector<std::string> unknownColumns;     // for a warning
};

// Errors: as every CSV here; badInput for a mapped column that is not one of ours, a
// date that is none, an impossible number, a file without rows. Cost: O(file).
Result<Imported<Fill>> readFillsToImport(const std::filesystem::path& file, const ImportOptions& options = {});
Result<Imported<Trip>> readTripsToImport(const std::filesystem::path& file, const ImportOptions& options = {});

// Of `rows`, those that are neither among `known` nor twice in the file itself: the
// same instant, litres and kilometres (fills), or instant, kilometres and mode.
std::vector<std::size_t> newRows(const std::vector<Fill>& rows, const std::vector<Fill>& known);
std::vector<std::size_t> newRows(const std::vector<Trip>& rows, const std::vector<Trip>& known);

} // namespace undermark
