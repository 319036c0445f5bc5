// SPDX-License-Identifier: GPL-3.0-or-later
//
// Dated copies of the logbook beside it, and the way back.
#pragma once

#include "engine/logbook/logbook.h"

namespace undermark {

inline constexpr int kKeptBackups = 10;

// START-YYYYMMDDTHHMMSSZ, or with -2, -3 … behind it where that is taken.
std::filesystem::path freeDatedName(const std::filesystem::path& start, Instant now);

// Copies the logbook to FILE.backup-YYYYMMDDTHHMMSSZ (with -2, -3 … where that is
// taken) and removes the oldest of its backups beyond `keep` (at least 1). The
// new file's path. Errors as Logbook::copyTo. Cost: that of writing the file once.
Result<std::filesystem::path> backUp(const Logbook& logbook, Instant now, int keep = kKeptBackups);

// The backups of a logbook file, newest first.
std::vector<std::filesystem::path> backupsOf(const std::filesystem::path& file);

// Puts a backup (or bundle) in the place of the logbook `file`. What was there is
// backed up first, or moved aside where it cannot be read; its path, empty where
// there was nothing. The backup itself stays. Errors: as Logbook::open of the
// backup, and nothing is changed; fileAccess; busy while another program has
// changes pending in `file`.
Result<std::filesystem::path> restore(const std::filesystem::path& backup,
                                      const std::filesystem::path& file, Instant now);

} // namespace undermark
