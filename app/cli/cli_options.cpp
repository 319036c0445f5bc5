// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_options.h"

#include "app/cli/cli_command.h"
#include "app/cli/terminal_words.h"

#include <CLI/CLI.hpp>

#include <cmath>

namespace undermark {

namespace {

double numberFrom(const std::string& flag, const std::string& text, const NumberRange& range)
{
    const Result<double> value = parseNumber(text, range);
    if (!value)
        throw CLI::ValidationError(flag, said(value.error()));
    return *value;
}

int countOf(const std::string& flag, const std::string& text, const NumberRange& range)
{
    const double value = numberFrom(flag, text, range);
    if (value != std::floor(value) || value > 1e9)
        throw CLI::ValidationError(flag, "a whole number is expected, found '" + text + "'");
    return static_cast<int>(value);
}

template <class T>
CLI::Option& addParsed(CLI::App& command, const std::string& flag, std::optional<T>& target,
                       const NumberRange& range, const std::string& help,
                       T (*parse)(const std::string&, const std::string&, const NumberRange&),
                       const char* value)
{
    const auto take = [&target, flag, range, parse](const std::string& text) {
        target = parse(flag, text, range);
    };
    return *command.add_option_function<std::string>(flag, take, help)->type_name(value);
}

} // namespace

CLI::App& addSubcommand(CLI::App& parent, const std::string& name, const std::string& help)
{
    return *parent.add_subcommand(name, help);
}

CLI::App& addGroup(CLI::App& parent, const std::string& name, const std::string& help)
{
    CLI::App& group = addSubcommand(parent, name, help);
    group.require_subcommand(1);
    return group;
}

void addFooter(CLI::App& command, const std::string& text) { command.footer(text); }

void addColumns(CLI::App& command, const std::string& file, std::span<const CsvColumn> columns,
                const std::string& besides)
{
    std::string needed, others;
    for (const CsvColumn& column : columns) {
        std::string& list = column.required ? needed : others;
        list += (list.empty() ? "" : ", ") + std::string(column.name);
    }
    addFooter(command, "Columns of " + file + ", in any order:\n  must be there: " + needed
                           + (besides.empty() ? "" : ", " + besides) + "\n  may be there: " + others
                           + "\nSee man undermark-formats.");
}

void onRun(CLI::App& command, CliContext& context, std::function<Result<void>()> run)
{
    command.callback([&context, run = std::move(run)] { context.run = run; });
}

void required(CLI::Option& option) { option.required(); }

void notRequired(CLI::App& command, const std::string& flag, const std::string& help)
{
    command.get_option(flag)->required(false)->description(help);
}

CLI::Option& addFlag(CLI::App& command, const std::string& flag, bool& target,
                     const std::string& help)
{
    return *command.add_flag(flag, target, help);
}

void addJson(CLI::App& command, CliContext& context)
{
    addFlag(command, "--json", context.json, "print one JSON object instead of text");
}

CLI::Option& addText(CLI::App& command, const std::string& flag, std::string& target,
                     const std::string& help, const std::string& value)
{
    return *command.add_option(flag, target, help)->type_name(value);
}

void addTexts(CLI::App& command, const std::string& flag, std::vector<std::string>& target,
              const std::string& help, const std::string& value)
{
    command.add_option(flag, target, help)->type_name(value)->allow_extra_args(false);
}

CLI::Option& addPath(CLI::App& command, const std::string& flag, std::filesystem::path& target,
                     const std::string& help, const std::string& value)
{
    return *command.add_option(flag, target, help)->type_name(value);
}

CLI::Option& addNumber(CLI::App& command, const std::string& flag, std::optional<double>& target,
                       const NumberRange& range, const std::string& help)
{
    return addParsed(command, flag, target, range, help, numberFrom, "NUMBER");
}

CLI::Option& addCount(CLI::App& command, const std::string& flag, std::optional<int>& target,
                      const NumberRange& range, const std::string& help)
{
    return addParsed(command, flag, target, range, help, countOf, "COUNT");
}

void addTwoNumbers(CLI::App& command, const std::string& flag,
                   std::optional<std::pair<double, double>>& target, const NumberRange& range,
                   const std::string& help, const std::string& value)
{
    command
        .add_option_function<std::vector<std::string>>(
            flag, [&target, flag, range](const std::vector<std::string>& texts) {
                target.emplace(numberFrom(flag, texts.at(0), range), numberFrom(flag, texts.at(1), range));
            },
            help)
        ->expected(2)
        ->type_name(value);
}

CLI::Option& addOneOf(CLI::App& command, const std::string& flag,
                      const std::vector<std::string>& words,
                      const std::function<void(const std::string&)>& take, const std::string& help,
                      const std::string& value)
{
    return *command.add_option_function<std::string>(flag, take, help)
                ->type_name(value)
                ->check(CLI::IsMember(words));
}

CLI::Option& addChoice(CLI::App& command, const std::string& flag, std::string& target,
                       const std::vector<std::string>& words, const std::string& help)
{
    return addOneOf(command, flag, words, [&target](const std::string& word) { target = word; }, help);
}

std::optional<std::pair<std::string, std::string>> halvesOf(const std::string& pair)
{
    const std::size_t equals = pair.find('=');
    if (equals == std::string::npos)
        return std::nullopt;
    return std::pair(pair.substr(0, equals), pair.substr(equals + 1));
}

} // namespace undermark
