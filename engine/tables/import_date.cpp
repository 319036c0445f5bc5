// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/import_date.h"

#include "engine/tables/fills_csv.h"

#include <array>

namespace undermark {

static constexpr std::string_view kDigits = "0123456789";

// "31", "5" and "2026" of "31.5.2026"; empty where it is not so.
static std::array<std::string_view, 3> partsOf(std::string_view date)
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
