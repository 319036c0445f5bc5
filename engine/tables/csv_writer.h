// SPDX-License-Identifier: GPL-3.0-or-later
//
// A CSV as the readers here and spreadsheets take it (RFC 4180): UTF-8, comma,
// point, shortest digits that give the same number back, nothing for unknown.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace undermark {

class CsvWriter {
public:
    explicit CsvWriter(std::string_view header) : m_text(std::string(header) + '\n') {}

    // Text of people's own making. A spreadsheet takes a cell that starts with
    // = + - @, a tab or a carriage return for a formula and would run it, so such a
    // text (spaces in front do not count) gets an apostrophe in front: common practice
    // against CSV injection. One that starts with an apostrophe gets another, so that
    // plainText() gives back what was written.
    CsvWriter& text(std::string_view value);
    CsvWriter& number(double value);
    CsvWriter& number(std::optional<double> value);
    void endRow();

    const std::string& contents() const { return m_text; }

private:
    void separate();
    std::string m_text;
    bool m_rowBegun = false;
};

// A quantity that may be unknown in the unit of its column: in(fill.odometer, &Distance::km).
template <class Q>
std::optional<double> in(const std::optional<Q>& quantity, double (Q::*unit)() const)
{
    return quantity ? std::optional(((*quantity).*unit)()) : std::nullopt;
}

// What CsvWriter::text() was given, of a cell that it wrote; other cells as they are.
std::string_view plainText(std::string_view cell);

} // namespace undermark
