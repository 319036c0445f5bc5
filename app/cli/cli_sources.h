// SPDX-License-Identifier: GPL-3.0-or-later
//
// --source, --tank-source and --map, for `watch` and `vehicle source test`.
#pragma once

#include "app/car/live_sources.h"
#include "app/cli/cli_command.h"

namespace undermark {

struct SourceFlags : SourceOptions {
    std::vector<std::string> tankSources; // NAME=SOURCE
};
void addSourceFlags(CLI::App& command, SourceFlags& flags);

// The kind of fuel is that of the logbook's car, where there is one; its sources are heard
// where none is named. badInput where there are none at all.
Result<LiveSources> openSources(SourceFlags options, const CliContext& context);

// SIGINT and SIGTERM end the work instead of the program: true from then on.
bool stopAsked();
void catchStop();

// {"source", "frames", "values", "refused", "first_refused", "lost", "there"}
Json sourceJson(const LiveSources::Told& told);
// A line of the same, for people.
std::string sourceLine(const LiveSources::Told& told);

} // namespace undermark
