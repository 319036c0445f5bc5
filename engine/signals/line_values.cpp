// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/line_values.h"

#include "engine/signals/text_fields.h"

#include <algorithm>
#include <array>
#include <span>

namespace undermark {

namespace {

constexpr Seconds kGoodFor{2.0};
constexpr Seconds kDistanceGoodFor{10.0};

} // namespace

// A header names at least one channel, and holds no number.
bool LineValues::takeHeader(std::string_view line)
{
    std::vector<std::optional<Channel>> columns;
    std::optional<std::size_t> time;
    while (!line.empty()) {
        const std::string_view name = trimmed(nextField(line, ','));
        if (name.empty() || numberIn(name))
            return false;
        if (name == "t_s")
            time = columns.size();
        columns.push_back(channelNamed(name));
    }
    if (std::ranges::none_of(columns, [](const auto& column) { return column.has_value(); }))
        return false;
    m_columns = std::move(columns);
    m_time = time;
    return true;
}

Heard LineValues::takeCells(std::string_view line, Seconds now, std::vector<TimedValue>& out) const
{
    if (1 + static_cast<std::size_t>(std::ranges::count(line, ',')) != m_columns.size())
        return Heard::garbled;
    const std::size_t before = out.size();
    Seconds time = now;
    const auto refuse = [&] {
        out.resize(before);
        return Heard::garbled;
    };
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        const std::string_view cell = trimmed(nextField(line, ','));
        const auto number = numberIn(cell);
        const bool needed = m_time == i || m_columns[i];
        if (needed && !number && (m_time == i || !cell.empty()))
            return refuse();
        if (m_time == i)
            time = Seconds(*number);
        else if (m_columns[i] && number && !isPossible(*m_columns[i], *number))
            return refuse();
        else if (m_columns[i] && number)
            out.push_back({{}, *m_columns[i], *number, 0,
                           *m_columns[i] == Channel::distance ? kDistanceGoodFor : kGoodFor});
    }
    for (TimedValue& value : std::span(out).subspan(before))
        value.time = time;
    return out.size() > before ? Heard::value : Heard::nothing;
}

Heard LineValues::take(std::string_view line, Seconds now, std::vector<TimedValue>& out)
{
    if (takeHeader(line))
        return Heard::nothing;
    if (!m_columns.empty())
        return takeCells(line, now, out);
    std::array<double, 2> numbers{};
    const std::size_t count = numbersIn(line, numbers);
    for (std::size_t i = 0; i < count; ++i)
        out.push_back({now, i == 0 ? Channel::signal : Channel::signal2, numbers[i], 0, kGoodFor});
    return count > 0 ? Heard::value : Heard::garbled;
}

} // namespace undermark
