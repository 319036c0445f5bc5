// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/csv_writer.h"

#include <charconv>

namespace undermark {

static bool startsDangerously(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(' ');
    return first != std::string_view::npos
        && std::string_view("=+-@\t\r'").find(text[first]) != std::string_view::npos;
}

void CsvWriter::separate()
{
    if (m_rowBegun)
        m_text += ',';
    m_rowBegun = true;
}

CsvWriter& CsvWriter::text(std::string_view value)
{
    separate();
    std::string cell(value);
    if (startsDangerously(cell))
        cell.insert(0, 1, '\'');
    // In some countries a semicolon ends a cell; spaces at the ends are kept by quotes.
    if (cell.find_first_of(",;\"\r\n") == std::string::npos && !cell.starts_with(' ')
        && !cell.ends_with(' ')) {
        m_text += cell;
        return *this;
    }
    m_text += '"';
    for (const char c : cell) {
        if (c == '"')
            m_text += '"';
        m_text += c == '\n' || c == '\r' ? ' ' : c;   // a cell is one line
    }
    m_text += '"';
    return *this;
}

CsvWriter& CsvWriter::number(double value)
{
    separate();
    char digits[32];
    const auto end = std::to_chars(digits, digits + sizeof digits, value).ptr;
    m_text.append(digits, end);
    return *this;
}

CsvWriter& CsvWriter::number(std::optional<double> value)
{
    if (value)
        return number(*value);
    separate();
    return *this;
}

void CsvWriter::endRow()
{
    m_text += '\n';
    m_rowBegun = false;
}

std::string_view plainText(std::string_view cell)
{
    if (cell.starts_with('\'') && startsDangerously(cell.substr(1)))
        cell.remove_prefix(1);
    return cell;
}

} // namespace undermark
