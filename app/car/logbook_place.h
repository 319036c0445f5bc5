// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where logbooks are kept: $XDG_DATA_HOME/undermark, as the XDG base directory
// specification has it. Without Qt, for both programs.
#pragma once

#include <filesystem>

namespace undermark {

std::filesystem::path defaultLogbook();   // logbook.sqlite
std::filesystem::path demoLogbook();      // demo.sqlite, made anew by each demo

} // namespace undermark
