// SPDX-License-Identifier: GPL-3.0-or-later
//
// Looks at the first 100 bytes of a file, by plain reading: SQLite itself is
// only let near a file that this found to be a logbook, because merely opening
// a database may replay its journal. Layout: "Database File Format" of the
// SQLite documentation, section 1.3.
#pragma once

#include "engine/base/error.h"

#include <filesystem>

namespace undermark::logbook {

enum class FileKind {
    missing,
    empty,       // no bytes: a creation that was cut short before anything was kept
    logbook,     // ours, of this schema or a newer one
    foreign,     // something else
    damaged,     // ours, and broken
};

struct FileLook {
    FileKind kind = FileKind::missing;
    Sentence why; // foreign, damaged: one plain sentence without full stop
};

// Errors: fileAccess. Cost: one small read, whatever the file's size.
Result<FileLook> lookAt(const std::filesystem::path& file);

// Copies a damaged file to FILE.damaged-N beside it, unless an equal copy is there
// already; the copy's path, or empty where the folder cannot be written.
std::filesystem::path keepCopy(const std::filesystem::path& file);

// Byte for byte; false where either cannot be read.
bool sameContent(const std::filesystem::path& a, const std::filesystem::path& b);

} // namespace undermark::logbook
