// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/schema.h"

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
INSERT INTO schema_info VALUES (1, 1);

CREATE TABLE entries (
  id        INTEGER PRIMARY KEY,            -- order of recording in this file
  uuid      TEXT NOT NULL UNIQUE CHECK (length(uuid) = 36),
  kind      TEXT NOT NULL
            CHECK (kind IN ('vehicle', 'mode', 'calibration', 'fill', 'trip', 'proof')),
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

static const char* const kCarTables = R"sql(
CREATE TABLE vehicles (
  id               INTEGER PRIMARY KEY REFERENCES entries (id),
  name             TEXT NOT NULL CHECK (length(name) > 0),
  fuel             TEXT NOT NULL CHECK (fuel IN ('petrol', 'diesel', 'lpg', 'ethanol')),
  capacity_l       REAL NOT NULL CHECK (capacity_l > 0 AND capacity_l <= 1e9),
  left_behind_l    REAL CHECK (left_behind_l BETWEEN 0 AND 1e9),
  left_behind_sd_l REAL CHECK (left_behind_sd_l BETWEEN 0 AND 1e9),
  unusable_l       REAL CHECK (unusable_l BETWEEN 0 AND 1e9),
  unusable_sd_l    REAL CHECK (unusable_sd_l BETWEEN 0 AND 1e9),
  zero_mark_l      REAL CHECK (zero_mark_l BETWEEN 0 AND 1e9),
  lamp_l           REAL CHECK (lamp_l BETWEEN 0 AND 1e9),
  circuit          TEXT NOT NULL CHECK (circuit IN
                   ('direct', 'resistive', 'ratiometric', 'percent', 'counts')),
  signal_unit      TEXT NOT NULL,
  supply_v         REAL CHECK (supply_v > 0 AND supply_v <= 1e9),
  pull_up_ohm      REAL CHECK (pull_up_ohm > 0 AND pull_up_ohm <= 1e9),
  resolution       REAL CHECK (resolution > 0 AND resolution <= 1e9),
  CHECK ((left_behind_l IS NULL) = (left_behind_sd_l IS NULL)),
  CHECK ((unusable_l IS NULL) = (unusable_sd_l IS NULL))
) STRICT;

CREATE TABLE surge_margins (
  id     INTEGER NOT NULL REFERENCES vehicles (id),
  mode   TEXT NOT NULL CHECK (length(mode) > 0),
  litres REAL NOT NULL CHECK (litres BETWEEN 0 AND 1e9),
  PRIMARY KEY (id, mode)
) STRICT, WITHOUT ROWID;

CREATE TABLE modes (
  id                 INTEGER PRIMARY KEY REFERENCES entries (id),
  name               TEXT NOT NULL CHECK (length(name) > 0),
  stated_l_per_km    REAL CHECK (stated_l_per_km > 0 AND stated_l_per_km <= 1e9),
  stated_sd_l_per_km REAL CHECK (stated_sd_l_per_km BETWEEN 0 AND 1e9),
  CHECK ((stated_l_per_km IS NULL) = (stated_sd_l_per_km IS NULL))
) STRICT;

CREATE TABLE calibrations (
  id          INTEGER PRIMARY KEY REFERENCES entries (id),
  time        INTEGER NOT NULL CHECK (time BETWEEN -2208988800 AND 253402300799),
  zero_mark_l REAL NOT NULL CHECK (zero_mark_l BETWEEN 0 AND 1e9)
) STRICT;

CREATE TABLE calibration_points (
  id        INTEGER NOT NULL REFERENCES calibrations (id),
  position  INTEGER NOT NULL CHECK (position >= 0),
  added_l   REAL NOT NULL CHECK (added_l BETWEEN 0 AND 1e9),
  signal    REAL NOT NULL CHECK (signal BETWEEN -1e9 AND 1e9),
  signal2   REAL CHECK (signal2 BETWEEN -1e9 AND 1e9),
  signal_sd REAL CHECK (signal_sd BETWEEN 0 AND 1e9),
  readings  INTEGER NOT NULL CHECK (readings >= 1),
  PRIMARY KEY (id, position)
) STRICT, WITHOUT ROWID;
)sql";

