// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/database.h"

#include "engine/logbook/header.h"
#include "engine/logbook/schema.h"

#include <sqlite3.h>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <thread>
#include <unistd.h>

namespace undermark::logbook {

namespace fs = std::filesystem;

namespace {

constexpr std::chrono::milliseconds kBusyPause(5);

// An empty file that only its owner can read, in a folder that is made if need
// be. That another program made it meanwhile is fine.
Result<void> createFile(const fs::path& file)
{
    std::error_code error;
    if (file.has_parent_path())
        fs::create_directories(file.parent_path(), error);
    if (error)
        return fail(ErrorCode::fileAccess,
                    Sentence::of("the folder cannot be made: %1", error.message()),
                    {file.string()});
    const int descriptor = ::open(file.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
    if (descriptor < 0 && errno != EEXIST)
        return fail(ErrorCode::fileAccess, Sentence::just(std::strerror(errno)), {file.string()});
    if (descriptor >= 0)
        ::close(descriptor);
    return {};
}

std::int64_t integer(SQLite::Database& database, const char* sql)
{
    return database.execAndGet(sql).getInt64();
}

// Schema and identification appear in one transaction, so the file is either
// still empty or a whole logbook. Two programs may try at once: the second one
// waits and finds it done.
void createSchema(SQLite::Database& database, const Schema& schema)
{
    if (integer(database, "PRAGMA application_id") != 0)
        return;
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    if (integer(database, "PRAGMA application_id") == 0) {
        database.exec(schema.create);
        transaction.commit();
    }
}

// SQLite itself does not wait here for another program.
void useWriteAheadLog(SQLite::Database& database, std::chrono::milliseconds busyTimeout)
{
    const auto deadline = std::chrono::steady_clock::now() + busyTimeout;
    while (database.execAndGet("PRAGMA journal_mode").getString() != "wal") {
        try {
            database.execAndGet("PRAGMA journal_mode = WAL");
        } catch (const SQLite::Exception& exception) {
            if ((exception.getErrorCode() & 0xFF) != SQLITE_BUSY || std::chrono::steady_clock::now() >= deadline)
                throw;
            std::this_thread::sleep_for(kBusyPause);
        }
    }
}

// FULL syncs the write-ahead log at every commit: what was acknowledged is kept.
void prepareForWriting(SQLite::Database& database, std::chrono::milliseconds busyTimeout)
{
    database.exec("PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON");
    useWriteAheadLog(database, busyTimeout);
}

// Indexes make the list quicker and nothing else: where they cannot be made (the disk is
// full, another program is writing), the logbook is opened all the same.
void makeMissingIndexes(SQLite::Database& database)
{
    try {
        database.exec(indexSql());
    } catch (const SQLite::Exception&) {
    }
}

// Opened for reading only, SQLite leaves an empty write-ahead log and its index
// behind, because only a writer may delete them. So the file is opened as by a
// writer that is forbidden to write, and closing it tidies up. Not where the log
// holds something: closing would then move that into the file.
int openFlags(const fs::path& file, OpenMode mode)
{
    std::error_code error;
    const auto pending = fs::file_size(file.string() + "-wal", error);
    const bool mustNotTidy = mode == OpenMode::readOnly && !error && pending > 0;
    return mustNotTidy ? SQLite::OPEN_READONLY : SQLite::OPEN_READWRITE;
}

// A newer program says in the file which older ones may still read it.
Result<void> checkSchema(SQLite::Database& database, const fs::path& file, OpenMode mode,
                         const Schema& schema)
{
    if (integer(database, "PRAGMA application_id") != kApplicationId)
        return fail(ErrorCode::damaged, Sentence::of("this is not a logbook"), {file.string()});
    const std::int64_t version = integer(database, "PRAGMA user_version");
    if (version <= schema.version)
        return {};
    const bool readable = integer(database, "SELECT readable_by FROM schema_info") <= schema.version;
    if (readable && mode == OpenMode::readOnly)
        return {};
    return fail(ErrorCode::newerSchema,
                readable ? Sentence::of("a newer Undermark wrote this logbook (schema %1, this "
                                        "program knows %2); this one can read it, but not write",
                                        counted(version), counted(schema.version))
                         : Sentence::of("a newer Undermark wrote this logbook (schema %1, this "
                                        "program knows %2); please update this one",
                                        counted(version), counted(schema.version)),
                {file.string()});
}

// What cannot be mended by writing is copied, unless nothing may be written at all.
Error damagedWithCopy(const fs::path& file, Sentence detail, OpenMode mode)
{
    if (mode != OpenMode::readOnly)
        if (const fs::path copy = keepCopy(file); !copy.empty())
            detail = Sentence::of("%1, with a copy in %2", detail, copy.filename().string());
    return Error{ErrorCode::damaged, withWhatToDo(detail), {file.string()}};
}

Error refusal(const fs::path& file, const FileLook& look, OpenMode mode)
{
    Sentence detail = Sentence::of("%1; it was left as it is", look.why);
    return look.kind == FileKind::damaged
               ? damagedWithCopy(file, std::move(detail), mode)
               : Error{ErrorCode::damaged, std::move(detail), {file.string()}};
}

// The file as it must be before SQLite may open it.
Result<void> prepareFile(const fs::path& file, OpenMode mode)
{
    const auto look = lookAt(file);
    if (!look)
        return fail(look.error());
    const bool nothingThere = look->kind == FileKind::missing || look->kind == FileKind::empty;
    if (nothingThere && mode == OpenMode::createIfMissing)
        return createFile(file);
    if (look->kind == FileKind::missing)
        return fail(ErrorCode::fileAccess, Sentence::of("there is no logbook"), {file.string()});
    if (look->kind == FileKind::empty)
        return fail(ErrorCode::damaged, Sentence::of("this is not a logbook: the file is empty"),
                    {file.string()});
    if (look->kind != FileKind::logbook)
        return fail(refusal(file, *look, mode));
    return {};
}

} // namespace

Sentence withWhatToDo(const Sentence& detail)
{
    return Sentence::of("%1; undermark-cli can take out what is readable, or bring a backup back",
                        detail);
}

Error toError(const SQLite::Exception& exception, const fs::path& file)
{
    switch (exception.getErrorCode() & 0xFF) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Error{ErrorCode::busy,
                     Sentence::of("another program is writing to the logbook"),
                     {file.string()}};
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return Error{
            ErrorCode::damaged,
            withWhatToDo(Sentence::of("the logbook is damaged: %1", std::string(exception.what()))),
            {file.string()}};
    case SQLITE_READONLY:
        return Error{ErrorCode::fileAccess,
                     Sentence::of("the logbook can be read, but not written"),
                     {file.string()}};
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
    case SQLITE_IOERR:
    case SQLITE_FULL:
        return Error{ErrorCode::fileAccess, Sentence::just(exception.what()), {file.string()}};
    default:
        return Error{ErrorCode::internal, Sentence::just(exception.what()), {file.string()}};
    }
}

static Result<SQLite::Database> openPrepared(const fs::path& file, OpenMode mode,
                                             std::chrono::milliseconds busyTimeout,
                                             const Schema& schema)
{
    SQLite::Database database(file.string(), openFlags(file, mode),
                              static_cast<int>(busyTimeout.count()));
    if (mode == OpenMode::readOnly)
        database.exec("PRAGMA query_only = ON");
    // Trusts nothing that a prepared file may carry in its schema.
    database.exec("PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON");
    if (mode == OpenMode::createIfMissing)
        createSchema(database, schema);
    if (const auto checked = checkSchema(database, file, mode, schema); !checked)
        return fail(checked.error());
    if (holdsForeignCode(database, schema))
        return fail(ErrorCode::damaged,
                    Sentence::of("this holds views or triggers that no Undermark has "
                                 "written; it was left as it is"),
                    {file.string()});
    if (mode == OpenMode::readOnly)
        return integer(database, "PRAGMA user_version") < schema.version
                   ? migratedInMemory(database, file, schema)
                   : Result<SQLite::Database>(std::move(database));
    prepareForWriting(database, busyTimeout);
    if (const auto done = migrate(database, file, schema); !done)
        return fail(done.error());
    makeMissingIndexes(database);
    return database;
}

Result<SQLite::Database> openDatabase(const fs::path& file, OpenMode mode,
                                      std::chrono::milliseconds busyTimeout, const Schema& schema)
{
    if (const auto prepared = prepareFile(file, mode); !prepared)
        return fail(prepared.error());
    try {
        return openPrepared(file, mode, busyTimeout, schema);
    } catch (const SQLite::Exception& exception) {
        const Error error = toError(exception, file);
        if (error.code != ErrorCode::damaged)
            return fail(error);
        return fail(damagedWithCopy(file,
                                    Sentence::of("the logbook is damaged: %1; it was left as it is",
                                                 std::string(exception.what())),
                                    mode));
    }
}

} // namespace undermark::logbook
