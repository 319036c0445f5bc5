// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/logbook/schema.h"

#include <string>

namespace undermark {

// Of the sources that this was built from, "-dirty" behind it where they are not quite that
// commit; "unknown" without git. Defined in the build folder, by app/commit.cmake.
extern const char* const kCommit;

// What --version prints: "PROGRAM 0.1.0 (commit 0123456789, logbook schema 2)".
inline std::string versionText(const std::string& program)
{
    return program + " " UNDERMARK_VERSION " (commit " + kCommit + ", logbook schema "
        + std::to_string(logbook::kSchemaVersion) + ")";
}

} // namespace undermark
