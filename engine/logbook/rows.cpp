// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/rows.h"

#include <sqlite3.h>

namespace undermark::logbook {

void Cursor::putCell(const Cell& cell)
{
    if (const auto* whole = std::get_if<std::int64_t>(&cell))
        put(*whole);
    else if (const auto* number = std::get_if<double>(&cell))
        put(*number);
    else if (const auto* text = std::get_if<std::string>(&cell))
        putText(*text);
    else
        putNull();
}

Cell cellAt(const SQLite::Column& column)
{
    if (column.isInteger())
        return column.getInt64();
    if (column.isFloat())
        return column.getDouble();
    if (column.isNull())
        return std::monostate();
    return column.getString();
}

void refuse(const ColumnShape& column, const Cell& cell)
{
    const auto* word = std::get_if<std::string>(&cell);
    throw SQLite::Exception(word ? "unknown word '" + *word + "'"
                                 : "impossible value of " + std::string(column.name),
                            SQLITE_CORRUPT);
}

std::string insertSql(const TableShape& table)
{
    std::string places = "?";   // the id
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        places += ", ?";
    return std::string("INSERT INTO ") + table.name + " (id, " + table.names() + ") VALUES ("
           + places + ")";
}

} // namespace undermark::logbook
