// SPDX-License-Identifier: GPL-3.0-or-later
//
// How far the car has gone since it was first heard of, by its wheels' own count where that
// comes, between and without it by speed.
//
// Guarantees (each has a test in tests/engine/signals/travelled_test.cpp):
//  * it never goes back, and no way is counted twice: what speed added since the last count
//    is replaced by the next count;
//  * a count that goes back, or on by more than 300 km/h allow, is a new count: it goes on
//    from there;
//  * speed is taken over at most as long as it is good for, so silence adds nothing.
#pragma once

#include "engine/base/quantity.h"

#include <optional>

namespace undermark {

class Travelled {
public:
    void takeCount(Distance count, Seconds time);
    void takeSpeed(Speed speed, Seconds time, Seconds goodFor);
    // Times to come are of another clock: nothing is counted from before to after.
    void clockJumped();

    Distance distance() const { return m_shown; }

private:
    void show();

    Distance m_atCount;                  // travelled when the count last changed
    Distance m_since;                    // by speed since then
    Distance m_shown;
    std::optional<Distance> m_count;
    std::optional<Seconds> m_countTime;  // when the count last came
    std::optional<Speed> m_speed;
    Seconds m_speedTime{};
};

} // namespace undermark
