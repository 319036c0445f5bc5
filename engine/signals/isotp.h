// SPDX-License-Identifier: GPL-3.0-or-later
//
// Messages longer than a frame, the receiving side of ISO 15765-2 with normal addressing:
// 0L single, 1L LL first, 2N consecutive, 3S flow control (as kernel.org's
// networking/iso15765-2 describes them). One receiver for each sender.
//
// Guarantees (each has a test in tests/engine/signals/isotp_test.cpp):
//  * a message is given only whole: one frame missing, twice or late ends it, and that is said;
//  * after a first frame the flow control is asked for that lets the sender go on;
//  * 4,095 bytes at most, in place: nothing allocates.
#pragma once

#include "engine/signals/can_frame.h"

namespace undermark {

class IsoTpReceiver {
public:
    enum class Step : std::uint8_t {
        nothing,   // a flow control of somebody else
        begun,     // a first frame: the sender waits for a flow control
        going,     // a part of it
        complete,  // message() is whole
        garbled,   // not the frame that had to come; what was begun is lost
    };
    // The next frame of this sender. Consecutive frames come within a second of each other
    // (N_Cr, from memory).
    Step take(std::span<const std::uint8_t> frame, Seconds now);

    // After `complete`, until the next frame.
    std::span<const std::uint8_t> message() const { return std::span(m_bytes).first(m_have); }

private:
    Step single(std::span<const std::uint8_t> frame);
    Step first(std::span<const std::uint8_t> frame);
    Step consecutive(std::span<const std::uint8_t> frame, Seconds now);
    void keep(std::span<const std::uint8_t> bytes);

    std::array<std::uint8_t, 4095> m_bytes{};
    std::size_t m_have = 0;
    std::size_t m_wanted = 0;   // 0: no message is under way
    std::uint8_t m_next = 0;    // number of the consecutive frame that has to come
    Seconds m_last{};
};

// "Send all that is left, at once", padded with zeros.
CanFrame flowControl(std::uint32_t id, bool extended);

} // namespace undermark
