// SPDX-License-Identifier: GPL-3.0-or-later
//
// A file written whole or not at all, for its owner's eyes only; and names that last.
#pragma once

#include "engine/base/error.h"

#include <filesystem>
#include <string_view>

namespace undermark {

// Writes a new file (0600), synced before this returns. What is there already is
// never touched, and after an error nothing of the new file is left. fileAccess.
Result<void> writePrivateFile(const std::filesystem::path& file, std::string_view bytes);

// Makes what was created in or renamed into the folder of `file` outlast a power cut:
// a synced file may still lose its name. fileAccess.
Result<void> syncFolderOf(const std::filesystem::path& file);

} // namespace undermark
