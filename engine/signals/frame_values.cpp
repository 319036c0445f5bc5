// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/frame_values.h"

#include "engine/signals/j1939.h"

namespace undermark {

namespace {

constexpr Seconds kFrameGoodFor{2.0};
constexpr Seconds kCountGoodFor{10.0}; // an odometer is sent once a second or rarer

// One number for who says what: the sender's address or the frame's id, the rule, the bus.
std::uint32_t senderOf(const TimedFrame& timed, const FrameRule& rule, std::size_t index)
{
    const std::uint32_t who = rule.signal.match.isGroup ? timed.frame.id & 0xFFu : timed.frame.id;
    return timed.bus ^ who ^ static_cast<std::uint32_t>(index + 1) * 0x9E3779B1u; // spread out
}

} // namespace

std::vector<FrameRule> j1939Rules()
{
    std::vector<FrameRule> rules;
    for (const J1939Parameter& one : j1939Parameters())
        rules.push_back({one.channel, one.signal});
    return rules;
}

Heard FrameValues::hear(const TimedFrame& timed, Seconds now, std::vector<TimedValue>& out) const
{
    const std::size_t before = out.size();
    for (std::size_t i = 0; i < m_rules.size(); ++i) {
        const FrameRule& rule = m_rules[i];
        if (!rule.signal.match.matches(timed.frame))
            continue;
        const auto value = rule.signal.valueIn(timed.frame);
        if (value && isPossible(rule.channel, *value))
            out.push_back({now, rule.channel, *value, senderOf(timed, rule, i),
                           rule.channel == Channel::distance ? kCountGoodFor : kFrameGoodFor});
    }
    return out.size() > before ? Heard::value : Heard::nothing;
}

} // namespace undermark
