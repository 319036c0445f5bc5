// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a column of the logbook is: its name, what may stand in it, the way from a record
// and back, and how tables of people call it. The columns themselves: record_tables.cpp.
#pragma once

#include "engine/base/sentence.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace undermark::logbook {

// Nothing, a whole number, a number or text.
using Cell = std::variant<std::monostate, std::int64_t, double, std::string>;

// The numbers from `lowest` to `highest`; NaN is none of them.
struct ColumnRange {
    double lowest;
    double highest;
    const char* sql; // the same as a condition, $ for the column; null: of no column, of what is typed
    Sentence words;  // "a number of 0 or more"

    bool holds(double number) const { return number >= lowest && number <= highest; }
};

enum class CellType { integer, real, text };

// Of texts: one of the record's own words, or a person's words that may be none or not; a
// currency by its three capital letters (ISO 4217); a SHA-256 in 64 hexadecimal digits; a
// whole small file of up to 1 MiB, in the file with that bound or without.
enum class TextRule { word, filled, anyText, currency, hash, document, longText };

// What the file keeps in a column, whatever the record.
struct ColumnShape {
    const char* name;   // in the file, its unit behind: odometer_km
    const char* said;   // in errors
    CellType type;
    bool needed;        // never NULL
    std::string check;  // the SQL condition on what is there; empty: none
    const ColumnRange* range = nullptr; // of a number
    TextRule text = TextRule::word;
    bool isSd = false;  // the spread of the column before

    // False for a number out of the range; of text and of nothing always true.
    bool admits(const Cell& cell) const
    {
        const auto* whole = std::get_if<std::int64_t>(&cell);
        const auto* number = std::get_if<double>(&cell);
        return !range || !(whole || number) || range->holds(whole ? double(*whole) : *number);
    }
};

// What a cell of an imported or exported table states. A number may come in another unit
// than its column's name says (ImportOptions).
enum class Measure {
    date, text, yesNo, count, number, volume, distance, pricePerVolume, temperature, rate,
};

struct CsvShape {
    const char* name;   // in the header
    Measure measure;
    bool needed = false;                // an import asks for it
    const ColumnRange* range = nullptr; // of the column that it is kept in
    const ColumnRange* typed = nullptr; // narrower: what a person may mean
    // What it says, to a person asked for it by itself, and the range then where it is not
    // `range`. Null: nobody is asked for it.
    const char* about = nullptr;
    const ColumnRange* asked = nullptr;
};

// From a record and back.
template <class T>
struct Field {
    Cell (*get)(const T& record) = nullptr;
    // False where the cell is not of the field's type, or no word of it.
    bool (*set)(T& record, const Cell& cell) = nullptr;
};

// One column of a CSV. Without `get` it is read, never written.
template <class T>
struct CsvField : CsvShape {
    Field<T> field;
};

template <class T>
struct Column : ColumnShape {
    Field<T> field;
    std::vector<CsvField<T>> csv;   // mostly one
    std::optional<CsvField<T>> toldAs = std::nullopt;

    // How a program's answer states it: as the first in tables, unless it says otherwise.
    // Of columns that tables have.
    const CsvField<T>& told() const { return toldAs ? *toldAs : csv.front(); }

    Column as(const char* csvName) &&
    {
        csv.front().name = csvName;
        return std::move(*this);
    }
    Column inTables(std::vector<CsvField<T>> fields) &&
    {
        csv = std::move(fields);
        return std::move(*this);
    }
    // The other way round: tables as told to inTables(), answers as the file has it.
    Column toldAsKept() &&
    {
        toldAs = csv.front();
        return std::move(*this);
    }
    // Of the first in tables.
    Column asked(const char* about, const ColumnRange* narrower = nullptr) &&
    {
        csv.front().about = about;
        csv.front().asked = narrower;
        return std::move(*this);
    }
    // A table of people may leave it out: the record has a value of its own then.
    Column withDefault() &&
    {
        csv.front().needed = false;
        return std::move(*this);
    }
    Column typed(const ColumnRange& narrower) &&
    {
        csv.front().typed = &narrower;
        return std::move(*this);
    }
};

// A table of values, whatever the record. Its rows hang on a row of the ledger by `id`.
struct TableShape {
    const char* kind;       // of the entries that it is of
    const char* name;
    const char* partOf;     // the table whose rows have several here, told apart by the first
                            // column; null: one row an entry
    std::vector<std::string> checks;    // SQL conditions on several columns
    std::vector<ColumnShape> columns;   // without id

    // "litres, extent", each with `before` in front: "v.litres, v.extent".
    std::string names(const std::string& before = {}) const;
};

template <class T>
struct Table : TableShape {
    std::vector<Column<T>> fields;   // in the order of `columns`

    std::vector<CsvField<T>> csvFields() const
    {
        std::vector<CsvField<T>> all;
        for (const Column<T>& column : fields)
            all.insert(all.end(), column.csv.begin(), column.csv.end());
        return all;
    }
};

} // namespace undermark::logbook
