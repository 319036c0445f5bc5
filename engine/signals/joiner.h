// SPDX-License-Identifier: GPL-3.0-or-later
//
// Single values, each at its own time, to samples ten times a second of all that is known.
//
//     while (auto sample = joiner.next(value.time))
//         tracker.add(…*sample…);
//     joiner.put(value);
//
// Guarantees (each has a test in tests/engine/signals/joiner_test.cpp):
//  * a sample holds the newest value of each channel that is still good; none is made while
//    nothing is, so silence is a gap and not a stream of nothing;
//  * the first sender of a channel that says something possible is the only one heard;
//    values of others are counted and left out, never mixed in;
//  * distance is what was travelled since the start (travelled.h), whoever counts it;
//  * a clock that goes back by more than a second starts anew, and the sample's time goes
//    back with it, which the tracker says; less is taken as the same instant;
//  * nothing allocates; a jump forward costs no more than the values' time to live.
#pragma once

#include "engine/signals/sample.h"
#include "engine/signals/travelled.h"

namespace undermark {

class Joiner {
public:
    static constexpr Seconds kStep{0.1};

    // Samples before `until`, one a call; nothing when there are no more.
    std::optional<Sample> next(Seconds until);
    // Only after next(value.time) has no more.
    void put(const TimedValue& value);

    // Of the newest value, 0 before the first.
    Seconds newest() const { return m_newest; }
    // Since the newest value heard, good or not; nothing before the first.
    std::optional<Seconds> age(Channel channel, Seconds now) const;
    // Values of other senders than the one that is heard.
    long leftOut(Channel channel) const { return m_heard[indexOf(channel)].leftOut; }
    // Values that cannot be: not finite, negative, at no time.
    long impossible() const { return m_impossible; }

private:
    struct Newest {
        std::optional<TimedValue> value;
        std::optional<std::uint32_t> sender; // bound for good
        long leftOut = 0;
    };
    Seconds tickTime() const { return m_origin + m_tick * kStep; }
    bool isGood(Channel channel, Seconds now) const;
    void startAt(Seconds time);

    std::array<Newest, kChannels.size()> m_heard{};
    Travelled m_travelled;
    bool m_running = false;   // something is good: ticks go on
    bool m_ever = false;      // a first value came
    Seconds m_origin{};
    double m_tick = 0.0;      // whole; the next one, from the origin
    Seconds m_newest{};       // time of the newest value
    long m_impossible = 0;
};

} // namespace undermark
