// SPDX-License-Identifier: GPL-3.0-or-later
//
// A time of day and a date, as they are typed on a number pad.
#pragma once

#include "engine/planning/route.h"

#include <QString>
#include <optional>

namespace undermark {

// 830, 0830, 8.30 or 08:30: two digits of minutes, so that nothing is read in two ways. Nothing for what is no
// time of day, 00:00 to 24:00.
std::optional<Minutes> clockFrom(const QString& text);

// 20260531, 2026.05.31 or 2026-05-31; nothing for what is no date.
std::optional<std::chrono::sys_days> dayFrom(const QString& text);

} // namespace undermark
