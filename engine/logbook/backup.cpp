// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/backup.h"

#include "engine/base/instant_text.h"
#include "engine/base/private_file.h"
#include "engine/logbook/logbook_impl.h"
#include "engine/logbook/whole_copy.h"

#include <algorithm>

namespace undermark {

namespace fs = std::filesystem;
using namespace logbook;

namespace {

// "20240531T170530Z"
std::string stamp(Instant now)
{
    std::string text = instantText(now) + "Z";
    std::erase_if(text, [](char c) { return c == '-' || c == ':'; });
    return text;
}

} // namespace

fs::path freeDatedName(const fs::path& start, Instant now)
{
    const std::string base = start.string() + "-" + stamp(now);
    fs::path name = base;
    for (int n = 2; fs::exists(name); ++n)
        name = base + "-" + std::to_string(n);
    return name;
}

Result<void> Logbook::copyTo(const fs::path& file) const
{
    return copyWhole(m_impl->database, file);
}

Result<fs::path> backUp(const Logbook& logbook, Instant now, int keep)
{
    const fs::path copy = freeDatedName(logbook.file().string() + ".backup", now);
    if (const auto copied = logbook.copyTo(copy); !copied)
        return fail(copied.error());
    const auto all = backupsOf(logbook.file());
    for (std::size_t i = static_cast<std::size_t>(std::max(keep, 1)); i < all.size(); ++i)
        removeLogbook(all[i]);
    return copy;
}

std::vector<fs::path> backupsOf(const fs::path& file)
{
    std::vector<fs::path> found;
    const std::string start = file.filename().string() + ".backup-";
    std::error_code none;
    const fs::path folder = file.has_parent_path() ? file.parent_path() : fs::path(".");
    for (const auto& entry : fs::directory_iterator(folder, none)) {
        const std::string name = entry.path().filename().string();
        if (name.starts_with(start) && !name.ends_with("-wal") && !name.ends_with("-shm")
            && !name.ends_with("-journal"))
            found.push_back(file.parent_path() / name);
    }
    // By length too: -10 is newer than -2.
    std::ranges::sort(found, [](const fs::path& a, const fs::path& b) {
        const auto key = [](const fs::path& p) { return p.string(); };
        const auto stampOf = [&](const fs::path& p) { return key(p).substr(0, key(p).rfind('Z')); };
        return std::tuple(stampOf(a), key(a).size(), key(a)) > std::tuple(stampOf(b), key(b).size(), key(b));
    });
    return found;
}

namespace {

// What is in the logbook's place, as a dated copy: through SQLite where it can be
// opened, byte for byte (its write-ahead log too) where not.
Result<fs::path> keepCurrent(const fs::path& file, Instant now)
{
    if (const auto current = Logbook::open(file, OpenMode::readWrite))
        return backUp(*current, now, 1'000'000);   // nothing is thrown away here
    else if (current.error().code == ErrorCode::busy)
        return fail(current.error());
    const fs::path kept = freeDatedName(file.string() + ".backup", now);
    std::error_code failed;
    fs::copy_file(file, kept, failed);
    if (!failed && fs::exists(file.string() + "-wal"))
        fs::rename(file.string() + "-wal", kept.string() + "-wal", failed);
    if (failed)
        return fail(ErrorCode::fileAccess, Sentence::just(failed.message()), {kept.string()});
    return kept;
}

// Closing the last connection moved the write-ahead log into the file. Where one is
// left, another program has the file open and would go on writing to one that is
// no more; and SQLite would take that log for the new file's.
Result<void> nobodyHasIt(const fs::path& file)
{
    if (!fs::exists(file.string() + "-wal"))
        return {};
    return fail(ErrorCode::busy,
                Sentence::of("another program has the logbook open: close it first"),
                {file.string()});
}

} // namespace

Result<fs::path> restore(const fs::path& backup, const fs::path& file, Instant now)
{
    // A whole and sound copy beside the logbook first; then one rename.
    const fs::path fresh = file.string() + ".restoring";
    removeLogbook(fresh);
    if (const auto copied = copySound(backup, fresh); !copied)
        return fail(copied.error());
    Result<fs::path> kept = fs::exists(file) ? keepCurrent(file, now) : fs::path();
    if (kept)
        if (const auto free = nobodyHasIt(file); !free)
            kept = fail(free.error());
    std::error_code failed;
    if (kept)
        fs::rename(fresh, file, failed);
    if (failed)
        kept = fail(ErrorCode::fileAccess, Sentence::just(failed.message()), {file.string()});
    if (!kept)
        removeLogbook(fresh);
    else if (const auto lasting = syncFolderOf(file); !lasting)
        return fail(lasting.error());
    return kept;
}

} // namespace undermark
