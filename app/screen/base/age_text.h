// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <chrono>

namespace undermark {

// How long ago something was: "just now", "5 min ago", "3 h ago", "67 days ago". A time that
// is still to come (the clock was set back) is "at an unknown time".
QString ageText(std::chrono::seconds age);

} // namespace undermark
