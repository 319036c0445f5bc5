// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/j1939.h"

#include <algorithm>

namespace undermark {

namespace {

// `byte` and what follows it, from 1, the lowest first. Of a byte values above FA hex are
// none, of two bytes above FAFF, of four above FAFFFFFF (from memory).
FrameSignal parameter(std::uint32_t group, unsigned byte, unsigned bytes, double factor)
{
    const std::uint64_t most = (std::uint64_t{0xFB} << (8 * (bytes - 1))) - 1;
    return {.match = {.id = group, .extended = true, .isGroup = true},
            .bits = {.start = static_cast<std::uint16_t>(8 * (byte - 1)),
                     .length = static_cast<std::uint8_t>(8 * bytes)},
            .factor = factor,
            .mostRaw = most};
}

} // namespace

std::span<const J1939Parameter> j1939Parameters()
{
    static const std::array<J1939Parameter, 6> kParameters{{
        {96, Channel::signal, parameter(65276, 2, 1, 0.4)},
        {38, Channel::signal2, parameter(65276, 7, 1, 0.4)},
        {183, Channel::fuelRate, parameter(65266, 1, 2, 0.05)},
        {84, Channel::speed, parameter(65265, 2, 2, 1.0 / 256.0)},
        {917, Channel::distance, parameter(65217, 1, 4, 0.005)},
        {245, Channel::distance, parameter(65248, 5, 4, 0.125)},
    }};
    return kParameters;
}

const J1939Parameter* j1939Parameter(std::uint32_t group, std::uint32_t number)
{
    const auto known = j1939Parameters();
    const auto found = std::ranges::find_if(known, [&](const J1939Parameter& one) {
        return one.number == number && one.signal.match.id == group;
    });
    return found == known.end() ? nullptr : &*found;
}

} // namespace undermark
