// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/ledger.h"

#include "engine/logbook/uuid.h"

#include <algorithm>

namespace undermark::logbook {

namespace {

void putOptionalId(Cursor& cursor, std::optional<RowId> id)
{
    if (id)
        cursor.put(*id);
    else
        cursor.putNull();
}

// The first column of the first row, where there is one that is not NULL.
std::optional<std::int64_t> firstInteger(SQLite::Statement& select)
{
    if (!select.executeStep() || select.getColumn(0).isNull())
        return std::nullopt;
    return select.getColumn(0).getInt64();
}

} // namespace

std::optional<Found> findEntry(const SQLite::Database& database, const EntryId& id,
                               const char* kind)
{
    SQLite::Statement select(database, "SELECT id, kind, vehicle FROM entries "
                                       "WHERE uuid = ? AND corrects IS NULL");
    select.bind(1, id.uuid);
    if (!select.executeStep())
        return std::nullopt;
    Found found{select.getColumn(0).getInt64(), select.getColumn(1).getString(), std::nullopt};
    if (const SQLite::Column vehicle = select.getColumn(2); !vehicle.isNull())
        found.vehicle = vehicle.getInt64();
    if (kind && found.kind != kind)
        return std::nullopt;
    return found;
}

tl::unexpected<Error> notFound(Sentence detail, std::string found)
{
    return fail(ErrorCode::notFound, std::move(detail), {}, {}, std::move(found));
}

Result<Found> vehicleOf(const SQLite::Database& database, const EntryId& id)
{
    const auto found = findEntry(database, id, tableOf<Vehicle>().kind);
    if (!found || !rowInForce(database, found->id))
        return notFound(Sentence::of("there is no such vehicle"), id.uuid);
    return *found;
}

FileState stateOf(SQLite::Database& database)
{
    return {database.execAndGet("PRAGMA data_version").getInt64(), database.getTotalChanges()};
}

std::string inForceSql(const std::string& row)
{
    const auto withdrawn = [](const std::string& id) {
        return "EXISTS (SELECT 1 FROM entries AS w WHERE w.withdraws = " + id + ")";
    };
    return row + ".withdraws IS NULL AND NOT " + withdrawn(row + ".id")
           + " AND NOT EXISTS (SELECT 1 FROM entries AS newer WHERE newer.corrects = coalesce("
           + row + ".corrects, " + row + ".id) AND newer.withdraws IS NULL AND "
           "(newer.revision, newer.recorded, newer.uuid) > (" + row + ".revision, " + row
           + ".recorded, " + row + ".uuid) AND NOT " + withdrawn("newer.id") + ")";
}

std::optional<RowId> rowInForce(const SQLite::Database& database, RowId entry)
{
    SQLite::Statement select(database, "SELECT id FROM entries AS e WHERE (id = ?1 OR corrects = ?1) "
                                       "AND " + inForceSql("e"));
    select.bind(1, entry);
    return firstInteger(select);
}

std::int64_t nextRevision(const SQLite::Database& database, RowId entry)
{
    SQLite::Statement select(database,
                             "SELECT max(revision) + 1 FROM entries WHERE id = ?1 OR corrects = ?1");
    select.bind(1, entry);
    return firstInteger(select).value_or(1);
}

std::int64_t standingRows(const SQLite::Database& database, RowId entry)
{
    SQLite::Statement select(database, "SELECT count(*) FROM entries WHERE (id = ?1 OR corrects = ?1) "
                                       "AND withdraws IS NULL "
                                       "AND id NOT IN (SELECT id FROM withdrawn)");
    select.bind(1, entry);
    return firstInteger(select).value_or(0);
}

// Of tables that hang on an entry directly.
static bool hasColumn(const TableShape& table, const std::string& column)
{
    return !table.partOf && std::ranges::any_of(table.columns, [&](const ColumnShape& each) {
        return each.name == column;
    });
}

bool isNamed(const SQLite::Database& database, RowId vehicle, const std::string& column,
             const std::string& name)
{
    for (const TableShape* table : valueTables()) {
        if (!hasColumn(*table, column))
            continue;
        SQLite::Statement select(database, std::string("SELECT 1 FROM ") + table->name
                                               + " AS v CROSS JOIN entries AS e ON e.id = v.id "
                                                 "WHERE v." + column + " = ?1 AND e.vehicle = ?2 "
                                                 "AND v.id NOT IN (SELECT id FROM stale) LIMIT 1");
        select.bind(1, name);
        select.bind(2, vehicle);
        if (select.executeStep())
            return true;
    }
    return false;
}

bool journalHas(const SQLite::Database& database, const TableShape& table, RowId vehicle,
                const std::string& journalId)
{
    SQLite::Statement select(database, std::string("SELECT 1 FROM ") + table.name
                                           + " AS v CROSS JOIN entries AS e ON e.id = v.id "
                                       "WHERE v.journal_id = ?1 AND e.vehicle = ?2 LIMIT 1");
    select.bind(1, journalId);
    select.bind(2, vehicle);
    return select.executeStep();
}

LedgerWriter::LedgerWriter(const SQLite::Database& database, const char* kind)
    : m_database(database), m_kind(kind),
      m_insert(database, "INSERT INTO entries (uuid, kind, vehicle, recorded, corrects, revision, "
                         "withdraws) VALUES (?, ?, ?, ?, ?, ?, ?)")
{
}

std::pair<RowId, EntryId> LedgerWriter::write(const LedgerRow& row)
{
    EntryId id{newUuid()};
    Cursor cursor(m_insert, 1);
    cursor.putText(id.uuid);
    cursor.putText(m_kind);
    putOptionalId(cursor, row.vehicle);
    cursor.put(static_cast<std::int64_t>(row.recorded.time_since_epoch().count()));
    putOptionalId(cursor, row.corrects);
    cursor.put(row.revision);
    putOptionalId(cursor, row.withdraws);
    m_insert.exec();
    m_insert.reset();
    return {m_database.getLastInsertRowid(), std::move(id)};
}

// CROSS JOIN and the plus keep SQLite on one pass over the value table, not along its
// index of times: the ledger is then met in the order of its own row ids.
std::string selectSql(const TableShape& table, bool ofVehicle, bool byTime)
{
    return "SELECT v.id, CASE WHEN e.corrects IS NULL THEN e.uuid ELSE "
           "(SELECT uuid FROM entries WHERE id = e.corrects) END, e.recorded, " + table.names("v.")
           + " FROM " + table.name + " AS v CROSS JOIN entries AS e ON e.id = v.id WHERE "
           + (ofVehicle ? "e.vehicle = ?1 AND " : "") + "v.id NOT IN (SELECT id FROM stale)"
           + " ORDER BY " + (byTime ? "+v.time, " : "") + "coalesce(e.corrects, e.id)";
}

std::string versionsSql(const TableShape& table)
{
    return "SELECT e.id, e.uuid, e.recorded, "
           "(SELECT min(w.recorded) FROM entries AS w WHERE w.withdraws = e.id), " + table.names("v.")
           + " FROM entries AS e JOIN " + table.name + " AS v ON v.id = e.id "
             "WHERE e.id = ?1 OR e.corrects = ?1 ORDER BY e.revision, e.recorded, e.uuid";
}

} // namespace undermark::logbook
