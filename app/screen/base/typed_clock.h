// SPDX-License-Identifier: GPL-3.0-or-later
//
// A time of day as it is typed on a number pad: 830, 0830, 8.30 or 08:30; two digits of minutes, so that
// nothing is read in two ways.
#pragma once

#include "engine/planning/route.h"

#include <QString>
#include <optional>

namespace undermark {

// Nothing for what is no time of day, 00:00 to 24:00.
std::optional<Minutes> clockFrom(const QString& text);

} // namespace undermark
