// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where a car's values come from, in one word:
//
//     can:IFACE[,WORD]       a bus of this machine
//     slcan:DEV[@KBIT][,WORD]   a serial adapter, at 500 kbit/s if not said
//     candump:FILE|-[,WORD]  asc:FILE[,WORD]    recordings; - is what is piped in
//     nmea:FILE|DEV[@BAUD]   a satellite receiver
//     lines:FILE|DEV[@BAUD]  numbers in lines (line_values.h); also FILE alone
//
// WORD is obd (asks), j1939, or dbc=FILE; without one a bus is only listened to, for both
// OBD answers and J1939.
#pragma once

#include "engine/base/error.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace undermark {

enum class SourceKind : std::uint8_t { can, slcan, candump, asc, nmea, lines };
enum class FrameLanguage : std::uint8_t { any, obd, j1939, dbc };

struct SourceSpec {
    SourceKind kind = SourceKind::lines;
    std::string place;            // interface, device or file; "-" what is piped in
    std::optional<int> speed;     // slcan: kbit/s of the bus; nmea, lines: baud of the line
    FrameLanguage language = FrameLanguage::any;
    std::string dbcFile;          // of FrameLanguage::dbc

    bool carriesFrames() const { return kind < SourceKind::nmea; }
    friend bool operator==(const SourceSpec&, const SourceSpec&) = default;
};

// badInput with what was expected; nothing is opened.
Result<SourceSpec> parseSourceSpec(std::string_view text);

} // namespace undermark
