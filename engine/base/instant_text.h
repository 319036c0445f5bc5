// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/base/records.h"

#include <string>

namespace undermark {

// "2024-05-31T17:05:30", UTC, always 19 characters in the years 1000 to 9999 (ISO 8601).
std::string instantText(Instant time);

} // namespace undermark
