// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/format.h"
#include "engine/signals/can_frame.h"
#include "engine/signals/text_fields.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::size_t kStampDigits = 4;

// What an adapter says besides frames: that a frame was sent (z, Z), version, serial number,
// flags, nothing at all.
bool isAcknowledgement(std::string_view line)
{
    constexpr std::string_view kFirstLetters = "zZVvNF";
    return line.empty() || kFirstLetters.find(line.front()) != std::string_view::npos;
}

} // namespace

Heard parseSlcan(std::string_view line, TimedFrame& out)
{
    out = {};
    if (line.empty())
        return Heard::garbled; // too long to be one (line_cutter.h)
    // A bell says that a command was refused; it has no line end of its own.
    line.remove_prefix(std::min(line.find_first_not_of('\a'), line.size()));
    if (isAcknowledgement(line))
        return Heard::nothing;
    const char kind = line.front();
    if (kind != 't' && kind != 'T' && kind != 'r' && kind != 'R')
        return Heard::garbled;
    CanFrame& frame = out.frame;
    frame.extended = kind == 'T' || kind == 'R';
    const std::size_t idDigits = frame.extended ? 8 : 3;
    if (line.size() < 2 + idDigits)
        return Heard::garbled;
    const auto id = wholeIn(line.substr(1, idDigits), 16);
    const auto length = wholeIn(line.substr(1 + idDigits, 1), 10);
    line.remove_prefix(2 + idDigits);
    if (!id || !length || *length > frame.data.size()
        || *id > (frame.extended ? kMostExtendedId : kMostStandardId))
        return Heard::garbled;
    if (kind == 'r' || kind == 'R')
        return Heard::nothing;
    const std::size_t digits = std::size_t{2} * *length;
    if (line.size() != digits && line.size() != digits + kStampDigits)
        return Heard::garbled;
    frame.id = *id;
    frame.length = static_cast<std::uint8_t>(*length);
    const bool sound = hexBytesIn(line.substr(0, digits), frame.data).has_value()
        && (line.size() == digits || wholeIn(line.substr(digits), 16));
    return sound ? Heard::value : Heard::garbled;
}

std::string slcanLine(const CanFrame& frame)
{
    std::string line = frame.extended ? format("T%08X%d", frame.id, frame.length)
                                      : format("t%03X%d", frame.id, frame.length);
    for (const std::uint8_t byte : frame.bytes())
        line += format("%02X", byte);
    return line + '\r';
}

std::optional<std::string> slcanOpening(int kbit)
{
    constexpr std::array kSpeeds{10, 20, 50, 100, 125, 250, 500, 800, 1000};
    const auto found = std::ranges::find(kSpeeds, kbit);
    if (found == kSpeeds.end())
        return std::nullopt;
    return format("C\rS%d\rO\r", static_cast<int>(found - kSpeeds.begin()));
}

} // namespace undermark
