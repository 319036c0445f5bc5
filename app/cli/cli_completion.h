// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a shell offers when Tab is touched: taken from the commands and options themselves, so
// that a new one is offered without another line anywhere. Asked by
// assets/undermark-cli.bash, which calls `undermark-cli complete -- WORDS…`.
#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace undermark {

// The names of the commands that may follow this one, and the flags: its own and those of the
// commands above it, each once.
std::vector<std::string> commandsBelow(const CLI::App& command);
std::vector<std::string> flagsOf(const CLI::App& command);

// In place of words: the name of a file belongs here, which the shell knows better.
inline constexpr const char* kFileWanted = "/";

// All that may stand in place of the last of `words`, which are what was typed behind the
// program's name, the last one perhaps empty: commands, flags, the words of a choice, and from
// the logbook (--logbook among the words, or `logbook`) vehicles and driving modes. It is only
// read; where it cannot be, nothing of it is offered. Cost: opening the logbook, where it is asked.
std::vector<std::string> completions(const CLI::App& app, std::span<const std::string> words,
                                     const std::filesystem::path& logbook);

} // namespace undermark
