// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/text_fields.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace undermark {

namespace {

constexpr std::string_view kBlanks = " \t\r\n";

} // namespace

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(kBlanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

std::string_view nextField(std::string_view& rest, char separator)
{
    const std::size_t end = rest.find(separator);
    const std::string_view field = rest.substr(0, end);
    rest = end == std::string_view::npos ? std::string_view() : rest.substr(end + 1);
    return field;
}

std::string_view nextWord(std::string_view& rest)
{
    rest.remove_prefix(std::min(rest.find_first_not_of(kBlanks), rest.size()));
    const std::string_view word = rest.substr(0, rest.find_first_of(kBlanks));
    rest.remove_prefix(word.size());
    return word;
}

std::optional<double> numberIn(std::string_view text)
{
    double value = 0.0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool whole = problem == std::errc{} && end == text.data() + text.size();
    return whole && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

std::size_t numbersIn(std::string_view line, std::span<double> out)
{
    std::size_t count = 0;
    for (bool more = true; more; ++count) {
        more = line.find(',') != std::string_view::npos;
        const std::optional<double> number = numberIn(trimmed(nextField(line, ',')));
        if (!number || count == out.size())
            return 0;
        out[count] = *number;
    }
    return count;
}

std::optional<std::uint32_t> wholeIn(std::string_view digits, int base)
{
    std::uint32_t value = 0;
    const auto [end, problem] =
        std::from_chars(digits.data(), digits.data() + digits.size(), value, base);
    const bool whole = problem == std::errc{} && end == digits.data() + digits.size();
    return whole && digits.size() <= 8 ? std::optional(value) : std::nullopt;
}

std::optional<std::size_t> hexBytesIn(std::string_view digits, std::span<std::uint8_t> out)
{
    if (digits.size() % 2 != 0 || digits.size() > 2 * out.size())
        return std::nullopt;
    for (std::size_t i = 0; 2 * i < digits.size(); ++i) {
        const auto byte = wholeIn(digits.substr(2 * i, 2), 16);
        if (!byte)
            return std::nullopt;
        out[i] = static_cast<std::uint8_t>(*byte);
    }
    return digits.size() / 2;
}

} // namespace undermark
