// SPDX-License-Identifier: GPL-3.0-or-later
//
// Rows in and out of the ledger and its value tables. These functions know SQL
// and throw SQLite::Exception; what may be done when is decided in logbook.cpp.
// Only for the files of engine/logbook.
#pragma once

#include "engine/logbook/logbook.h"
#include "engine/logbook/rows.h"

namespace undermark::logbook {

using RowId = std::int64_t;

// An entry, named by the row id of its first row.
struct Found {
    RowId id = 0;
    std::string kind;
    std::optional<RowId> vehicle;   // empty for a vehicle itself
};

// What the ledger holds about a row to be written.
struct LedgerRow {
    std::optional<RowId> vehicle;
    Instant recorded{};
    std::optional<RowId> corrects;    // first row of the entry
    std::int64_t revision = 0;
    std::optional<RowId> withdraws;
};

// The entry of that id; `kind` narrows the search where it is given.
std::optional<Found> findEntry(const SQLite::Database& database, const EntryId& id,
                               const char* kind = nullptr);

tl::unexpected<Error> notFound(Sentence detail, std::string found);

// The vehicle in force of that id. Errors: notFound.
Result<Found> vehicleOf(const SQLite::Database& database, const EntryId& id);

// Of what the current transaction sees.
FileState stateOf(SQLite::Database& database);

// The rule of the view `stale` (schema.cpp) as a condition on one row of `entries` under
// the name `row`. The view is for reading everything; this costs the rows it is asked
// of, not the corrections ever made.
std::string inForceSql(const std::string& row);

// The row in force, if the entry is not gone.
std::optional<RowId> rowInForce(const SQLite::Database& database, RowId entry);

// One above every revision of the entry.
std::int64_t nextRevision(const SQLite::Database& database, RowId entry);

// Rows of the entry that a withdrawal would leave standing.
std::int64_t standingRows(const SQLite::Database& database, RowId entry);

// Whether an entry of the vehicle in force names this mode or tank in its column `column`,
// which is called like the kind of entry that it names.
bool isNamed(const SQLite::Database& database, RowId vehicle, const std::string& column,
             const std::string& name);

// Whether this trip or level of the car's own journal was ever recorded in `table`, even if it
// was undone since.
bool journalHas(const SQLite::Database& database, const TableShape& table, RowId vehicle,
                const std::string& journalId);

// Adds rows of the ledger; prepared once, for as many as wanted.
class LedgerWriter {
public:
    LedgerWriter(const SQLite::Database& database, const char* kind);
    // The new row's id and UUID.
    std::pair<RowId, EntryId> write(const LedgerRow& row);

private:
    const SQLite::Database& m_database;
    std::string m_kind;
    SQLite::Statement m_insert;
};

// The entries of a table that are in force: row id, UUID of the entry, time of
// recording, then COLUMNS. Parameter 1 is the vehicle, where there is one.
std::string selectSql(const TableShape& table, bool ofVehicle, bool byTime);
// Every row of one entry (parameter 1): row id, UUID, time of recording, time of
// withdrawal, then COLUMNS.
std::string versionsSql(const TableShape& table);

// Adds rows of T, ledger and value.
template <class T>
class Writer {
public:
    explicit Writer(const SQLite::Database& database)
        : m_database(database), m_ledger(database, tableOf<T>().kind),
          m_insert(database, insertSql(tableOf<T>()))
    {
    }

    std::pair<RowId, EntryId> write(const LedgerRow& row, const T& value)
    {
        auto written = m_ledger.write(row);
        Cursor cursor(m_insert, 1);
        cursor.put(written.first);
        putRow(cursor, value);
        m_insert.exec();
        m_insert.reset();
        insertParts(m_database, written.first, value);
        return written;
    }

private:
    const SQLite::Database& m_database;
    LedgerWriter m_ledger;
    SQLite::Statement m_insert;
};

inline Instant takeInstant(Cursor& cursor)
{
    return Instant(std::chrono::seconds(cursor.takeInteger()));
}

// The entries of T in force, of one vehicle or, for vehicles, all.
template <class T>
std::vector<Entry<T>> readInForce(const SQLite::Database& database, std::optional<RowId> vehicle)
{
    SQLite::Statement select(database,
                             selectSql(tableOf<T>(), vehicle.has_value(), kHasTime<T>));
    if (vehicle)
        select.bind(1, *vehicle);
    std::vector<Entry<T>> entries;
    while (select.executeStep()) {
        Cursor cursor(select, 0);
        const RowId row = cursor.takeInteger();
        std::string uuid = cursor.takeText();
        const Instant recorded = takeInstant(cursor);
        entries.push_back({{std::move(uuid)}, recorded, takeRow<T>(cursor)});
        readParts(database, row, entries.back().value);
    }
    return entries;
}

// Every row of an entry, the first one first.
template <class T>
std::vector<Version<T>> readVersions(const SQLite::Database& database, RowId entry)
{
    SQLite::Statement select(database, versionsSql(tableOf<T>()));
    select.bind(1, entry);
    std::vector<Version<T>> versions;
    while (select.executeStep()) {
        Version<T> version;
        Cursor cursor(select, 0);
        const RowId row = cursor.takeInteger();
        version.uuid = cursor.takeText();
        version.recorded = takeInstant(cursor);
        if (const SQLite::Column time = cursor.take(); !time.isNull())
            version.withdrawn = Instant(std::chrono::seconds(time.getInt64()));
        version.value = takeRow<T>(cursor);
        readParts(database, row, version.value);
        versions.push_back(std::move(version));
    }
    return versions;
}

} // namespace undermark::logbook
