// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/base/records.h"

#include <string>

namespace undermark {

// A kept level in one line, with its time.
std::string levelLine(const LevelRecord& level);

} // namespace undermark
