// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/isotp.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr Seconds kLongestPause{1.0};
constexpr std::size_t kFewestInSeveral = 8; // 7 bytes fit a single frame

} // namespace

void IsoTpReceiver::keep(std::span<const std::uint8_t> bytes)
{
    const std::size_t count = std::min(bytes.size(), m_wanted - m_have); // the rest is padding
    std::ranges::copy(bytes.first(count), m_bytes.begin() + static_cast<std::ptrdiff_t>(m_have));
    m_have += count;
}

IsoTpReceiver::Step IsoTpReceiver::single(std::span<const std::uint8_t> frame)
{
    const std::size_t length = frame[0] & 0x0Fu;
    m_have = 0;
    m_wanted = 0;
    if (length == 0 || length + 1 > frame.size())
        return Step::garbled;
    m_wanted = length;
    keep(frame.subspan(1));
    m_wanted = 0;
    return Step::complete;
}

IsoTpReceiver::Step IsoTpReceiver::first(std::span<const std::uint8_t> frame)
{
    m_have = 0;
    m_wanted = 0;
    const std::size_t length = frame.size() < 8 ? 0 : (frame[0] & 0x0Fu) * 256u + frame[1];
    if (length < kFewestInSeveral)
        return Step::garbled;
    m_wanted = length;
    m_next = 1;
    keep(frame.subspan(2));
    return Step::begun;
}

IsoTpReceiver::Step IsoTpReceiver::consecutive(std::span<const std::uint8_t> frame, Seconds now)
{
    const std::size_t rest = m_wanted - m_have;
    const bool expected = m_wanted > 0 && (frame[0] & 0x0Fu) == m_next
        && now - m_last <= kLongestPause && frame.size() >= std::min<std::size_t>(rest + 1, 8);
    if (!expected) {
        m_have = 0;
        m_wanted = 0;
        return Step::garbled;
    }
    m_next = (m_next + 1) & 0x0F;
    keep(frame.subspan(1));
    if (m_have < m_wanted)
        return Step::going;
    m_wanted = 0;
    return Step::complete;
}

IsoTpReceiver::Step IsoTpReceiver::take(std::span<const std::uint8_t> frame, Seconds now)
{
    Step step = Step::garbled;
    if (frame.empty())
        return step;
    switch (frame[0] >> 4) {
    case 0: step = single(frame); break;
    case 1: step = first(frame); break;
    case 2: step = consecutive(frame, now); break;
    case 3: return Step::nothing;
    default: break;
    }
    m_last = now;
    return step;
}

CanFrame flowControl(std::uint32_t id, bool extended)
{
    return {.id = id, .extended = extended, .length = 8, .data = {0x30}};
}

} // namespace undermark
