// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_command.h"
#include "app/cli/json_names.h"
#include "app/cli/terminal_words.h"

#include <iostream>

namespace undermark {

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

void print(const Json& json) { std::cout << withUnitsNamed(json).dump(2, ' ', false, Json::error_handler_t::replace) << '\n'; }

const char* wordOf(LevelBound bound)
{
    return bound == LevelBound::exact ? "exact" : bound == LevelBound::atMost ? "at-most" : "at-least";
}

const char* wordOf(Severity severity)
{
    return severity == Severity::info ? "info" : severity == Severity::warning ? "warning" : "error";
}

std::string numberOf(std::size_t count, const std::string& thing)
{
    return std::to_string(count) + " " + thing + (count == 1 ? "" : "s");
}

std::string fixed(double value, int decimals) { return format("%.*f", decimals, value); }

std::string moneyText(double amount, int decimals, const std::string& currency)
{
    return currency.empty() ? fixed(amount, decimals) : fixed(amount, decimals) + " " + currency;
}

} // namespace undermark
