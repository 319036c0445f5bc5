// SPDX-License-Identifier: GPL-3.0-or-later
//
// What was measured of a drive: values one by one as they come from a wire, and samples of
// all of them at one instant as the tracker takes them.
#pragma once

#include "engine/base/quantity.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace undermark {

// What can be measured, each in one unit: the signals in the sender's own, speed in km/h,
// fuel rate in L/h, distance in km from any fixed start.
enum class Channel : std::uint8_t { signal, signal2, speed, fuelRate, distance };
inline constexpr std::array kChannels{Channel::signal, Channel::signal2, Channel::speed,
                                      Channel::fuelRate, Channel::distance};

constexpr std::size_t indexOf(Channel channel) { return static_cast<std::size_t>(channel); }

// As in samples CSV, --map and JSON: the unit is part of the name.
constexpr std::string_view nameOf(Channel channel)
{
    constexpr std::array<std::string_view, kChannels.size()> kNames{
        "signal", "signal2", "speed_kmh", "fuel_rate_l_h", "distance_km"};
    return kNames[indexOf(channel)];
}
std::optional<Channel> channelNamed(std::string_view name);

// Whether such a value can be at all: finite, and not negative but for a signal.
bool isPossible(Channel channel, double value);

// All that is known at one instant; whatever is absent is unknown.
struct Sample {
    Seconds time{};
    std::optional<Signal> signal;
    std::optional<Signal> signal2;
    std::optional<Speed> speed;
    std::optional<FlowRate> fuelRate;
    std::optional<Distance> distance; // since any fixed start

    // `value` in the channel's unit.
    void set(Channel channel, double value);
    std::optional<double> get(Channel channel) const;
};

// One value as a decoder gives it. Possible (isPossible).
struct TimedValue {
    Seconds time{};
    Channel channel = Channel::signal;
    double value = 0.0;        // in the channel's unit
    std::uint32_t sender = 0;  // whose it is, where several say the same; any number
    Seconds goodFor{2.0};      // after that without a newer one it is unknown
    friend bool operator==(const TimedValue&, const TimedValue&) = default;
};

// What a piece of input turned out to be.
enum class Heard : std::uint8_t {
    value,   // it held what is asked for
    nothing, // sound, but nothing for us: a header, an acknowledgement, another sentence
    garbled, // not understood
};

} // namespace undermark
