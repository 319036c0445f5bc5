// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/migrate.h"

namespace undermark::logbook {

namespace {

// Two tables of schema 1 get a condition of the whole table, which ALTER TABLE cannot add:
// the words are added to the table's text, as "Making Other Kinds Of Table Schema Changes"
// of SQLite's documentation (ALTER TABLE, section 7) has it. What is in force already
// cannot break them. The tables that are made afterwards have other programs read the
// text anew.
constexpr const char* kSchema2 = R"sql(
ALTER TABLE vehicles ADD COLUMN currency TEXT CHECK (currency GLOB '[A-Z][A-Z][A-Z]');
ALTER TABLE vehicles ADD COLUMN mass_kg REAL CHECK (mass_kg > 0 AND mass_kg <= 1e9);
ALTER TABLE calibrations ADD COLUMN tank TEXT CHECK (length(tank) > 0);
ALTER TABLE calibrations ADD COLUMN first_lobe_l REAL CHECK (first_lobe_l > 0 AND first_lobe_l <= 1e9);
ALTER TABLE calibrations ADD COLUMN second_lobe_l REAL CHECK (second_lobe_l > 0 AND second_lobe_l <= 1e9);
ALTER TABLE calibrations ADD COLUMN shape TEXT CHECK (shape IN ('box', 'cylinder', 'ellipse'));
ALTER TABLE calibrations ADD COLUMN shape_width_m REAL CHECK (shape_width_m > 0 AND shape_width_m <= 1e9);
ALTER TABLE calibrations ADD COLUMN shape_height_m REAL CHECK (shape_height_m > 0 AND shape_height_m <= 1e9);
ALTER TABLE calibrations ADD COLUMN shape_length_m REAL CHECK (shape_length_m > 0 AND shape_length_m <= 1e9);
ALTER TABLE calibrations ADD COLUMN shape_corner_m REAL CHECK (shape_corner_m BETWEEN 0 AND 1e9);
ALTER TABLE calibrations ADD COLUMN shape_tilt_deg REAL CHECK (shape_tilt_deg BETWEEN -1e9 AND 1e9);
ALTER TABLE calibrations ADD COLUMN shape_floor_signal REAL CHECK (shape_floor_signal BETWEEN -1e9 AND 1e9);
ALTER TABLE calibrations ADD COLUMN shape_roof_signal REAL CHECK (shape_roof_signal BETWEEN -1e9 AND 1e9);
ALTER TABLE calibrations ADD COLUMN note TEXT CHECK (length(note) > 0);
ALTER TABLE fills ADD COLUMN currency TEXT CHECK (currency GLOB '[A-Z][A-Z][A-Z]');
ALTER TABLE fills ADD COLUMN tank TEXT CHECK (length(tank) > 0);
ALTER TABLE trips ADD COLUMN journal_id TEXT CHECK (length(journal_id) > 0);
ALTER TABLE trips ADD COLUMN climb_m REAL CHECK (climb_m BETWEEN -1e9 AND 1e9);
ALTER TABLE proofs ADD COLUMN tank TEXT CHECK (length(tank) > 0);
PRAGMA writable_schema = ON;
UPDATE sqlite_master SET sql = replace(sql, '''proof'')',
    '''proof'', ''tank'', ''verification'', ''source'', ''pump'', ''photo'', ''hand-over'')')
  WHERE type = 'table' AND name = 'entries';
UPDATE sqlite_master SET sql = replace(sql, ')) STRICT', '),
  CHECK ((first_lobe_l IS NULL) = (second_lobe_l IS NULL)),
  CHECK ((shape IS NULL) + (shape_width_m IS NULL) + (shape_height_m IS NULL) + (shape_length_m IS NULL) + (shape_corner_m IS NULL) + (shape_tilt_deg IS NULL) + (shape_floor_signal IS NULL) + (shape_roof_signal IS NULL) IN (0, 8))
) STRICT') WHERE type = 'table' AND name = 'calibrations';
PRAGMA writable_schema = RESET;
CREATE TABLE tanks (
  id INTEGER PRIMARY KEY REFERENCES entries (id),
  name TEXT NOT NULL CHECK (length(name) > 0),
  capacity_l REAL NOT NULL CHECK (capacity_l > 0 AND capacity_l <= 1e9),
  feed TEXT NOT NULL CHECK (feed IN ('shared', 'chosen', 'pumped-over')),
  transfer_l_per_min REAL CHECK (transfer_l_per_min > 0 AND transfer_l_per_min <= 1e9),
  left_behind_l REAL CHECK (left_behind_l BETWEEN 0 AND 1e9),
  left_behind_sd_l REAL CHECK (left_behind_sd_l BETWEEN 0 AND 1e9),
  unusable_l REAL CHECK (unusable_l BETWEEN 0 AND 1e9),
  unusable_sd_l REAL CHECK (unusable_sd_l BETWEEN 0 AND 1e9),
  zero_mark_l REAL CHECK (zero_mark_l BETWEEN 0 AND 1e9),
  circuit TEXT NOT NULL CHECK (circuit IN ('direct', 'resistive', 'ratiometric', 'percent', 'counts')),
  signal_unit TEXT NOT NULL,
  supply_v REAL CHECK (supply_v > 0 AND supply_v <= 1e9),
  pull_up_ohm REAL CHECK (pull_up_ohm > 0 AND pull_up_ohm <= 1e9),
  resolution REAL CHECK (resolution > 0 AND resolution <= 1e9),
  CHECK ((left_behind_l IS NULL) = (left_behind_sd_l IS NULL)),
  CHECK ((unusable_l IS NULL) = (unusable_sd_l IS NULL))
) STRICT;
CREATE TABLE verifications (
  id INTEGER PRIMARY KEY REFERENCES entries (id),
  time INTEGER NOT NULL CHECK (time BETWEEN -2208988800 AND 253402300799),
  measured_sd_l REAL NOT NULL CHECK (measured_sd_l BETWEEN 0 AND 1e9),
  confidence REAL NOT NULL CHECK (confidence BETWEEN 0 AND 1),
  passed INTEGER NOT NULL CHECK (passed IN (0, 1)),
  tank TEXT CHECK (length(tank) > 0),
  note TEXT CHECK (length(note) > 0)
) STRICT;
CREATE TABLE verification_levels (
  id INTEGER NOT NULL REFERENCES verifications (id),
  position INTEGER NOT NULL CHECK (position >= 0),
  added_l REAL NOT NULL CHECK (added_l BETWEEN 0 AND 1e9),
  signal REAL NOT NULL CHECK (signal BETWEEN -1e9 AND 1e9),
  signal2 REAL CHECK (signal2 BETWEEN -1e9 AND 1e9),
  signal_sd REAL CHECK (signal_sd BETWEEN 0 AND 1e9),
  readings INTEGER NOT NULL CHECK (readings >= 1),
  predicted_l REAL NOT NULL CHECK (predicted_l BETWEEN -1e9 AND 1e9),
  predicted_sd_l REAL NOT NULL CHECK (predicted_sd_l BETWEEN 0 AND 1e9),
  agrees INTEGER NOT NULL CHECK (agrees IN (0, 1)),
  PRIMARY KEY (id, position)
) STRICT, WITHOUT ROWID;
CREATE TABLE sources (
  id INTEGER PRIMARY KEY REFERENCES entries (id),
  spec TEXT NOT NULL CHECK (length(spec) > 0),
  reading TEXT CHECK (length(reading) > 0),
  dbc TEXT CHECK (length(dbc) BETWEEN 1 AND 1048576),
  tank TEXT CHECK (length(tank) > 0)
) STRICT;
CREATE TABLE pumps (
  id INTEGER PRIMARY KEY REFERENCES entries (id),
  name TEXT NOT NULL CHECK (length(name) > 0),
  latitude REAL NOT NULL CHECK (latitude BETWEEN -90 AND 90),
  longitude REAL NOT NULL CHECK (longitude BETWEEN -180 AND 180),
  hours TEXT CHECK (length(hours) > 0),
  fuel TEXT CHECK (fuel IN ('petrol', 'diesel', 'lpg', 'ethanol')),
  note TEXT CHECK (length(note) > 0),
  price_per_l REAL CHECK (price_per_l BETWEEN 0 AND 1e9)
) STRICT;
CREATE TABLE photos (
  id INTEGER PRIMARY KEY REFERENCES entries (id),
  time INTEGER NOT NULL CHECK (time BETWEEN -2208988800 AND 253402300799),
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
  format TEXT NOT NULL CHECK (format IN ('jpeg', 'png')),
  step TEXT NOT NULL CHECK (step IN ('drained', 'base', 'reading', 'full', 'verification', 'other')),
  added_l REAL CHECK (added_l BETWEEN 0 AND 1e9),
  tank TEXT CHECK (length(tank) > 0),
  note TEXT CHECK (length(note) > 0)
) STRICT;
CREATE TABLE hand_overs (
  id INTEGER PRIMARY KEY REFERENCES entries (id),
  time INTEGER NOT NULL CHECK (time BETWEEN -2208988800 AND 253402300799),
  note TEXT CHECK (length(note) > 0)
) STRICT;
)sql";

// The new kind is a word of the ledger's table text, as above.
constexpr const char* kSchema3 = R"sql(
ALTER TABLE vehicles ADD COLUMN zero_since INTEGER CHECK (zero_since BETWEEN -2208988800 AND 253402300799);
ALTER TABLE calibrations ADD COLUMN zero_since INTEGER CHECK (zero_since BETWEEN -2208988800 AND 253402300799);
ALTER TABLE tanks ADD COLUMN zero_since INTEGER CHECK (zero_since BETWEEN -2208988800 AND 253402300799);
PRAGMA writable_schema = ON;
UPDATE sqlite_master SET sql = replace(sql, '''hand-over'')', '''hand-over'', ''level'')')
  WHERE type = 'table' AND name = 'entries';
PRAGMA writable_schema = RESET;
CREATE TABLE levels (
  id INTEGER PRIMARY KEY REFERENCES entries (id),
  time INTEGER NOT NULL CHECK (time BETWEEN -2208988800 AND 253402300799),
  signal REAL CHECK (signal BETWEEN -1e9 AND 1e9),
  signal2 REAL CHECK (signal2 BETWEEN -1e9 AND 1e9),
  signal_sd REAL CHECK (signal_sd BETWEEN 0 AND 1e9),
  usable_l REAL CHECK (usable_l BETWEEN 0 AND 1e9),
  usable_sd_l REAL CHECK (usable_sd_l BETWEEN 0 AND 1e9),
  added_l REAL CHECK (added_l BETWEEN -1e9 AND 1e9),
  added_sd_l REAL CHECK (added_sd_l BETWEEN 0 AND 1e9),
  odometer_km REAL CHECK (odometer_km BETWEEN 0 AND 1e9),
  origin TEXT NOT NULL CHECK (origin IN ('typed', 'followed')),
  journal_id TEXT CHECK (length(journal_id) > 0),
  tank TEXT CHECK (length(tank) > 0),
  note TEXT CHECK (length(note) > 0),
  CHECK ((usable_l IS NULL) = (usable_sd_l IS NULL)),
  CHECK ((added_l IS NULL) = (added_sd_l IS NULL)),
  CHECK (coalesce(signal, usable_l, added_l) IS NOT NULL),
  CHECK (signal IS NOT NULL OR coalesce(signal2, signal_sd) IS NULL)
) STRICT;
)sql";

