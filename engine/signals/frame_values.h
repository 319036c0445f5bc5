// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which numbers of a bus's frames are which channel: J1939's own, or those of a map that the
// user wrote for his car.
#pragma once

#include "engine/base/error.h"
#include "engine/signals/dbc.h"
#include "engine/signals/frame_signal.h"

#include <vector>

namespace undermark {

struct FrameRule {
    Channel channel;
    FrameSignal signal;
};

// Those of j1939.h.
std::vector<FrameRule> j1939Rules();

// A map as JSON, each channel by its name and one of
//     {"dbc": "Message.Signal"}                    of the DBC file
//     {"pgn": 65265, "spn": 84, "sa": 0}           of j1939.h; sa, the sender, may be missing
//     {"id": "0x7F0", "bits": "8|16@1+"}           "extended": true, or more than 7FF: 29 bits
// each with "factor" and "offset" if the number is to be value * factor + offset. badInput,
// with `file` and the channel, for whatever is not understood.
Result<std::vector<FrameRule>> parseFrameMap(std::string_view json, const std::string& file,
                                             const Dbc* dbc);

// Values by rules; those that cannot be (a negative speed) are none.
class FrameValues {
public:
    explicit FrameValues(std::vector<FrameRule> rules) : m_rules(std::move(rules)) {}
    // Values are added to `out`, at `now`.
    Heard hear(const TimedFrame& frame, Seconds now, std::vector<TimedValue>& out) const;

private:
    std::vector<FrameRule> m_rules;
};

} // namespace undermark
