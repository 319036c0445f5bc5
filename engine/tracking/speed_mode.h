// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which of the standard modes a car is being driven in, by its speed: town, open road or
// motorway. Only proposed: a driver says what it is.
//
// Guarantees (each has a test in tests/engine/tracking/speed_mode_test.cpp):
//  * nothing is said before half a minute of driving;
//  * about 45 and 95 km/h it does not flicker: it changes 5 km/h past them;
//  * halts and silence count for nothing: a motorway halt is no town.
//
// The bounds are common practice, no source. The mean fades with an e-fold of a minute of
// driving, so that on average it is as old as one over two minutes.
#pragma once

#include "engine/base/quantity.h"

#include <optional>

namespace undermark {

class SpeedMode {
public:
    // In order; a step back or of more than 2 s counts for nothing.
    void add(Seconds time, Speed speed);
    // One of kStandardModes; nothing: not known yet.
    std::optional<const char*> mode() const;

private:
    enum class Kind { none, town, openRoad, motorway };

    std::optional<Seconds> m_time;
    double m_weightS = 0.0, m_kmhS = 0.0; // of driving, faded; its sum
    double m_drivenS = 0.0;
    Kind m_kind = Kind::none;
};

} // namespace undermark
