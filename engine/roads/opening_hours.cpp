// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/opening_hours.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace undermark {

namespace {

using Rule = OpeningHours::Rule;
using Span = OpeningHours::Span;

constexpr int kDay = 24 * 60;
constexpr std::array<std::string_view, 7> kWeekdays{"Mo", "Tu", "We", "Th", "Fr", "Sa", "Su"};
constexpr std::array<std::string_view, 12> kMonths{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                   "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

// Reads from left to right; what is not understood leaves `sound` false for good.
class HoursReader {
public:
    explicit HoursReader(std::string_view text) : m_text(text) { skipSpace(); }

    bool atEnd() const { return m_at == m_text.size(); }
    bool isAt(std::string_view word) const { return m_text.substr(m_at).starts_with(word); }

    bool take(std::string_view word)
    {
        if (!isAt(word))
            return false;
        m_at += word.size();
        skipSpace();
        return true;
    }

    // A word as a whole, in any case: "off" but not "office".
    bool takeWord(std::string_view word)
    {
        const std::string_view found = m_text.substr(m_at, word.size());
        const std::size_t behind = m_at + word.size();
        const bool same = std::ranges::equal(found, word, {}, [](unsigned char c) { return std::tolower(c); });
        if (!same || (behind < m_text.size() && std::isalnum(static_cast<unsigned char>(m_text[behind]))))
            return false;
        m_at = behind;
        skipSpace();
        return true;
    }

    bool isAtOneOf(const auto& words) const
    {
        return std::ranges::any_of(words, [this](std::string_view word) { return isAt(word); });
    }

    template <std::size_t N>
    std::optional<unsigned> takeOneOf(const std::array<std::string_view, N>& words)
    {
        for (unsigned i = 0; i < N; ++i) {
            if (take(words[i]))
                return i;
        }
        return std::nullopt;
    }

    // One to `digits` digits.
    std::optional<int> takeNumber(int digits)
    {
        int value = 0;
        int count = 0;
        while (count < digits && !atEnd() && std::isdigit(static_cast<unsigned char>(m_text[m_at]))) {
            value = 10 * value + (m_text[m_at++] - '0');
            ++count;
        }
        skipSpace();
        return count > 0 ? std::optional(value) : std::nullopt;
    }

    bool isAtDigit() const
    {
        return !atEnd() && std::isdigit(static_cast<unsigned char>(m_text[m_at]));
    }

    // A time of day, and not the day of a month.
    bool isAtTime() const
    {
        std::size_t behind = m_at;
        while (behind < m_text.size() && std::isdigit(static_cast<unsigned char>(m_text[behind])))
            ++behind;
        return behind > m_at && m_text.substr(behind).starts_with(":");
    }

private:
    void skipSpace()
    {
        while (!atEnd() && m_text[m_at] == ' ')
            ++m_at;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
};

// "Mo-Fr", or "Su" alone, as bits; it may pass the end ("Fr-Mo").
template <std::size_t N>
std::optional<unsigned> takeRange(HoursReader& reader, const std::array<std::string_view, N>& words)
{
    const auto first = reader.takeOneOf(words);
    const auto last = first && reader.take("-") ? reader.takeOneOf(words) : first;
    if (!first || !last)
        return std::nullopt;
    unsigned bits = 0;
    for (unsigned i = *first;; i = (i + 1) % N) {
        bits |= 1u << i;
        if (i == *last)
            return bits;
    }
}

// "06:00" or "6:00", up to 24:00, and up to 48:00 where a span ends.
std::optional<int> takeTime(HoursReader& reader, int mostHours)
{
    const auto hours = reader.takeNumber(2);
    if (!hours || !reader.take(":"))
        return std::nullopt;
    const auto minutes = reader.takeNumber(2);
    if (!minutes || *minutes > 59 || *hours * 60 + *minutes > mostHours * 60)
        return std::nullopt;
    return *hours * 60 + *minutes;
}

// "08:00-12:00,14:00-18:00". A comma that no digit follows is left: another rule begins.
bool takeSpans(HoursReader& reader, std::vector<Span>& spans, bool& commaLeft)
{
    commaLeft = false;
    do {
        if (!reader.isAtDigit()) {
            commaLeft = true;
            return !spans.empty();
        }
        const auto from = takeTime(reader, 24);
        if (!from || *from == kDay || !reader.take("-"))
            return false;
        auto to = takeTime(reader, 48);
        if (!to || reader.isAt("+") || reader.isAt("/"))
            return false;
        if (*to <= *from)
            *to += kDay;
        if (*to - *from > kDay)
            return false;
        spans.push_back({*from, *to});
    } while (reader.take(","));
    return true;
}

bool takeMonths(HoursReader& reader, Rule& rule)
{
    rule.months = 0;
    do {
        const auto months = takeRange(reader, kMonths);
        if (!months)
            return false;
        rule.months |= *months;
    } while (reader.take(","));
    reader.take(":");
    return !reader.isAtDigit() || reader.isAtTime(); // else "Apr 01-Oct 15"
}

// "Mo-Fr,Su", "Mo-Fr,PH", "PH": `holidays` says whether any are named.
bool takeWeekdays(HoursReader& reader, Rule& rule, bool& holidays)
{
    unsigned bits = 0;
    do {
        if (reader.take("PH") || reader.take("SH")) {
            holidays = true;
            continue;
        }
        const auto weekdays = takeRange(reader, kWeekdays);
        if (!weekdays)
            return false;
        bits |= *weekdays;
    } while (reader.take(","));
    rule.holidays = bits == 0;
    if (bits != 0)
        rule.weekdays = bits;
    return true;
}

// The days of a rule; false where they are not understood. `days` is set where any are named.
bool takeDays(HoursReader& reader, Rule& rule, bool& days, bool& holidays)
{
    if (reader.isAtOneOf(kMonths)) {
        days = true;
        if (!takeMonths(reader, rule))
            return false;
    }
    if (!reader.isAtOneOf(kWeekdays) && !reader.isAt("PH") && !reader.isAt("SH"))
        return true;
    days = true;
    return takeWeekdays(reader, rule, holidays);
}

bool overlap(const Rule& a, const Rule& b)
{
    return !a.holidays && !b.holidays && (a.weekdays & b.weekdays) && (a.months & b.months);
}

bool sameDays(const Rule& a, const Rule& b)
{
    return a.weekdays == b.weekdays && a.months == b.months;
}

// Where evaluators do not agree: a span into a day with a rule of its own, a day that is closed
// and opened again later in the text, days that are told twice, and a rule in place of a sum.
bool readersDiffer(const std::vector<Rule>& rules)
{
    const auto passesMidnight = [](const Rule& rule) {
        return std::ranges::any_of(rule.spans, [](const Span& span) { return span.to > kDay; });
    };
    if (rules.size() > 1 && std::ranges::any_of(rules, passesMidnight))
        return true;
    for (auto later = rules.begin(); later != rules.end(); ++later) {
        const bool differs = std::any_of(rules.begin(), later, [&](const Rule& earlier) {
            return overlap(earlier, *later) && !later->spans.empty() &&
                   (earlier.spans.empty() || (!later->adds && (earlier.adds || sameDays(earlier, *later))));
        });
        if (differs)
            return true;
    }
    return false;
}

} // namespace

std::optional<OpeningHours> OpeningHours::parse(std::string_view text)
{
    OpeningHours hours;
    HoursReader reader(text);
    bool adds = false;
    while (!reader.atEnd()) {
        Rule rule;
        rule.adds = adds;
        adds = false;
        bool days = false;
        bool holidays = false;
        bool comma = false;
        const bool always = reader.take("24/7");
        if (!always && !takeDays(reader, rule, days, holidays))
            return std::nullopt;
        hours.m_namesHolidays = hours.m_namesHolidays || holidays;
        bool timed = always;
        if (!always && reader.isAtDigit()) {
            if (!takeSpans(reader, rule.spans, comma))
                return std::nullopt;
            timed = true;
        }
        const bool closed = reader.takeWord("off") || reader.takeWord("closed");
        const bool open = !closed && reader.takeWord("open");
        if (!timed && !closed && !open && !days)
            return std::nullopt;
        if (closed && (timed || comma)) // a part of the day cut out: not understood
            return std::nullopt;
        if (rule.spans.empty() && !closed)
            rule.spans.push_back({0, kDay});
        hours.m_rules.push_back(std::move(rule));
        if (comma || reader.take(","))
            adds = true;
        else if (!reader.atEnd() && !reader.take(";"))
            return std::nullopt;
        if (adds && (reader.atEnd() || closed)) // an addition to what is closed: evaluators differ
            return std::nullopt;
    }
    if (hours.m_rules.empty() || readersDiffer(hours.m_rules))
        return std::nullopt;
    return hours;
}

std::vector<Span> OpeningHours::beginning(std::chrono::year_month_day day) const
{
    const unsigned weekday = std::chrono::weekday(std::chrono::sys_days(day)).iso_encoding() - 1;
    const unsigned month = static_cast<unsigned>(day.month()) - 1;
    std::vector<Span> spans;
    for (const Rule& rule : m_rules) {
        if (rule.holidays || !(rule.weekdays >> weekday & 1u) || !(rule.months >> month & 1u))
            continue;
        if (!rule.adds || rule.spans.empty()) // what is closed is never an addition
            spans.clear();
        spans.insert(spans.end(), rule.spans.begin(), rule.spans.end());
    }
    return spans;
}

std::vector<Span> OpeningHours::on(std::chrono::year_month_day day) const
{
    const std::chrono::year_month_day before = std::chrono::sys_days(day) - std::chrono::days(1);
    std::vector<Span> spans;
    for (const Span& span : beginning(day))
        spans.push_back({span.from, std::min(span.to, kDay)});
    for (const Span& span : beginning(before)) {
        if (span.to > kDay)
            spans.push_back({0, span.to - kDay});
    }
    std::ranges::sort(spans);
    std::vector<Span> merged;
    for (const Span& span : spans) {
        if (!merged.empty() && span.from <= merged.back().to)
            merged.back().to = std::max(merged.back().to, span.to);
        else
            merged.push_back(span);
    }
    return merged;
}

bool OpeningHours::isOpen(std::chrono::year_month_day day, int minute) const
{
    return std::ranges::any_of(on(day), [minute](const Span& span) {
        return minute >= span.from && minute < span.to;
    });
}

} // namespace undermark
