// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/damaged_reader.h"

#include "engine/logbook/database.h"

#include <sqlite3.h>

#include <algorithm>
#include <iterator>
#include <set>

namespace undermark::logbook {

namespace {

// Ids to try one by one where pages are broken, beyond the last that could be read: as
// many as such a file could hold, since no row of the ledger is shorter than this.
constexpr RowId kMostTried = 100'000;
constexpr RowId kLeastRowBytes = 50;   // its UUID alone takes 36
constexpr const char* kLedgerColumns =
    "SELECT id, uuid, kind, vehicle, recorded, corrects, revision, withdraws FROM entries ";

// Of the schema as far as SQLite could read it; the two views of our own are not read here.
constexpr const char* kNoTables =
    "SELECT 1 FROM pragma_table_list WHERE schema = 'main' AND type <> 'table' "
    "AND name NOT IN ('withdrawn', 'stale')";

std::optional<RowId> optionalId(const SQLite::Column& column)
{
    return column.isNull() ? std::nullopt : std::optional<RowId>(column.getInt64());
}

DamagedRow rowAt(SQLite::Statement& select)
{
    DamagedRow row;
    row.id = select.getColumn(0).getInt64();
    row.uuid = select.getColumn(1).getString();
    row.kind = select.getColumn(2).getString();
    row.vehicle = optionalId(select.getColumn(3));
    row.recorded = select.getColumn(4).getInt64();
    row.corrects = optionalId(select.getColumn(5));
    row.revision = select.getColumn(6).getInt64();
    row.withdraws = optionalId(select.getColumn(7));
    return row;
}

} // namespace

std::vector<const TableShape*> tablesOf(const std::string& kind)
{
    std::vector<const TableShape*> tables;
    std::ranges::copy_if(valueTables(), std::back_inserter(tables),
                         [&](const TableShape* table) { return kind == table->kind; });
    return tables;
}

void insertRow(SQLite::Database& fresh, const TableShape& table, RowId id,
               const DamagedValues& values)
{
    SQLite::Statement insert(fresh, insertSql(table));
    Cursor cursor(insert, 1);
    cursor.put(id);
    for (const Cell& cell : values)
        cursor.putCell(cell);
    insert.exec();
}

Result<DamagedReader> DamagedReader::open(const std::filesystem::path& file)
{
    const auto damaged = [](Sentence detail) {
        return fail(ErrorCode::damaged, std::move(detail));
    };
    try {
        SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
        database.exec("PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON");
        // SQLite refuses a file that is shorter than it says unless this is on.
        database.exec("PRAGMA writable_schema = ON");
        // What is read has to be tables: a view of the file's own could run for ever.
        if (SQLite::Statement(database, kNoTables).executeStep())
            return damaged(
                Sentence::of("this holds views or tables that no Undermark has written"));
        database.exec("BEGIN");   // one lock for all that is read, not one for each row
        const auto bytes = static_cast<RowId>(std::filesystem::file_size(file));
        DamagedReader reader(std::move(database), std::min(kMostTried, bytes / kLeastRowBytes));
        reader.readColumns();
        reader.readLedger();
        return reader;
    } catch (const std::exception&) {
        return damaged(Sentence::of("nothing of this logbook can be read"));
    }
}

// What the file's own schema has not is NULL.
void DamagedReader::readColumns()
{
    SQLite::Statement select(m_database, "SELECT name FROM pragma_table_info(?)");
    for (const TableShape* table : valueTables()) {
        std::set<std::string> there;
        select.bind(1, std::string(table->name));
        while (select.executeStep())
            there.insert(select.getColumn(0).getString());
        select.reset();
        std::string list;
        for (const ColumnShape& column : table->columns)
            list += (list.empty() ? "" : ", ")
                    + (there.contains(column.name) ? std::string(column.name) : "NULL");
        if (!there.empty())
            m_columns[table->name] = list;
    }
}

bool DamagedReader::scan(const char* order)
{
    SQLite::Statement select(m_database, std::string(kLedgerColumns) + order);
    try {
        while (select.executeStep())
            m_ledger.push_back(rowAt(select));
        return true;
    } catch (const SQLite::Exception&) {
        return false;
    }
}

void DamagedReader::lookUp(RowId first, RowId last)
{
    SQLite::Statement select(m_database, std::string(kLedgerColumns) + "WHERE id = ?");
    for (RowId id = first; id <= last; ++id) {
        try {
            select.bind(1, id);
            if (select.executeStep())
                m_ledger.push_back(rowAt(select));
        } catch (const SQLite::Exception&) {
            // On the broken page.
        }
        select.tryReset();
    }
}

// Forward to the first broken page, backward to the last one, then one by one between.
void DamagedReader::readLedger()
{
    if (scan("ORDER BY id"))
        return;
    m_gaps = true;
    const RowId first = m_ledger.empty() ? 1 : m_ledger.back().id + 1;
    const std::size_t forward = m_ledger.size();
    scan("ORDER BY id DESC");
    const RowId last = m_ledger.size() > forward ? m_ledger.back().id - 1 : first + m_mostTried;
    lookUp(first, std::min(last, first + m_mostTried));
    std::ranges::sort(m_ledger, {}, &DamagedRow::id);
    const auto sameId = [](const DamagedRow& a, const DamagedRow& b) { return a.id == b.id; };
    m_ledger.erase(std::unique(m_ledger.begin(), m_ledger.end(), sameId), m_ledger.end());
}

std::optional<std::vector<DamagedValues>> DamagedReader::values(const TableShape& table, RowId id) const
{
    const auto columns = m_columns.find(table.name);
    if (columns == m_columns.end())   // of an older schema, which had none
        return std::vector<DamagedValues>();
    try {
        SQLite::Statement select(m_database, "SELECT " + columns->second + " FROM " + table.name
                                                 + " WHERE id = ?");
        select.bind(1, id);
        std::vector<DamagedValues> rows;
        while (select.executeStep()) {
            DamagedValues& row = rows.emplace_back();
            for (int i = 0; i < select.getColumnCount(); ++i)
                row.push_back(cellAt(select.getColumn(i)));
        }
        return rows;
    } catch (const SQLite::Exception&) {
        return std::nullopt;
    }
}

std::optional<double> DamagedReader::largestFill(RowId vehicle) const
{
    std::optional<double> largest;
    for (const DamagedRow& row : m_ledger) {
        if (row.vehicle != vehicle || row.kind != tableOf<Fill>().kind)
            continue;
        const auto rows = values(tableOf<Fill>(), row.id);
        if (!rows || rows->empty())
            continue;
        Fill fill;
        for (std::size_t i = 0; i < rows->front().size(); ++i)
            tableOf<Fill>().fields[i].field.set(fill, rows->front()[i]);
        if (fill.volume > Volume())
            largest = std::max(largest.value_or(0.0), fill.volume.litres());
    }
    return largest;
}

} // namespace undermark::logbook
