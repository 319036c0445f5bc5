// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/salvage.h"

#include "engine/base/private_file.h"
#include "engine/logbook/damaged_reader.h"
#include "engine/logbook/database.h"
#include "engine/logbook/header.h"
#include "engine/logbook/ledger.h"
#include "engine/logbook/uuid.h"
#include "engine/logbook/whole_copy.h"

#include <algorithm>
#include <map>
#include <set>

namespace undermark {

using namespace logbook;
namespace fs = std::filesystem;

namespace {

// Writes what was read into the new logbook, in the order of its row ids, so that a
// row's references are there before it.
class Salvager {
public:
    Salvager(const DamagedReader& reader, SQLite::Database& fresh, Instant now)
        : m_reader(reader), m_fresh(fresh), m_now(now)
    {
    }

    SalvageReport run()
    {
        for (const DamagedRow& row : m_reader.ledger()) {
            m_fresh.exec("SAVEPOINT row");
            m_madeForRow.reset();
            const bool taken = take(row);
            if (!taken && m_madeForRow)   // it goes with the row that it was made for
                m_standIns.erase(*m_madeForRow);
            m_fresh.exec(taken ? "RELEASE row" : "ROLLBACK TO row; RELEASE row");
            ++(taken ? m_report.taken : m_report.lost);
        }
        m_report.standIns = static_cast<std::int64_t>(m_standIns.size());
        addLostModes();
        addLostTanks();
        m_report.gaps = m_reader.gaps();
        return m_report;
    }

private:
    bool take(const DamagedRow& row)
    {
        try {
            DamagedRow whole = row;
            if (row.vehicle)
                whole.vehicle = vehicleFor(*row.vehicle);
            if (row.corrects && !mended(whole))
                return false;
            insertLedger(whole);
            if (!row.withdraws && !insertValues(row))
                return false;
            m_taken.insert(row.id);
            if (row.corrects && !whole.corrects)
                m_firstRow[*row.corrects] = row.id;
            return true;
        } catch (const SQLite::Exception&) {   // the logbook's rules refuse the row
            return false;
        }
    }

    // A correction whose first row is lost becomes the first row; a withdrawal goes
    // with what it withdrew.
    bool mended(DamagedRow& row) const
    {
        if (row.withdraws && !m_taken.contains(*row.withdraws))
            return false;
        if (m_taken.contains(*row.corrects))
            return true;
        const auto standIn = m_firstRow.find(*row.corrects);
        if (standIn != m_firstRow.end()) {
            row.corrects = standIn->second;
        } else if (row.withdraws) {
            return false;
        } else {
            row.corrects.reset();
            row.revision = 0;
        }
        return true;
    }

