// SPDX-License-Identifier: GPL-3.0-or-later
//
// A tester's part on a diagnostic bus: which question is due, and what the answers among
// all frames say. No device and no clock: frames and times are passed in, frames to send
// come out.
//
//     while (auto question = conversation.next(now))
//         send(*question);
//     conversation.hear(frame, now, values);
//
// Guarantees (each has a test in tests/engine/signals/obd_conversation_test.cpp):
//  * the car is asked first what it knows, then only that;
//  * one question at a time, at most five a second: speed and fuel rate twice a second, the
//    level once, the odometer every 30 s, the kind of fuel until it is known;
//  * "wait" (7F 01 78) is waited for, a refusal is not asked again, silence is asked again
//    every 2, 4, then 8 s, in turn with ids of 11 and 29 bits;
//  * air flow counts as fuel of a petrol engine only, and not where a fuel rate is told;
//  * one that only listens sends nothing, not even a flow control.
#pragma once

#include "engine/base/records.h"
#include "engine/signals/isotp.h"
#include "engine/signals/obd.h"

#include <bitset>
#include <vector>

namespace undermark {

class ObdConversation {
public:
    enum class Part : std::uint8_t { asks, listens };
    // What units answer with: 7E8 to 7EF, and of 29 bits those to the tester F1 (ISO 15765-4).
    static constexpr std::array kAnswers{CanFilter{0x7E8, 0x7F8, false}, CanFilter{0x18DAF100, 0x1FFFFF00, true}};
    // `fuel` is what is known of the car; it may say so itself (PID 51).
    ObdConversation(Part part, std::optional<FuelKind> fuel);

    // A frame of the bus; values are added to `out`. `garbled` only for broken answers.
    Heard hear(const TimedFrame& frame, Seconds now, std::vector<TimedValue>& out);

    // The frame to send now, if any.
    std::optional<CanFrame> next(Seconds now);

    // The car has told what it knows.
    bool answered() const { return m_answered; }
    bool knows(ObdPid pid) const { return m_known.test(static_cast<std::size_t>(pid)); }

private:
    struct Unit { // that answers
        std::uint32_t id = 0;
        bool extended = false;
        IsoTpReceiver receiver;
    };
    struct Poll {
        ObdPid pid;
        Seconds interval;
        Seconds due{};     // when it is to be asked again
        Seconds heard{-1}; // its last answer; below 0: none yet
        Channel channel;
    };

    Unit* unitOf(const CanFrame& frame);
    Heard takeMessage(std::span<const std::uint8_t> message, std::uint32_t sender, Seconds now,
                      std::vector<TimedValue>& out);
    void takeBitmap(std::uint8_t base, std::span<const std::uint8_t> bits);
    void takeAnswer(ObdPid pid, double value, std::uint32_t sender, Seconds now,
                    std::vector<TimedValue>& out);
    void answeredNow(std::uint8_t pid);
    void giveUpWaiting(Seconds now);
    bool wanted(ObdPid pid) const;
    std::optional<std::uint8_t> dueQuestion(Seconds now);
    CanFrame question(std::uint8_t pid, Seconds now);

    Part m_part;
    std::optional<FuelKind> m_fuel;
    bool m_rateHeard = false;                 // PID 5E
    bool m_extended = false;                  // ids we ask with
    bool m_answered = false;
    std::size_t m_bitmap = 0;                 // which one is to be asked; past the last: known
    std::bitset<256> m_known, m_notAgain;
    std::array<Poll, 6> m_polls;
    std::array<Unit, 8> m_units;
    std::size_t m_unitCount = 0;
    std::optional<std::uint8_t> m_asked;      // waits for its answer
    Seconds m_waitUntil{-1e9}, m_notBefore{-1e9}, m_pause{2};
    std::optional<CanFrame> m_reply;          // a flow control
};

} // namespace undermark