// The rows of the new tables are not changed either; `key` tells the rows of an entry apart.
std::string onlyGrows(const std::string& table, const std::string& key = {})
{
    const std::string refuse = " BEGIN SELECT RAISE(ABORT, 'the logbook only grows'); END;\n";
    const std::string trigger = "CREATE TRIGGER " + table + "_no_";
    return trigger + "UPDATE BEFORE UPDATE ON " + table + refuse
           + trigger + "DELETE BEFORE DELETE ON " + table + refuse
           + trigger + "REPLACE BEFORE INSERT ON " + table + " WHEN EXISTS (SELECT 1 FROM " + table
           + " WHERE id = NEW.id" + (key.empty() ? "" : " AND " + key + " = NEW." + key) + ")" + refuse;
}

std::string toSchema2()
{
    return kSchema2 + onlyGrows("tanks") + onlyGrows("verifications")
           + onlyGrows("verification_levels", "position") + onlyGrows("sources") + onlyGrows("pumps")
           + onlyGrows("photos") + onlyGrows("hand_overs");
}

} // namespace

// A program of schema 1 would take what is of a second tank for the first one's, so it does
// not read the result; one of schema 2 would answer from an older full fill, or weigh a proof
// against another zero mark than its own.
std::span<const MigrationStep> releasedSteps()
{
    static const std::string second = toSchema2(), third = kSchema3 + onlyGrows("levels");
    static const MigrationStep steps[]{{1, second.c_str(), 2}, {2, third.c_str(), 3}};
    return steps;
}

} // namespace undermark::logbook
