// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reads a CSV with a header row, in any column order, over the fccp library
// (lines and quoting), and turns whatever is wrong into one Error that names
// file, line, column, what was expected and what was found.
//
// Rules of every CSV here: UTF-8, comma between columns, point in numbers,
// blank lines skipped, double quotes around text that holds a comma. Numbers
// are read by std::from_chars: no locale, no guessing. Unknown columns are
// remembered, so that the caller can name them in a warning.
//
// Memory is constant in the length of the file; a row costs its characters. A file may
// have 256 MiB, a line 16 MiB.
#pragma once

#include "engine/base/error.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undermark {

struct CsvColumn {
    std::string_view name;
    bool required = false;
};

// Closed interval a number must lie in; the words go into the error.
struct NumberRange {
    double lowest;
    double highest;
    Sentence words; // "a number of 0 or more"
};

inline const NumberRange kAnyNumber{-1e300, 1e300, Sentence::of("a number")};
inline const NumberRange kNotNegative{0.0, 1e300, Sentence::of("a number of 0 or more")};
inline const NumberRange kPositive{5e-324, 1e300, Sentence::of("a number above 0")};

// Reads the whole of `text` as one finite number in `range`. A comma decimal,
// a trailing unit, NaN and infinity are errors that say so; `column`, `file`
// and `line` are left to the caller. Used for flags and CSV cells alike.
Result<double> parseNumber(std::string_view text, const NumberRange& range);

class CsvReader {
public:
    // Errors: fileAccess if it cannot be opened; badInput for a file too large, empty, a
    // missing required column or a column named twice.
    static Result<CsvReader> open(const std::filesystem::path& file,
                                  std::span<const CsvColumn> columns);
    CsvReader(CsvReader&&) noexcept;
    CsvReader& operator=(CsvReader&&) noexcept;
    ~CsvReader();

    // Column names of the header that nobody asked for.
    const std::vector<std::string>& unknownColumns() const;

    // True if the header has columns[column].
    bool has(std::size_t column) const;

    // Moves on to the next row; false at the end of the file. badInput where
    // the number of cells differs from the header's.
    Result<bool> nextRow();

    // Line of the current row in the file, from 1.
    long line() const;

    // Cell of the current row, trimmed; empty where the column is absent. Valid
    // until the next row.
    std::string_view text(std::size_t column) const;

    // Cell as a number; an empty cell is an error.
    Result<double> number(std::size_t column, const NumberRange& range = kAnyNumber) const;

    // Cell as a number; nothing where the cell is empty or the column absent.
    Result<std::optional<double>> optionalNumber(std::size_t column,
                                                 const NumberRange& range = kAnyNumber) const;

    // A badInput error about the current row's cell.
    Error errorAt(std::size_t column, Sentence detail, Sentence expected = {}) const;

private:
    struct Impl;
    explicit CsvReader(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> m_impl;
};

} // namespace undermark
