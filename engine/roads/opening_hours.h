// SPDX-License-Identifier: GPL-3.0-or-later
//
// When a place on the map is open: the part of the `opening_hours` notation of OpenStreetMap
// (specification of the key, "Key:opening_hours/specification") that fuel stations use:
//
//   24/7 · Mo-Fr 06:00-22:00 · Sa,Su 08:00-12:00,14:00-18:00 · Apr-Oct Mo-Su 07:00-21:00 ·
//   22:00-06:00 (into the next day) · Su off · PH off · rules joined by ";" (a later one
//   replaces an earlier one on its days) or "," (it adds to it)
//
// What is not understood (years, weeks, days of a month, sunrise, open ends, comments, fallbacks),
// and what readers understand in different ways (a span past midnight among several rules, an
// addition to what is closed), makes the whole unknown; it is never guessed. Which days are public or school holidays is not known here:
// rules for them are read and do not count, and `namesHolidays` says that there are any.
#pragma once

#include <chrono>
#include <optional>
#include <string_view>
#include <vector>

namespace undermark {

class OpeningHours {
public:
    // Minutes since the day's midnight, `from` below `to`; `to` up to 2 * 1440 (into the next day).
    struct Span {
        int from = 0;
        int to = 0;
        friend auto operator<=>(const Span&, const Span&) = default;
    };

    // Nothing where the text is not understood. Cost: linear in the text.
    static std::optional<OpeningHours> parse(std::string_view text);

    // Open at this minute (0 to 1439) of this day, of the place's own time.
    bool isOpen(std::chrono::year_month_day day, int minute) const;

    // When it is open on this calendar day, from 0 to 1440, in order, without overlap.
    std::vector<Span> on(std::chrono::year_month_day day) const;

    bool namesHolidays() const { return m_namesHolidays; }

    struct Rule {
        unsigned weekdays = 0x7f; // bit 0 is Monday
        unsigned months = 0xfff;  // bit 0 is January
        std::vector<Span> spans;  // empty: closed
        bool adds = false;        // to the rules before it
        bool holidays = false;    // for holidays only
    };

private:
    // What begins on this day.
    std::vector<Span> beginning(std::chrono::year_month_day day) const;

    std::vector<Rule> m_rules;
    bool m_namesHolidays = false;
};

} // namespace undermark
