// SPDX-License-Identifier: GPL-3.0-or-later
//
// The options of a command. The library behind them takes 11 s to compile, once per file that
// includes it: only cli_options.cpp and cli_main.cpp do, all others know it by reference.
#pragma once

#include "engine/base/error.h"
#include "engine/base/record_words.h"
#include "engine/tables/csv_reader.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace CLI {
class App;
class Option;
}

namespace undermark {

struct CliContext;

// A command under `parent`.
CLI::App& addSubcommand(CLI::App& parent, const std::string& name, const std::string& help);
// A command that does nothing itself: one of its own commands has to follow it.
CLI::App& addGroup(CLI::App& parent, const std::string& name, const std::string& help);
// What --help says last.
void addFooter(CLI::App& command, const std::string& text);
// Says there which columns a table has, and which of them it must have.
void addColumns(CLI::App& command, const std::string& file, std::span<const CsvColumn> columns,
                const std::string& besides = {});

// Sets context.run when the user names this command.
void onRun(CLI::App& command, CliContext& context, std::function<Result<void>()> run);

// Below, `flag` is "--name", or "name" for an operand known by its place, or "name,--name" for
// both; `value` is what --help calls that which follows it. All are optional unless `required`,
// and `target` keeps what it holds where they are not given. `target` must live as long as the
// command line is parsed.
void required(CLI::Option& option);
// One that is there already; `help` says what holds without it.
void notRequired(CLI::App& command, const std::string& flag, const std::string& help);

CLI::Option& addFlag(CLI::App& command, const std::string& flag, bool& target,
                     const std::string& help);
// Adds --json.
void addJson(CLI::App& command, CliContext& context);

CLI::Option& addText(CLI::App& command, const std::string& flag, std::string& target,
                     const std::string& help, const std::string& value = "TEXT");
// One text each time that the flag is given.
void addTexts(CLI::App& command, const std::string& flag, std::vector<std::string>& target,
              const std::string& help, const std::string& value);
CLI::Option& addPath(CLI::App& command, const std::string& flag, std::filesystem::path& target,
                     const std::string& help, const std::string& value = "FILE");

// "NAME=VALUE" in its two halves, each maybe empty; nothing where no '=' is.
std::optional<std::pair<std::string, std::string>> halvesOf(const std::string& pair);

// The value must be a number in `range`: strict as in CSV files (point, no unit, finite).
CLI::Option& addNumber(CLI::App& command, const std::string& flag, std::optional<double>& target,
                       const NumberRange& range, const std::string& help);
// The same for a whole number, a billion at most.
CLI::Option& addCount(CLI::App& command, const std::string& flag, std::optional<int>& target,
                      const NumberRange& range, const std::string& help);
// The same for two numbers, one after the other.
void addTwoNumbers(CLI::App& command, const std::string& flag,
                   std::optional<std::pair<double, double>>& target, const NumberRange& range,
                   const std::string& help, const std::string& value);

// The value must be one of `words`; `take` is given it.
CLI::Option& addOneOf(CLI::App& command, const std::string& flag,
                      const std::vector<std::string>& words,
                      const std::function<void(const std::string&)>& take, const std::string& help,
                      const std::string& value = "TEXT");
CLI::Option& addChoice(CLI::App& command, const std::string& flag, std::string& target,
                       const std::vector<std::string>& words, const std::string& help);

// One of the words of an enumeration of the records (engine/base/record_words.h).
template <class E>
CLI::Option& addWordOf(CLI::App& command, const std::string& flag, std::string& target,
                       const std::string& help)
{
    return addChoice(command, flag, target, {kWords<E>.begin(), kWords<E>.end()}, help);
}

} // namespace undermark
