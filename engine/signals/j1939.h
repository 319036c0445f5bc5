// SPDX-License-Identifier: GPL-3.0-or-later
//
// The parameters of SAE J1939-71 that say something of fuel and way. Scales as quoted from
// SAE, 0.05 L/h and the numbers that mean "no value" from memory; each is checked against
// recorded traffic in tests/engine/signals/j1939_test.cpp. All fit a single frame.
//
//   SPN  group  bytes           unit                 channel
//    96  65276  2      0.4 %    level                signal
//    38  65276  7      0.4 %    level, second tank   signal2
//   183  65266  1-2    0.05     L/h                  fuel rate
//    84  65265  2-3    1/256    km/h                 speed
//   917  65217  1-4    5 m      distance, fine       distance
//   245  65248  5-8    0.125    km                   distance
#pragma once

#include "engine/signals/frame_signal.h"

namespace undermark {

struct J1939Parameter {
    std::uint32_t number; // SPN
    Channel channel;
    FrameSignal signal;
};

std::span<const J1939Parameter> j1939Parameters();

// Nothing where it is none of those above.
const J1939Parameter* j1939Parameter(std::uint32_t group, std::uint32_t number);

} // namespace undermark
