// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/log_page.h"

#include "engine/logbook/ledger.h"
#include "engine/logbook/logbook_impl.h"

#include <algorithm>
#include <array>

namespace undermark {

using namespace logbook;

namespace {

constexpr std::array kAllKinds{LogKind::fill, LogKind::trip, LogKind::proof, LogKind::calibration,
                               LogKind::level};

// By LogKind.
const char* valueTableOf(LogKind kind)
{
    const std::array<const char*, 5> tables{tableOf<Fill>().name, tableOf<Trip>().name,
                                            tableOf<Proof>().name, tableOf<Calibration>().name,
                                            tableOf<LevelRecord>().name};
    return tables.at(std::size_t(kind));
}

// Of each tank's calibrations only the latest is listed.
std::string latestCalibration()
{
    return "v.id = (SELECT c.id FROM calibrations AS c CROSS JOIN entries AS d ON d.id = c.id "
           "WHERE d.vehicle = ?1 AND c.tank IS v.tank AND " + inForceSql("d")
           + " ORDER BY c.time DESC, coalesce(d.corrects, d.id) DESC LIMIT 1)";
}

// The rows beyond the place in ?2 (time), ?3 (kind) and ?4 (order).
std::string beyond(bool newer)
{
    return newer ? " AND v.time >= ?2 AND (v.time > ?2 OR (sort, entry) < (?3, ?4))"
                 : " AND v.time <= ?2 AND (v.time < ?2 OR (sort, entry) > (?3, ?4))";
}

std::string keysOf(LogKind kind, const std::string& where)
{
    std::string sql = "SELECT v.time AS time, " + std::to_string(int(kind)) + " AS sort, "
                      "coalesce(e.corrects, e.id) AS entry, v.id AS id FROM "
                      + std::string(valueTableOf(kind)) + " AS v CROSS JOIN entries AS e ON e.id = v.id "
                      "WHERE e.vehicle = ?1 AND " + inForceSql("e") + where;
    return kind == LogKind::calibration ? sql + " AND " + latestCalibration() : sql;
}

// What the list is sorted by, and the row in force, of the kinds wanted.
std::string keys(std::optional<LogKind> kind, const std::string& where)
{
    if (kind)
        return keysOf(*kind, where);
    std::string sql;
    for (const LogKind each : kAllKinds)
        sql += (sql.empty() ? "" : " UNION ALL ") + keysOf(each, where);
    return sql;
}

// Each table is walked along its index of times and the walks are merged, so that
// SQLite stops at the page's last row.
std::string pageSql(const LogPageWish& wish)
{
    return keys(wish.kind, wish.from ? beyond(wish.newer) : std::string())
           + (wish.newer ? " ORDER BY time, sort DESC, entry DESC" : " ORDER BY time DESC, sort, entry")
           + " LIMIT ?5 OFFSET ?6";
}

void bindPlace(SQLite::Statement& statement, const std::optional<LogPlace>& place)
{
    if (!place)
        return;
    statement.bind(2, std::int64_t(place->time.time_since_epoch().count()));
    statement.bind(3, int(place->kind));
    statement.bind(4, place->order);
}

std::int64_t countRows(const SQLite::Database& database, RowId vehicle, std::optional<LogKind> kind,
                       const std::optional<LogPlace>& before)
{
    SQLite::Statement select(database, "SELECT count(*) FROM ("
                                           + keys(kind, before ? beyond(true) : std::string()) + ")");
    select.bind(1, vehicle);
    bindPlace(select, before);
    select.executeStep();
    return select.getColumn(0).getInt64();
}

// Values of one kind by row id.
template <class T>
class Values {
public:
    explicit Values(const SQLite::Database& database)
        : m_database(database),
          m_select(database, "SELECT " + tableOf<T>().names() + " FROM " + tableOf<T>().name
                                 + " WHERE id = ?")
    {
    }
    T read(RowId id)
    {
        m_select.reset();
        m_select.bind(1, id);
        m_select.executeStep();
        Cursor cursor(m_select, 0);
        T value = takeRow<T>(cursor);
        readParts(m_database, id, value);
        return value;
    }

private:
    const SQLite::Database& m_database;
    SQLite::Statement m_select;
};

// A page's rows: first where they stand, then what they hold.
class PageReader {
public:
    explicit PageReader(const SQLite::Database& database)
        : m_fills(database), m_trips(database), m_proofs(database), m_calibrations(database),
          m_levels(database),
          m_uuid(database, "SELECT uuid FROM entries WHERE id = ?")
    {
    }
    LogRow row(const SQLite::Statement& key)
    {
        const LogPlace place{Instant(std::chrono::seconds(key.getColumn(0).getInt64())),
                             LogKind(key.getColumn(1).getInt()), key.getColumn(2).getInt64()};
        m_uuid.reset();
        m_uuid.bind(1, place.order);
        m_uuid.executeStep();
        const RowId id = key.getColumn(3).getInt64();
        LogRow row{{m_uuid.getColumn(0).getString()}, place, {}};
        switch (place.kind) {
        case LogKind::fill: row.value = m_fills.read(id); break;
        case LogKind::trip: row.value = m_trips.read(id); break;
        case LogKind::proof: row.value = m_proofs.read(id); break;
        case LogKind::calibration: row.value = m_calibrations.read(id); break;
        case LogKind::level: row.value = m_levels.read(id); break;
        }
        return row;
    }

private:
    Values<Fill> m_fills;
    Values<Trip> m_trips;
    Values<Proof> m_proofs;
    Values<Calibration> m_calibrations;
    Values<LevelRecord> m_levels;
    SQLite::Statement m_uuid;
};

// Where the entry stands now, if it is in force.
std::optional<LogPlace> placeOf(const SQLite::Database& database, const EntryId& id)
{
    const auto entry = findEntry(database, id);
    if (!entry)
        return std::nullopt;
    const auto row = rowInForce(database, entry->id);
    for (const LogKind kind : kAllKinds) {
        SQLite::Statement select(database, std::string("SELECT time FROM ") + valueTableOf(kind)
                                               + " WHERE id = ?");
        select.bind(1, row.value_or(0));
        if (select.executeStep())
            return LogPlace{Instant(std::chrono::seconds(select.getColumn(0).getInt64())), kind,
                            entry->id};
    }
    return std::nullopt;
}

// Runs `action` (database, row id of the vehicle) on one state of the file. A file that
// was taken away can still be read through an open handle; what it holds is nobody's
// logbook any more.
template <class T, class Action>
Result<T> readList(SQLite::Database& database, const std::filesystem::path& file,
                   const EntryId& vehicle, Action action)
{
    return guarded(file, [&]() -> Result<T> {
        std::error_code error;
        if (!std::filesystem::exists(file, error))
            return fail(ErrorCode::fileAccess, Sentence::of("the logbook is not there any more"),
                        {file.string()});
        SQLite::Transaction snapshot(database);
        const auto owner = vehicleOf(database, vehicle);
        if (!owner)
            return fail(owner.error());
        return action(database, owner->id);
    });
}

} // namespace

Result<LogPage> Logbook::logPage(const EntryId& vehicle, const LogPageWish& wish) const
{
    const auto read = [&](SQLite::Database& database, RowId owner) -> Result<LogPage> {
        LogPage page{{}, stateOf(database)};
        SQLite::Statement select(database, pageSql(wish));
        select.bind(1, owner);
        bindPlace(select, wish.from);
        select.bind(5, wish.rows);
        select.bind(6, wish.skip);
        PageReader reader(database);
        while (select.executeStep())
            page.rows.push_back(reader.row(select));
        if (wish.newer)
            std::ranges::reverse(page.rows);
        return page;
    };
    return readList<LogPage>(m_impl->database, m_impl->file, vehicle, read);
}

Result<LogCount> Logbook::logCount(const EntryId& vehicle, std::optional<LogKind> kind) const
{
    const auto read = [&](SQLite::Database& database, RowId owner) -> Result<LogCount> {
        return LogCount{countRows(database, owner, kind, std::nullopt), stateOf(database)};
    };
    return readList<LogCount>(m_impl->database, m_impl->file, vehicle, read);
}

Result<std::int64_t> Logbook::logRow(const EntryId& vehicle, std::optional<LogKind> kind,
                                     const EntryId& entry, const LogPlace& place) const
{
    const auto read = [&](SQLite::Database& database, RowId owner) -> Result<std::int64_t> {
        return countRows(database, owner, kind, placeOf(database, entry).value_or(place));
    };
    return readList<std::int64_t>(m_impl->database, m_impl->file, vehicle, read);
}

} // namespace undermark
