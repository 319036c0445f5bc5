// SPDX-License-Identifier: GPL-3.0-or-later
//
// What was measured of a drive: values one by one as they come from a wire, and samples of
// all of them at one instant as the tracker takes them.
#pragma once

#include "engine/base/quantity.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace undermark {

// What can be measured, each in one unit: the signals in the sender's own, speed in km/h,
// fuel rate in L/h, distance in km from any fixed start. The first two are of the vehicle's own
// tank; further tanks, in the order in which they were recorded, have the same two each.
enum class Channel : std::uint8_t {
    signal, signal2, speed, fuelRate, distance,
    tank1Signal, tank1Signal2, tank2Signal, tank2Signal2,
    tank3Signal, tank3Signal2, tank4Signal, tank4Signal2,
};
inline constexpr std::size_t kMostFurtherTanks = 4; // that can be heard
inline constexpr std::array kChannels{
    Channel::signal, Channel::signal2, Channel::speed, Channel::fuelRate, Channel::distance,
    Channel::tank1Signal, Channel::tank1Signal2, Channel::tank2Signal, Channel::tank2Signal2,
    Channel::tank3Signal, Channel::tank3Signal2, Channel::tank4Signal, Channel::tank4Signal2};
inline constexpr std::size_t kOwnChannels = 5; // of a car without further tanks

// Those of a car with so many further tanks.
constexpr std::span<const Channel> channelsOf(std::size_t furtherTanks)
{
    return std::span(kChannels).first(kOwnChannels + 2 * std::min(furtherTanks, kMostFurtherTanks));
}

constexpr std::size_t indexOf(Channel channel) { return static_cast<std::size_t>(channel); }

// As in samples CSV, --map and JSON: the unit is part of the name.
constexpr std::string_view nameOf(Channel channel)
{
    constexpr std::array<std::string_view, kChannels.size()> kNames{
        "signal",       "signal2",       "speed_kmh",    "fuel_rate_l_h", "distance_km",
        "tank1_signal", "tank1_signal2", "tank2_signal", "tank2_signal2", "tank3_signal",
        "tank3_signal2", "tank4_signal", "tank4_signal2"};
    return kNames[indexOf(channel)];
}
std::optional<Channel> channelNamed(std::string_view name);

// A reading of a sender, whichever tank it is in; all else is the car's.
constexpr bool isSignal(Channel channel)
{
    return channel == Channel::signal || channel == Channel::signal2 || indexOf(channel) >= kOwnChannels;
}
// What stands for the vehicle's own tank, as the same of a tank: 0 the own, 1 the first further one
// to kMostFurtherTanks. What is no reading of the own tank stays.
Channel ofTank(Channel channel, std::size_t tank);

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
    std::array<std::optional<Signal>, 2 * kMostFurtherTanks> further{}; // two each, as the channels

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