static const char* const kUseTables = R"sql(
CREATE TABLE fills (
  id                 INTEGER PRIMARY KEY REFERENCES entries (id),
  time               INTEGER NOT NULL CHECK (time BETWEEN -2208988800 AND 253402300799),
  litres             REAL NOT NULL CHECK (litres > 0 AND litres <= 1e9),
  extent             TEXT NOT NULL CHECK (extent IN ('full', 'partial', 'neck')),
  odometer_km        REAL CHECK (odometer_km BETWEEN 0 AND 1e9),
  since_last_km      REAL CHECK (since_last_km BETWEEN 0 AND 1e9),
  odometer_reset     INTEGER NOT NULL CHECK (odometer_reset IN (0, 1)),
  price_per_l        REAL CHECK (price_per_l BETWEEN 0 AND 1e9),
  signal_before      REAL CHECK (signal_before BETWEEN -1e9 AND 1e9),
  blend              TEXT CHECK (length(blend) > 0),
  temperature_c      REAL CHECK (temperature_c BETWEEN -273.15 AND 1e9),
  displayed_l_per_km REAL CHECK (displayed_l_per_km > 0 AND displayed_l_per_km <= 1e9),
  ruling             TEXT CHECK (ruling IN ('counted', 'left-out'))
) STRICT;

CREATE TABLE trips (
  id       INTEGER PRIMARY KEY REFERENCES entries (id),
  time     INTEGER NOT NULL CHECK (time BETWEEN -2208988800 AND 253402300799),
  km       REAL NOT NULL CHECK (km BETWEEN 0 AND 1e9),
  mode     TEXT NOT NULL CHECK (length(mode) > 0),
  idle_min REAL CHECK (idle_min BETWEEN 0 AND 1e9),
  starts   INTEGER CHECK (starts BETWEEN 0 AND 1000000),
  CHECK (km > 0 OR coalesce(idle_min, 0) > 0)
) STRICT;

CREATE TABLE proofs (
  id               INTEGER PRIMARY KEY REFERENCES entries (id),
  time             INTEGER NOT NULL CHECK (time BETWEEN -2208988800 AND 253402300799),
  kind             TEXT NOT NULL CHECK (kind IN ('drained', 'base', 'stalled', 'past-zero')),
  litres           REAL CHECK (litres BETWEEN 0 AND 1e9),
  litres_sd        REAL CHECK (litres_sd BETWEEN 0 AND 1e9),
  left_behind_l    REAL CHECK (left_behind_l BETWEEN 0 AND 1e9),
  left_behind_sd_l REAL CHECK (left_behind_sd_l BETWEEN 0 AND 1e9),
  signal           REAL CHECK (signal BETWEEN -1e9 AND 1e9),
  km               REAL CHECK (km BETWEEN 0 AND 1e9),
  km_sd            REAL CHECK (km_sd BETWEEN 0 AND 1e9),
  mode             TEXT CHECK (length(mode) > 0),
  CHECK ((litres IS NULL) = (litres_sd IS NULL)),
  CHECK ((left_behind_l IS NULL) = (left_behind_sd_l IS NULL)),
  CHECK ((km IS NULL) = (km_sd IS NULL))
) STRICT;
)sql";

// For the list of the log (log_page.cpp). They hold nothing of their own, so a file
// with or without them is of the same schema.
static const char* const kIndexes = R"sql(
CREATE INDEX IF NOT EXISTS fills_time ON fills (time);
CREATE INDEX IF NOT EXISTS trips_time ON trips (time);
CREATE INDEX IF NOT EXISTS proofs_time ON proofs (time);
)sql";

// A table, and what makes its rows the same row.
struct Table {
    const char* name;
    const char* sameRow;
};

static const Table kTables[] = {
    {"entries", "id = NEW.id OR uuid = NEW.uuid"},
    {"vehicles", "id = NEW.id"},
    {"surge_margins", "id = NEW.id AND mode = NEW.mode"},
    {"modes", "id = NEW.id"},
    {"calibrations", "id = NEW.id"},
    {"calibration_points", "id = NEW.id AND position = NEW.position"},
    {"fills", "id = NEW.id"},
    {"trips", "id = NEW.id"},
    {"proofs", "id = NEW.id"},
};

const char* indexSql() { return kIndexes; }

// INSERT OR REPLACE deletes the older row without asking the DELETE triggers
// (unless recursive_triggers is on), so the row must not get that far.
std::string createSchemaSql()
{
    const std::string refuse = " BEGIN SELECT RAISE(ABORT, 'the logbook only grows'); END;\n";
    std::string sql = std::string(kLedger) + kCarTables + kUseTables + kIndexes;
    for (const Table& table : kTables) {
        const std::string name = table.name;
        for (const std::string action : {"UPDATE", "DELETE"})
            sql += "CREATE TRIGGER " + name + "_no_" + action + " BEFORE " + action + " ON " + name
                   + refuse;
        sql += "CREATE TRIGGER " + name + "_no_REPLACE BEFORE INSERT ON " + name
               + " WHEN EXISTS (SELECT 1 FROM " + name + " WHERE " + table.sameRow + ")" + refuse;
    }
    sql += "PRAGMA application_id = " + std::to_string(kApplicationId) + ";\n";
    sql += "PRAGMA user_version = " + std::to_string(kSchemaVersion) + ";\n";
    return sql;
}

} // namespace undermark::logbook
