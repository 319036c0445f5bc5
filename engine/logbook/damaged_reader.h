// SPDX-License-Identifier: GPL-3.0-or-later
//
// Rows out of a logbook that SQLite calls damaged: each is looked up by its row id, so
// that a broken page costs the rows that are on it and no more. Only for salvage.cpp.
#pragma once

#include "engine/base/error.h"
#include "engine/logbook/ledger.h"

#include <map>
#include <memory>

namespace undermark::logbook {

// A row of the ledger as it stands in the file, whatever it says.
struct DamagedRow {
    RowId id = 0;
    std::string uuid, kind;
    std::optional<RowId> vehicle;
    std::int64_t recorded = 0;
    std::optional<RowId> corrects;
    std::int64_t revision = 0;
    std::optional<RowId> withdraws;
};

using DamagedValues = std::vector<Cell>;   // of a table's columns

// The tables that hold the values of a kind of entry; none for an unknown kind.
std::vector<const TableShape*> tablesOf(const std::string& kind);

// Throws SQLite::Exception where the logbook's rules refuse the values.
void insertRow(SQLite::Database& fresh, const TableShape& table, RowId id,
               const DamagedValues& values);

class DamagedReader {
public:
    // Opens the file for reading; it may be changed by that (a journal played back), so
    // give it a copy. Errors: damaged, without the file's name, where not even the tables
    // can be found or the file carries code of its own.
    static Result<DamagedReader> open(const std::filesystem::path& file);

    // What can be read of the ledger, by row id.
    const std::vector<DamagedRow>& ledger() const { return m_ledger; }
    // True where a page of the ledger could not be read.
    bool gaps() const { return m_gaps; }
    // The rows of a table with that id; nothing where they cannot all be read.
    std::optional<std::vector<DamagedValues>> values(const TableShape& table, RowId id) const;
    // The most litres of a fill of that vehicle, row id of its first row.
    std::optional<double> largestFill(RowId vehicle) const;

private:
    DamagedReader(SQLite::Database database, RowId mostTried)
        : m_database(std::move(database)), m_mostTried(mostTried)
    {
    }
    void readColumns();
    void readLedger();
    // Adds rows until the end or a broken page; true at the end.
    bool scan(const char* order);
    void lookUp(RowId first, RowId last);

    mutable SQLite::Database m_database;
    std::map<std::string, std::string> m_columns;   // by table, as listed in a SELECT
    RowId m_mostTried;
    std::vector<DamagedRow> m_ledger;
    bool m_gaps = false;
};

} // namespace undermark::logbook
