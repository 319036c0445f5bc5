// SPDX-License-Identifier: GPL-3.0-or-later
//
// How each record becomes a row and comes back, by the columns of record_tables.h.
// Only for the files of engine/logbook.
#pragma once

#include "engine/logbook/record_tables.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace undermark::logbook {

// Binds the next parameter of a statement, or takes the next column of a row.
class Cursor {
public:
    Cursor(SQLite::Statement& statement, int first) : m_statement(statement), m_next(first) {}

    template <class Number>
    void put(Number value) { m_statement.bind(m_next++, value); }
    void putText(const std::string& value) { m_statement.bind(m_next++, value); }
    void putNull() { m_statement.bind(m_next++); }
    void putCell(const Cell& cell);

    SQLite::Column take() { return m_statement.getColumn(m_next++); }
    std::int64_t takeInteger() { return take().getInt64(); }
    std::string takeText() { return take().getString(); }

private:
    SQLite::Statement& m_statement;
    int m_next;
};

Cell cellAt(const SQLite::Column& column);

// Throws SQLite::Exception, as of a damaged file: the CHECKs admit no such value.
[[noreturn]] void refuse(const ColumnShape& column, const Cell& cell);

template <class T>
void putRow(Cursor& cursor, const T& record)
{
    for (const Column<T>& column : tableOf<T>().fields)
        cursor.putCell(column.field.get(record));
}

template <class T>
T takeRow(Cursor& cursor)
{
    T record;
    for (const Column<T>& column : tableOf<T>().fields)
        if (const Cell cell = cellAt(cursor.take());
            !column.admits(cell) || !column.field.set(record, cell))
            refuse(column, cell);
    return record;
}

// "INSERT INTO TABLE (id, COLUMNS) VALUES (?, ...)".
std::string insertSql(const TableShape& table);

// The parts of a record that have a table of their own.
template <class T>
void insertParts(const SQLite::Database& database, std::int64_t id, const T& record)
{
    if constexpr (kHasParts<T>) {
        SQLite::Statement insert(database, insertSql(tableOf<PartOf<T>>()));
        for (const PartOf<T>& part : partsOf(record)) {
            Cursor cursor(insert, 1);
            cursor.put(id);
            putRow(cursor, part);
            insert.exec();
            insert.reset();
        }
    }
}

template <class T>
void readParts(const SQLite::Database& database, std::int64_t id, T& record)
{
    if constexpr (kHasParts<T>) {
        const Table<PartOf<T>>& table = tableOf<PartOf<T>>();
        SQLite::Statement select(database, "SELECT " + table.names() + " FROM " + table.name
                                               + " WHERE id = ? ORDER BY " + table.columns[0].name);
        select.bind(1, id);
        while (select.executeStep()) {
            Cursor cursor(select, 0);
            addPart(record, takeRow<PartOf<T>>(cursor));
        }
    }
}

} // namespace undermark::logbook
