// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/schema.h"

#include "engine/logbook/record_tables.h"

#include <array>

namespace undermark::logbook {

// `entries` is the ledger: one row per recording, correction or withdrawal, of
// whatever kind. The values hang on it by the same id; a withdrawal has none.
// Corrections are few, so `stale` (the rows not in force) stays small and reading
// a table is one pass over it.
static const char* const kLedger = R"sql(
CREATE TABLE schema_info (
  only        INTEGER PRIMARY KEY CHECK (only = 1),
  readable_by INTEGER NOT NULL   -- programs of this schema or a later one may read the file
) STRICT;
INSERT INTO schema_info VALUES (1, 3);

CREATE TABLE entries (
  id        INTEGER PRIMARY KEY,            -- order of recording in this file
  uuid      TEXT NOT NULL UNIQUE CHECK (length(uuid) = 36),
  kind      TEXT NOT NULL
            CHECK (kind IN ('vehicle', 'mode', 'calibration', 'fill', 'trip', 'proof', 'tank', 'verification', 'source', 'pump', 'photo', 'hand-over', 'level')),
  vehicle   INTEGER REFERENCES entries (id),
  recorded  INTEGER NOT NULL CHECK (recorded BETWEEN -2208988800 AND 253402300799),
  corrects  INTEGER REFERENCES entries (id),   -- first row of the entry; NULL: this is it
  revision  INTEGER NOT NULL DEFAULT 0 CHECK (revision >= 0),
  withdraws INTEGER REFERENCES entries (id),   -- the row that this one takes back
  CHECK ((vehicle IS NULL) = (kind = 'vehicle')),
  CHECK ((corrects IS NULL) = (revision = 0)),
  CHECK (withdraws IS NULL OR corrects IS NOT NULL)
) STRICT;
CREATE INDEX entries_corrects ON entries (corrects) WHERE corrects IS NOT NULL;
CREATE INDEX entries_withdraws ON entries (withdraws) WHERE withdraws IS NOT NULL;

CREATE VIEW withdrawn AS
  SELECT withdraws AS id FROM entries WHERE withdraws IS NOT NULL;
CREATE VIEW stale AS
  SELECT id FROM withdrawn
  UNION
  SELECT older.id
    FROM entries AS newer
    JOIN entries AS older ON older.id = newer.corrects OR older.corrects = newer.corrects
   WHERE newer.corrects IS NOT NULL AND newer.withdraws IS NULL
     AND newer.id NOT IN (SELECT id FROM withdrawn)
     AND (older.revision, older.recorded, older.uuid)
         < (newer.revision, newer.recorded, newer.uuid);
)sql";

// For the list of the log (log_page.cpp), and for what the car wrote. They hold nothing of their own, so a file
// with or without them is of the same schema.
static const char* const kIndexes = R"sql(
CREATE INDEX IF NOT EXISTS fills_time ON fills (time);
CREATE INDEX IF NOT EXISTS trips_time ON trips (time);
CREATE INDEX IF NOT EXISTS proofs_time ON proofs (time);
CREATE INDEX IF NOT EXISTS levels_time ON levels (time);
CREATE INDEX IF NOT EXISTS trips_journal ON trips (journal_id) WHERE journal_id IS NOT NULL;
CREATE INDEX IF NOT EXISTS levels_journal ON levels (journal_id) WHERE journal_id IS NOT NULL;
)sql";

const char* indexSql() { return kIndexes; }

static std::string columnSql(const ColumnShape& column)
{
    static constexpr std::array kTypes{"INTEGER", "REAL", "TEXT"};   // by CellType
    return std::string(column.name) + " " + kTypes.at(std::size_t(column.type))
           + (column.needed ? " NOT NULL" : "")
           + (column.check.empty() ? "" : " CHECK (" + column.check + ")");
}

static std::string createTableSql(const TableShape& table)
{
    const std::string key = table.partOf ? std::string(" NOT NULL REFERENCES ") + table.partOf
                                         : " PRIMARY KEY REFERENCES entries";
    std::string sql = std::string("CREATE TABLE ") + table.name + " (\n  id INTEGER" + key + " (id)";
    for (const ColumnShape& column : table.columns)
        sql += ",\n  " + columnSql(column);
    for (const std::string& check : table.checks)
        sql += ",\n  CHECK (" + check + ")";
    if (!table.partOf)
        return sql + "\n) STRICT;\n";
    return sql + ",\n  PRIMARY KEY (id, " + table.columns[0].name + ")\n) STRICT, WITHOUT ROWID;\n";
}

// Rows are added, and nothing else. INSERT OR REPLACE deletes the older row without asking
// the DELETE triggers (unless recursive_triggers is on), so the row must not get that far:
// `sameRow` is what makes two rows the same.
static std::string triggersSql(const std::string& name, const std::string& sameRow)
{
    const std::string refuse = " BEGIN SELECT RAISE(ABORT, 'the logbook only grows'); END;\n";
    std::string sql;
    for (const std::string action : {"UPDATE", "DELETE"})
        sql += "CREATE TRIGGER " + name + "_no_" + action + " BEFORE " + action + " ON " + name
               + refuse;
    return sql + "CREATE TRIGGER " + name + "_no_REPLACE BEFORE INSERT ON " + name
           + " WHEN EXISTS (SELECT 1 FROM " + name + " WHERE " + sameRow + ")" + refuse;
}

std::string createSchemaSql()
{
    std::string sql = kLedger, triggers = triggersSql("entries", "id = NEW.id OR uuid = NEW.uuid");
    for (const TableShape* table : valueTables()) {
        const std::string key = table->columns[0].name;
        sql += createTableSql(*table);
        triggers += triggersSql(table->name, table->partOf ? "id = NEW.id AND " + key + " = NEW." + key
                                                           : "id = NEW.id");
    }
    return sql + kIndexes + triggers + "PRAGMA application_id = " + std::to_string(kApplicationId)
           + ";\nPRAGMA user_version = " + std::to_string(kSchemaVersion) + ";\n";
}

} // namespace undermark::logbook
