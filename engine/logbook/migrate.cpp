// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/migrate.h"

#include "engine/base/private_file.h"
#include "engine/logbook/header.h"
#include "engine/logbook/schema.h"
#include "engine/logbook/whole_copy.h"

#include <SQLiteCpp/Backup.h>

#include <algorithm>
#include <set>

namespace undermark::logbook {

namespace fs = std::filesystem;

namespace {

constexpr int kMostOldCopies = 9;

std::int64_t versionOf(SQLite::Database& database)
{
    return database.execAndGet("PRAGMA user_version").getInt64();
}

const MigrationStep* stepFrom(const Schema& schema, std::int64_t version)
{
    const auto step = std::ranges::find(schema.steps, version, &MigrationStep::from);
    return step == schema.steps.end() ? nullptr : &*step;
}

// A migration that failed and is tried again makes the same copy again: one is enough.
Result<void> keepOldFile(SQLite::Database& database, const fs::path& file, std::int64_t version)
{
    const std::string base = file.string() + ".schema-" + std::to_string(version);
    const fs::path fresh = base + ".writing";
    std::error_code failed;
    fs::remove(fresh, failed);
    if (const auto copied = copyWhole(database, fresh); !copied)
        return copied;
    for (int n = 1; n <= kMostOldCopies; ++n) {
        const fs::path name = n == 1 ? base : base + "-" + std::to_string(n);
        const bool taken = fs::exists(name, failed);
        if (taken && !sameContent(fresh, name))
            continue;
        if (taken)
            fs::remove(fresh, failed);
        else
            fs::rename(fresh, name, failed);
        return failed
                   ? fail(ErrorCode::fileAccess, Sentence::just(failed.message()), {name.string()})
                   : syncFolderOf(name);
    }
    fs::remove(fresh, failed);
    return fail(ErrorCode::fileAccess,
                Sentence::of("there are too many copies of older schemas beside the logbook"),
                {file.string()});
}

// Whoever may write keeps the copy, so that two programs do not make it at once. It is
// read through a connection of its own: SQLite does not copy from one that is writing.
Result<void> keepOldFileOnce(SQLite::Database& database, const fs::path& file, const Schema& schema)
{
    SQLite::Transaction writing(database, SQLite::TransactionBehavior::IMMEDIATE);
    const std::int64_t version = versionOf(database);
    if (!stepFrom(schema, version))   // nothing left to do, or no way
        return {};
    SQLite::Database reader(file.string(), SQLite::OPEN_READONLY);
    return keepOldFile(reader, file, version);
}

Result<void> takeStep(SQLite::Database& database, const fs::path& file, const MigrationStep& step)
{
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    if (versionOf(database) != step.from)   // another program was here first
        return {};
    database.exec(step.sql);
    database.exec("UPDATE schema_info SET readable_by = " + std::to_string(step.readableBy));
    database.exec("PRAGMA user_version = " + std::to_string(step.from + 1));
    if (SQLite::Statement(database, "PRAGMA foreign_key_check").executeStep())
        return fail(
            ErrorCode::damaged,
            Sentence::of(
                "rows of the logbook refer to rows that are not there; it was left as it is"),
            {file.string()});
    transaction.commit();
    return {};
}

constexpr const char* kCode = "SELECT sql FROM sqlite_master WHERE type IN ('view', 'trigger')";

std::set<std::string> codeIn(SQLite::Database& database)
{
    std::set<std::string> code;
    SQLite::Statement select(database, kCode);
    while (select.executeStep())
        code.insert(select.getColumn(0).getString());
    return code;
}

// Of the schema's text, the way SQLite writes it down: half of what opening a logbook costs.
std::set<std::string> ownCode(const Schema& schema)
{
    SQLite::Database memory(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    memory.exec(schema.create);
    return codeIn(memory);
}

Result<void> takeSteps(SQLite::Database& database, const fs::path& file, const Schema& schema)
{
    for (std::int64_t version = versionOf(database); version < schema.version;
         version = versionOf(database)) {
        const MigrationStep* step = stepFrom(schema, version);
        if (!step)
            return fail(ErrorCode::damaged,
                        Sentence::of("the logbook states schema %1, which no Undermark has "
                                     "written; it was left as it is",
                                     counted(version)),
                        {file.string()});
        if (const auto done = takeStep(database, file, *step); !done)
            return done;
    }
    return {};
}

} // namespace

const Schema& releasedSchema()
{
    static const Schema schema{kSchemaVersion, createSchemaSql(), releasedSteps()};
    return schema;
}

bool holdsForeignCode(SQLite::Database& database, const Schema& schema)
{
    static const std::set<std::string> released = ownCode(releasedSchema());
    const bool isReleased = &schema == &releasedSchema();
    return !std::ranges::includes(isReleased ? released : ownCode(schema), codeIn(database));
}

Result<void> migrate(SQLite::Database& database, const fs::path& file, const Schema& schema)
{
    if (versionOf(database) >= schema.version)
        return {};
    if (const auto kept = keepOldFileOnce(database, file, schema); !kept)
        return kept;
    return takeSteps(database, file, schema);
}

Result<SQLite::Database> migratedInMemory(SQLite::Database& database, const fs::path& file,
                                          const Schema& schema)
{
    SQLite::Database memory(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    SQLite::Backup(memory, database).executeStep(-1);
    if (const auto done = takeSteps(memory, file, schema); !done)
        return fail(done.error());
    memory.exec("PRAGMA query_only = ON");   // what is written here would be lost
    return memory;
}

} // namespace undermark::logbook