    void insertLedger(const DamagedRow& row)
    {
        SQLite::Statement insert(m_fresh, "INSERT INTO entries VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
        Cursor cursor(insert, 1);
        const auto putId = [&](const std::optional<RowId>& id) { id ? cursor.put(*id) : cursor.putNull(); };
        cursor.put(row.id);
        cursor.putText(row.uuid);
        cursor.putText(row.kind);
        putId(row.vehicle);
        cursor.put(row.recorded);
        putId(row.corrects);
        cursor.put(row.revision);
        putId(row.withdraws);
        insert.exec();
    }

    bool insertValues(const DamagedRow& row)
    {
        for (const TableShape* table : tablesOf(row.kind)) {
            const auto rows = m_reader.values(*table, row.id);
            if (!rows || (rows->empty() && !table->partOf))
                return false;
            for (const DamagedValues& values : *rows)
                insertRow(m_fresh, *table, row.id, values);
        }
        return true;
    }

    // The vehicle's row, or a stand-in of its own id: entries know it by nothing else.
    RowId vehicleFor(RowId id)
    {
        if (m_taken.contains(id) || m_standIns.contains(id))
            return id;
        DamagedRow row;
        row.id = id;
        row.uuid = newUuid();
        row.kind = tableOf<Vehicle>().kind;
        row.recorded = static_cast<std::int64_t>(m_now.time_since_epoch().count());
        insertLedger(row);
        SQLite::Statement insert(m_fresh, "INSERT INTO vehicles (id, name, fuel, capacity_l, circuit, "
                                          "signal_unit) VALUES (?, ?, 'petrol', ?, 'direct', 'V')");
        insert.bind(1, id);
        insert.bind(2, "Salvaged " + std::to_string(m_standIns.size() + 1));
        insert.bind(3, m_reader.largestFill(id).value_or(1.0));
        insert.exec();
        m_standIns.insert(id);
        m_madeForRow = id;
        return id;
    }

    // A trip keeps its mode by name: each name has to be there. A vehicle with no mode left
    // has the standard ones.
    void addLostModes()
    {
        addModes("SELECT DISTINCT e.vehicle, v.mode FROM (SELECT id, mode FROM trips UNION ALL "
                 "SELECT id, mode FROM proofs WHERE mode IS NOT NULL) AS v JOIN entries AS e ON e.id = v.id "
                 "WHERE NOT EXISTS (SELECT 1 FROM modes AS m JOIN entries AS o ON o.id = m.id "
                 "WHERE o.vehicle = e.vehicle AND m.name = v.mode)");
        std::string standard;
        for (const char* name : kStandardModes)
            standard += (standard.empty() ? "('" : ", ('") + std::string(name) + "')";
        addModes("WITH standard (mode) AS (VALUES " + standard + ") SELECT e.id, mode "
                 "FROM entries AS e, standard WHERE e.kind = 'vehicle' AND e.corrects IS NULL AND NOT EXISTS "
                 "(SELECT 1 FROM modes AS m JOIN entries AS o ON o.id = m.id WHERE o.vehicle = e.id)");
    }

    // Of each vehicle and name that `sql` selects.
    void addModes(const std::string& sql)
    {
        addNamed(sql, [](const std::string& name) { return Mode{name, std::nullopt}; });
    }

    // So does what is of a further tank. How large that was went with it: as large as the
    // largest fill that was pumped into it.
    void addLostTanks()
    {
        std::string naming;
        for (const std::string table : {"calibrations", "fills", "proofs", "verifications", "sources", "photos", "levels"})
            naming += (naming.empty() ? "" : " UNION ALL ") + ("SELECT id, tank FROM " + table)
                      + " WHERE tank IS NOT NULL";
        addNamed("SELECT DISTINCT e.vehicle, v.tank FROM (" + naming + ") AS v JOIN entries AS e ON e.id = v.id "
                 "WHERE NOT EXISTS (SELECT 1 FROM tanks AS t JOIN entries AS o ON o.id = t.id "
                 "WHERE o.vehicle = e.vehicle AND t.name = v.tank)",
                 [&](const std::string& name) {
                     SQLite::Statement largest(m_fresh, "SELECT max(litres) FROM fills WHERE tank = ?");
                     largest.bind(1, name);
                     const double litres = largest.executeStep() ? largest.getColumn(0).getDouble() : 0.0;
                     ExtraTank tank;
                     tank.name = name;
                     tank.capacity = Volume::fromLitres(litres > 0.0 ? litres : 1.0);
                     return tank;
                 });
    }

    void addNamed(const std::string& sql, const auto& standIn)
    {
        SQLite::Statement lost(m_fresh, sql);
        std::vector<std::pair<RowId, std::string>> names;
        while (lost.executeStep())
            names.emplace_back(lost.getColumn(0).getInt64(), lost.getColumn(1).getString());
        Writer<decltype(standIn(std::string()))> writer(m_fresh);
        for (const auto& [vehicle, name] : names) {
            LedgerRow row;
            row.vehicle = vehicle;
            row.recorded = m_now;
            writer.write(row, standIn(name));
            ++m_report.standIns;
        }
    }

    const DamagedReader& m_reader;
    SQLite::Database& m_fresh;
    Instant m_now;
    SalvageReport m_report;
    std::set<RowId> m_taken, m_standIns;
    std::optional<RowId> m_madeForRow;   // the stand-in that the row at hand asked for
    std::map<RowId, RowId> m_firstRow;   // of an entry whose own first row is lost
};

Result<SalvageReport> salvageInto(const fs::path& copy, const fs::path& fresh, Instant now)
{
    const auto reader = DamagedReader::open(copy);
    if (!reader)
        return fail(reader.error());
    auto database = openDatabase(fresh, OpenMode::createIfMissing, kBusyTimeout);
    if (!database)
        return fail(database.error());
    return guarded(fresh, [&]() -> Result<SalvageReport> {
        SQLite::Transaction transaction(*database, SQLite::TransactionBehavior::IMMEDIATE);
        const SalvageReport report = Salvager(*reader, *database, now).run();
        if (report.taken == 0)
            return fail(ErrorCode::damaged, Sentence::of("nothing of this logbook can be read"));
        transaction.commit();
        database->execAndGet("PRAGMA journal_mode = DELETE");   // one file, as a backup is
        return report;
    });
}

} // namespace

Result<SalvageReport> salvage(const fs::path& damaged, const fs::path& fresh, Instant now)
{
    const auto look = lookAt(damaged);
    if (!look)
        return fail(look.error());
    if (look->kind != FileKind::logbook && look->kind != FileKind::damaged)
        return fail(look->kind == FileKind::missing ? ErrorCode::fileAccess : ErrorCode::damaged,
                    look->why.empty() ? Sentence::of("there is no logbook") : look->why,
                    {damaged.string()});
    std::error_code failed;
    if (fs::exists(fs::symlink_status(fresh, failed)))
        return fail(ErrorCode::fileAccess, Sentence::of("the file is there already"),
                    {fresh.string()});
    // A copy is read, because opening a database may change it.
    const fs::path copy = fresh.string() + ".salvaging";
    removeLogbook(copy);
    fs::copy_file(damaged, copy, failed);
    if (!failed && fs::exists(damaged.string() + "-wal"))
        fs::copy_file(damaged.string() + "-wal", copy.string() + "-wal", failed);
    Result<SalvageReport> report =
        failed ? fail(ErrorCode::fileAccess, Sentence::just(failed.message()), {copy.string()})
               : salvageInto(copy, fresh, now);
    removeLogbook(copy);
    if (report)
        if (const auto lasting = syncFolderOf(fresh); !lasting)
            report = fail(lasting.error());
    if (!report) {
        removeLogbook(fresh);
        if (report.error().where.file.empty())
            report.error().where.file = damaged.string();
    }
    return report;
}

} // namespace undermark
