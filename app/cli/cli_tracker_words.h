// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the tracker says, for `replay` and `watch`: as JSON and as a line.
#pragma once

#include "app/cli/cli_command.h"
#include "engine/tracking/tracker_types.h"

#include <array>

namespace undermark {

// "level", "consumption_only", …
const char* modeWord(TrackerMode mode);

// The lists of JSON that events go into, and which of them one goes into.
inline constexpr std::array kEventLists{"refuels",     "faults",      "faults_cleared", "gaps",
                                        "clock_jumps", "corrections", "stops", "transfers"};
const char* listOf(TrackerEventKind kind);
// `tanks`: the names of the further ones, in order of recording.
Json eventJson(const TrackerEvent& event, std::span<const std::string> tanks);

// "    1200 s  refuel of about 20.0 L …", for people.
std::string eventLine(const TrackerEvent& event, std::span<const std::string> tanks);

} // namespace undermark
