// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_command.h"
#include "app/cli/terminal_words.h"

#include <cmath>
#include <cstdio>
#include <iostream>

namespace undermark {

void onRun(CLI::App& command, CliContext& context, std::function<Result<void>()> run)
{
    command.callback([&context, run = std::move(run)] { context.run = run; });
}

void addJson(CLI::App& command, CliContext& context)
{
    command.add_flag("--json", context.json, "print one JSON object instead of text");
}

namespace {

double numberOf(const std::string& flag, const std::string& text, const NumberRange& range)
{
    const Result<double> value = parseNumber(text, range);
    if (!value)
        throw CLI::ValidationError(flag, said(value.error()));
    return *value;
}

} // namespace

CLI::Option* addNumber(CLI::App& command, const std::string& flag, std::optional<double>& target,
                       const NumberRange& range, const std::string& help)
{
    return command
        .add_option_function<std::string>(
            flag, [&target, flag, range](const std::string& text) {
                target = numberOf(flag, text, range);
            },
            help)
        ->type_name("NUMBER");
}

CLI::Option* addCount(CLI::App& command, const std::string& flag, std::optional<int>& target,
                      const NumberRange& range, const std::string& help)
{
    return command
        .add_option_function<std::string>(
            flag, [&target, flag, range](const std::string& text) {
                const double value = numberOf(flag, text, range);
                if (value != std::floor(value) || value > 1e9)
                    throw CLI::ValidationError(flag, "a whole number is expected, found '" + text + "'");
                target = static_cast<int>(value);
            },
            help)
        ->type_name("COUNT");
}

void warn(const std::string& text) { std::cerr << "warning: " << text << '\n'; }

void warn(const Sentence& sentence)
{
    warn(said(sentence));
}

tl::unexpected<Error> wrongUse(std::string detail, std::string expected, std::string found)
{
    return failInput(Sentence::just(std::move(detail)), Sentence::just(std::move(expected)),
                     std::move(found));
}

void print(const Json& json) { std::cout << json.dump(2) << '\n'; }

const char* wordOf(LevelBound bound)
{
    return bound == LevelBound::exact ? "exact" : bound == LevelBound::atMost ? "at-most" : "at-least";
}

const char* wordOf(Severity severity)
{
    return severity == Severity::info ? "info" : severity == Severity::warning ? "warning" : "error";
}

std::string fixed(double value, int decimals) { return format("%.*f", decimals, value); }

} // namespace undermark
