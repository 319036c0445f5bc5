// SPDX-License-Identifier: GPL-3.0-or-later
//
// One data frame of a CAN bus (ISO 11898-1, classic: 8 bytes at most), and the texts that
// carry frames. Frames without data for us (remote, error, FD) are Heard::nothing.
#pragma once

#include "engine/signals/sample.h"

#include <array>
#include <optional>
#include <span>
#include <string>

namespace undermark {

struct CanFrame {
    std::uint32_t id = 0;     // 11 bits, or 29 where extended
    bool extended = false;
    std::uint8_t length = 0;  // 0 to 8
    std::array<std::uint8_t, 8> data{};

    std::span<const std::uint8_t> bytes() const { return std::span(data).first(length); }
    friend bool operator==(const CanFrame&, const CanFrame&) = default;
};

// Frames whose ids agree in the bits of the mask.
struct CanFilter {
    std::uint32_t id = 0, mask = 0;
    bool extended = false;

    bool passes(const CanFrame& frame) const
    {
        return frame.extended == extended && ((frame.id ^ id) & mask) == 0;
    }
};

struct TimedFrame {
    std::optional<Seconds> time; // since any start; nothing: it is now
    std::uint32_t bus = 0;       // which of several buses in one recording; any number
    CanFrame frame;
};

inline constexpr std::uint32_t kMostStandardId = 0x7FF;
inline constexpr std::uint32_t kMostExtendedId = 0x1FFFFFFF;

// A line of candump, logged or as on the terminal, in the forms that can-utils writes (from
// memory): "(1436509052.249713) can0 7E8#03412F80", " can0  7E8   [4]  03 41 2F 80", also
// without time or bus. Ids of 3 digits are standard, of 8 extended.
Heard parseCandump(std::string_view line, TimedFrame& out);

// A line of a serial adapter (slcan, LAWICEL's protocol, from memory): "t7E8403412F80",
// "T18FEFC318…", with or without a time stamp of four digits, which is left unread.
Heard parseSlcan(std::string_view line, TimedFrame& out);
// The line that sends `frame`, with its CR.
std::string slcanLine(const CanFrame& frame);
// What opens an adapter at 10, 20, 50, 100, 125, 250, 500, 800 or 1000 kbit/s: closed first,
// as it may still be open; nothing for any other speed.
std::optional<std::string> slcanOpening(int kbit);
inline constexpr std::string_view kSlcanClosing = "C\r";

// Lines of an ASC recording (from memory of the format; the base is that of the header,
// ids are extended with an x behind them, leading zeros may be missing).
class AscReader {
public:
    Heard take(std::string_view line, TimedFrame& out);

private:
    Heard takeHeader(std::string_view line);

    int m_base = 16;
    bool m_relative = false; // times count from the line before
    double m_time = 0.0;     // s
};

} // namespace undermark
