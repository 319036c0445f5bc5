// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/can_frame.h"
#include "engine/signals/text_fields.h"

#include <algorithm>
#include <array>

namespace undermark {

namespace {

// "64", "18FEFC31x": by the base of the header; extended where an x stands behind it.
bool readAscId(std::string_view word, int base, CanFrame& frame)
{
    frame.extended = word.ends_with('x');
    if (frame.extended)
        word.remove_suffix(1);
    const auto id = wholeIn(word, base);
    frame.id = id.value_or(0);
    return id && *id <= (frame.extended ? kMostExtendedId : kMostStandardId);
}

// "d 8 01 A0 …", whatever follows the bytes.
Heard readAscData(std::string_view rest, int base, CanFrame& frame)
{
    const std::string_view kind = nextWord(rest);
    if (kind == "r") // remote
        return Heard::nothing;
    const auto length = wholeIn(nextWord(rest), 16);
    if (kind != "d" || !length || *length > frame.data.size())
        return Heard::garbled;
    frame.length = static_cast<std::uint8_t>(*length);
    for (std::uint8_t& byte : std::span(frame.data).first(frame.length)) {
        const auto value = wholeIn(nextWord(rest), base);
        if (!value || *value > 0xFF)
            return Heard::garbled;
        byte = static_cast<std::uint8_t>(*value);
    }
    return Heard::value;
}

} // namespace

Heard AscReader::takeHeader(std::string_view line)
{
    constexpr std::array<std::string_view, 6> kKnown{"date", "internal", "no", "Begin", "End", "//"};
    const std::string_view first = nextWord(line);
    if (first == "base") {
        const std::string_view base = nextWord(line);
        if (base != "hex" && base != "dec")
            return Heard::garbled;
        m_base = base == "hex" ? 16 : 10;
        nextWord(line); // "timestamps"
        m_relative = nextWord(line) == "relative";
        return Heard::nothing;
    }
    const bool known = std::ranges::any_of(
        kKnown, [&](std::string_view word) { return first.starts_with(word); });
    return known ? Heard::nothing : Heard::garbled;
}

Heard AscReader::take(std::string_view line, TimedFrame& out)
{
    out = {};
    std::string_view rest = line;
    const auto time = numberIn(nextWord(rest));
    if (!time)
        return takeHeader(line);
    m_time = m_relative ? m_time + *time : *time;
    out.time = Seconds(m_time);
    const auto bus = wholeIn(nextWord(rest), 10);
    if (!bus) // an event, with words: start of measurement, FD, a trigger
        return Heard::nothing;
    out.bus = *bus;
    const std::string_view id = nextWord(rest);
    if (id == "ErrorFrame" || id == "Statistic:")
        return Heard::nothing;
    const std::string_view direction = nextWord(rest);
    if (!readAscId(id, m_base, out.frame) || (direction != "Rx" && direction != "Tx" && direction != "TxRq"))
        return Heard::garbled;
    return readAscData(rest, m_base, out.frame);
}

} // namespace undermark
