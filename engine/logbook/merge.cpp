// SPDX-License-Identifier: GPL-3.0-or-later
//
// Two devices' logbooks made one. What is in force follows from the set of rows
// alone (logbook.h), so merging is nothing but taking in the rows that are missing.
#include "engine/logbook/logbook_impl.h"
#include "engine/logbook/record_tables.h"
#include "engine/logbook/whole_copy.h"

#include <sqlite3.h>

#include <map>

namespace undermark {

using namespace logbook;

namespace {

// A row's references are to rows before it, so the ledger is taken in by what may
// refer to what: vehicles, first rows, corrections, withdrawals. The ids of the two
// files differ; a row is known by its UUID.
constexpr const char* kLedgerSteps[] = {
    "theirs.corrects IS NULL AND theirs.vehicle IS NULL",
    "theirs.corrects IS NULL AND theirs.vehicle IS NOT NULL",
    "theirs.corrects IS NOT NULL AND theirs.withdraws IS NULL",
    "theirs.withdraws IS NOT NULL",
};

// Twenty years of fills and trips are some 3 MB.
constexpr std::uintmax_t kMostBytes = 256u << 20;

std::string ours(const char* reference)
{
    return std::string("(SELECT mine.id FROM main.entries AS mine JOIN other.entries AS its "
                       "ON its.uuid = mine.uuid WHERE its.id = theirs.") + reference + ")";
}

std::int64_t takeLedger(SQLite::Database& database)
{
    std::int64_t added = 0;
    for (const char* step : kLedgerSteps)
        added += database.exec(
            "INSERT INTO main.entries (uuid, kind, vehicle, recorded, corrects, revision, withdraws) "
            "SELECT theirs.uuid, theirs.kind, " + ours("vehicle") + ", theirs.recorded, "
            + ours("corrects") + ", theirs.revision, " + ours("withdraws")
            + " FROM other.entries AS theirs WHERE " + step
            + " AND theirs.uuid NOT IN (SELECT uuid FROM main.entries) ORDER BY theirs.id");
    return added;
}

// The values of the rows that takeLedger() added.
void takeValues(SQLite::Database& database, std::int64_t lastOfOurs)
{
    for (const TableShape* table : valueTables())
        database.exec("INSERT INTO main." + std::string(table->name) + " (id, " + table->names()
                      + ") SELECT mine.id, " + table->names("theirs.")
                      + " FROM main.entries AS mine JOIN other.entries AS its ON its.uuid = mine.uuid "
                        "JOIN other." + table->name + " AS theirs ON theirs.id = its.id WHERE mine.id > "
                      + std::to_string(lastOfOurs));
}

std::int64_t count(SQLite::Database& database, const std::string& sql)
{
    return database.execAndGet(sql.c_str()).getInt64();
}

// Both files' ledgers must say the same of a row that both have, and every row
// must have found what it refers to; else somebody has tampered with one of them.
bool contradicts(SQLite::Database& database)
{
    return count(database,
                   "SELECT EXISTS (SELECT 1 FROM other.entries AS theirs JOIN main.entries AS mine "
                   "ON mine.uuid = theirs.uuid WHERE mine.kind <> theirs.kind "
                   "OR mine.recorded <> theirs.recorded OR mine.revision <> theirs.revision "
                   "OR (mine.vehicle IS NULL) <> (theirs.vehicle IS NULL) "
                   "OR (mine.corrects IS NULL) <> (theirs.corrects IS NULL) "
                   "OR (mine.withdraws IS NULL) <> (theirs.withdraws IS NULL))");
}

// A file that is gone at both ends of a merge.
struct Temporary {
    explicit Temporary(std::filesystem::path file) : path(std::move(file)) { remove(); }
    ~Temporary() { remove(); }
    Temporary(const Temporary&) = delete;
    Temporary& operator=(const Temporary&) = delete;
    void remove() const
    {
        std::error_code ignored;
        std::filesystem::remove(path, ignored);
    }
    std::filesystem::path path;
};

// The other file, attached; detached whatever happens.
class Attached {
public:
    Attached(SQLite::Database& database, const std::filesystem::path& file) : m_database(database)
    {
        SQLite::Statement attach(database, "ATTACH ? AS other");
        attach.bind(1, file.string());
        attach.exec();
    }
    ~Attached() { m_database.tryExec("DETACH other"); }
    Attached(const Attached&) = delete;
    Attached& operator=(const Attached&) = delete;

private:
    SQLite::Database& m_database;
};

} // namespace

Result<MergeReport> Logbook::merge(const std::filesystem::path& other)
{
    // Opening tells a logbook from anything else; a copy of it is taken in, so that
    // the other file is only read, whoever writes to it meanwhile.
    const std::filesystem::path copy = m_impl->file.string() + ".merging";
    const Temporary temporary(copy);
    std::error_code ignored;
    if (const auto size = std::filesystem::file_size(other, ignored); !ignored && size > kMostBytes)
        return fail(ErrorCode::badInput, Sentence::of("the bundle is too large"), {other.string()},
                    Sentence::of("%1 bytes at most", counted(kMostBytes)), std::to_string(size));
    if (const auto copied = copySound(other, copy); !copied)
        return fail(copied.error());
    const auto tampered = [&] {
        return fail(ErrorCode::badInput,
                    Sentence::of("this holds rows that no Undermark has written"),
                    {other.string()});
    };
    try {
        SQLite::Database& database = m_impl->database;
        const Attached attached(database, copy);
        SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
        const std::int64_t last = count(database, "SELECT coalesce(max(id), 0) FROM main.entries");
        MergeReport report;
        report.added = takeLedger(database);
        report.known = count(database, "SELECT count(*) FROM other.entries") - report.added;
        if (report.known < 0 || contradicts(database))
            return tampered();
        takeValues(database, last);
        transaction.commit();
        std::map<std::string, int> names;
        if (const auto all = vehicles())
            for (const Entry<Vehicle>& vehicle : *all)
                if (++names[vehicle.value.name] == 2)
                    report.sameName.push_back(vehicle.value.name);
        return report;
    } catch (const SQLite::Exception& exception) {
        if ((exception.getErrorCode() & 0xFF) == SQLITE_CONSTRAINT)
            return tampered();
        return fail(toError(exception, m_impl->file));
    }
}

} // namespace undermark
