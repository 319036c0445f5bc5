// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/whole_copy.h"

#include "engine/base/private_file.h"
#include "engine/logbook/database.h"
#include "engine/logbook/logbook.h"

#include <SQLiteCpp/Backup.h>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <unistd.h>

namespace undermark::logbook {

namespace fs = std::filesystem;

static tl::unexpected<Error> accessError(const fs::path& file)
{
    return fail(ErrorCode::fileAccess, Sentence::just(std::strerror(errno)), {file.string()});
}

static Result<void> syncFile(const fs::path& file)
{
    const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        return accessError(file);
    const auto synced = ::fsync(descriptor) == 0 ? Result<void>{} : accessError(file);
    ::close(descriptor);
    return synced;
}

Result<void> copyWhole(SQLite::Database& database, const fs::path& file)
{
    const int descriptor = ::open(file.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
    if (descriptor < 0)
        return accessError(file);
    ::close(descriptor);
    auto copied = guarded(file, [&]() -> Result<void> {
        SQLite::Database target(file.string(), SQLite::OPEN_READWRITE);
        SQLite::Backup(target, database).executeStep(-1);
        target.execAndGet("PRAGMA journal_mode = DELETE");   // one file, nothing beside it
        return {};
    });
    if (copied)
        copied = syncFile(file);
    if (copied)
        copied = syncFolderOf(file);
    if (!copied)
        removeLogbook(file);
    return copied;
}

Result<void> copySound(const fs::path& other, const fs::path& copy)
{
    const auto logbook = Logbook::open(other, OpenMode::readOnly);
    if (!logbook)
        return fail(logbook.error());
    const auto sound = logbook->checkIntegrity();
    return sound ? logbook->copyTo(copy) : sound;
}

void removeLogbook(const fs::path& file)
{
    std::error_code ignored;
    for (const char* suffix : {"", "-wal", "-shm", "-journal"})
        fs::remove(file.string() + suffix, ignored);
}

} // namespace undermark::logbook
