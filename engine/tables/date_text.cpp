// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/date_text.h"

#include <array>
#include <charconv>

namespace undermark {

namespace {

constexpr std::string_view kDigits = "0123456789";
constexpr std::string_view kDayPattern = "dddd-dd-dd";
constexpr std::string_view kMinutePattern = "dddd-dd-ddTdd:dd";
constexpr std::string_view kSecondPattern = "dddd-dd-ddTdd:dd:dd";

bool fits(std::string_view text, std::string_view pattern)
{
    if (text.size() != pattern.size())
        return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool digit = text[i] >= '0' && text[i] <= '9';
        const bool blankForT = pattern[i] == 'T' && text[i] == ' ';
        if (pattern[i] == 'd' ? !digit : (text[i] != pattern[i] && !blankForT))
            return false;
    }
    return true;
}

int digits(std::string_view text, std::size_t at, std::size_t count)
{
    int value = 0;
    std::from_chars(text.data() + at, text.data() + at + count, value);
    return value;
}

// "31", "5" and "2026" of "31.5.2026"; empty where it is not so.
std::array<std::string_view, 3> partsOf(std::string_view date)
{
    std::array<std::string_view, 3> parts;
    for (std::size_t i = 0; i < 3; ++i) {
        const std::size_t end = std::min(date.find_first_not_of(kDigits), date.size());
        parts[i] = date.substr(0, end);
        const bool isLast = i == 2;
        const bool separated = end < date.size() && std::string_view("./-").find(date[end]) != std::string_view::npos;
        if (isLast ? end != date.size() : !separated)
            return {};
        date.remove_prefix(isLast ? end : end + 1);
    }
    return parts;
}

} // namespace

Result<Instant> parseInstant(std::string_view text)
{
    const std::string_view given = text;
    if (text.ends_with('Z') && text.size() > kDayPattern.size())
        text.remove_suffix(1);
    const bool seconds = fits(text, kSecondPattern);
    const bool minutes = seconds || fits(text, kMinutePattern);
    if (!minutes && !fits(text, kDayPattern))
        return failInput(Sentence::of("this is not a date"), Sentence::of("YYYY-MM-DD"),
                         std::string(given));
    const std::chrono::year_month_day day{std::chrono::year(digits(text, 0, 4)),
                                          std::chrono::month(unsigned(digits(text, 5, 2))),
                                          std::chrono::day(unsigned(digits(text, 8, 2)))};
    const int hour = minutes ? digits(text, 11, 2) : 0;
    const int minute = minutes ? digits(text, 14, 2) : 0;
    const int second = seconds ? digits(text, 17, 2) : 0;
    if (!day.ok() || hour > 23 || minute > 59 || second > 59)
        return failInput(Sentence::of("there is no such day or time"), Sentence::of("YYYY-MM-DD"),
                         std::string(given));
    return std::chrono::sys_days(day) + std::chrono::hours(hour) + std::chrono::minutes(minute)
        + std::chrono::seconds(second);
}

Result<Instant> parseDate(std::string_view text, DateOrder order)
{
    if (order == DateOrder::yearFirst)
        return parseInstant(text);
    const bool dayFirst = order == DateOrder::dayFirst;
    const Sentence expected =
        dayFirst ? Sentence::of("day, month, year") : Sentence::of("month, day, year");
    const std::size_t end = std::min(text.find_first_of(" T"), text.size());
    const auto parts = partsOf(text.substr(0, end));
    const std::string_view day = parts[dayFirst ? 0 : 1], month = parts[dayFirst ? 1 : 0];
    if (day.empty() || day.size() > 2 || month.empty() || month.size() > 2 || parts[2].size() != 4)
        return failInput(Sentence::of("this is not a date"), expected, std::string(text));
    const auto two = [](std::string_view number) { return (number.size() == 1 ? "0" : "") + std::string(number); };
    auto time = parseInstant(std::string(parts[2]) + "-" + two(month) + "-" + two(day)
                             + std::string(text.substr(end)));
    if (!time) {
        time.error().expected = expected;
        time.error().found = std::string(text);
    }
    return time;
}

} // namespace undermark
