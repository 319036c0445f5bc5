// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/can_frame.h"
#include "engine/signals/text_fields.h"

#include <algorithm>

namespace undermark {

namespace {

bool readId(std::string_view digits, CanFrame& frame)
{
    const auto id = wholeIn(digits, 16);
    frame.extended = digits.size() == 8;
    if (!id || (digits.size() != 3 && digits.size() != 8))
        return false;
    frame.id = *id;
    return *id <= (frame.extended ? kMostExtendedId : kMostStandardId);
}

// Ids above 29 bits carry the mark of an error frame.
bool isErrorFrame(std::string_view digits)
{
    const auto id = wholeIn(digits, 16);
    return digits.size() == 8 && id && (*id & 0x20000000u) != 0 && *id <= 0x3FFFFFFFu;
}

// "7E8#03412F80", "7E8#R8", "7E8##1…" (FD).
Heard readLogged(std::string_view text, CanFrame& frame)
{
    const std::string_view id = nextField(text, '#');
    if (isErrorFrame(id))
        return Heard::nothing;
    if (!readId(id, frame))
        return Heard::garbled;
    if (text.starts_with('#') || text.starts_with('R'))
        return Heard::nothing;
    // Some logs put dots between the bytes.
    std::size_t count = 0;
    while (!text.empty()) {
        const std::size_t pair = std::min<std::size_t>(2, text.size());
        const auto byte = hexBytesIn(text.substr(0, pair), std::span(frame.data).subspan(count));
        if (!byte)
            return Heard::garbled;
        ++count;
        text.remove_prefix(pair);
        if (text.starts_with('.'))
            text.remove_prefix(1);
    }
    frame.length = static_cast<std::uint8_t>(count);
    return Heard::value;
}

// "7E8", "[4]", "03 41 2F 80", whatever follows the bytes.
Heard readShown(std::string_view id, std::string_view count, std::string_view rest, CanFrame& frame)
{
    if (count.size() < 3 || !count.ends_with(']'))
        return Heard::garbled;
    if (isErrorFrame(id))
        return Heard::nothing;
    const auto length = wholeIn(count.substr(1, count.size() - 2), 10);
    if (!length || !readId(id, frame))
        return Heard::garbled;
    if (*length > frame.data.size() || trimmed(rest).starts_with("remote"))
        return Heard::nothing;
    frame.length = static_cast<std::uint8_t>(*length);
    for (std::uint8_t& byte : std::span(frame.data).first(frame.length)) {
        if (hexBytesIn(nextWord(rest), std::span(&byte, 1)) != std::size_t{1})
            return Heard::garbled;
    }
    return Heard::value;
}

std::uint32_t busNumber(std::string_view name)
{
    std::uint32_t hash = 2166136261u; // FNV-1a
    for (const char c : name)
        hash = (hash ^ static_cast<unsigned char>(c)) * 16777619u;
    return hash;
}

} // namespace

Heard parseCandump(std::string_view line, TimedFrame& out)
{
    out = {};
    std::string_view word = nextWord(line);
    if (word.starts_with('(') && word.ends_with(')')) {
        const auto time = numberIn(word.substr(1, word.size() - 2));
        if (!time)
            return Heard::garbled;
        out.time = Seconds(*time);
        word = nextWord(line);
    }
    if (word.find('#') != std::string_view::npos)
        return readLogged(word, out.frame);
    // The bus, where there is one, stands first; before the count stands the id.
    const std::string_view bus = word;
    std::string_view id = word;
    for (word = nextWord(line); !word.empty() && !word.starts_with('['); word = nextWord(line)) {
        out.bus = busNumber(bus);
        if (word.find('#') != std::string_view::npos)
            return readLogged(word, out.frame);
        id = word;
    }
    return readShown(id, word, line, out.frame);
}

} // namespace undermark
