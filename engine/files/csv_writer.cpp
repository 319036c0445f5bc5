// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/files/csv_writer.h"

#include <charconv>

namespace undermark {

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
    if (!cell.empty() && std::string_view("=+-@\t\r").find(cell.front()) != std::string_view::npos)
        cell.insert(0, 1, '\'');
    if (cell.find_first_of(",\"\r\n") == std::string::npos) {
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

} // namespace undermark
