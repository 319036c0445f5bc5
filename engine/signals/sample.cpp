// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/sample.h"

#include <algorithm>
#include <cmath>

namespace undermark {

std::optional<Channel> channelNamed(std::string_view name)
{
    const auto found = std::ranges::find(kChannels, name, nameOf);
    return found == kChannels.end() ? std::nullopt : std::optional(*found);
}

bool isPossible(Channel channel, double value)
{
    return std::isfinite(value) && (isSignal(channel) || value >= 0.0);
}

Channel ofTank(Channel channel, std::size_t tank)
{
    if (tank == 0 || indexOf(channel) > indexOf(Channel::signal2))
        return channel;
    return kChannels[kOwnChannels + 2 * (tank - 1) + indexOf(channel)];
}

void Sample::set(Channel channel, double value)
{
    switch (channel) {
    case Channel::signal: signal = Signal::of(value); break;
    case Channel::signal2: signal2 = Signal::of(value); break;
    case Channel::speed: speed = Speed::fromKmPerHour(value); break;
    case Channel::fuelRate: fuelRate = FlowRate::fromLitresPerHour(value); break;
    case Channel::distance: distance = Distance::fromKm(value); break;
    default: further[indexOf(channel) - kOwnChannels] = Signal::of(value); break;
    }
}

std::optional<double> Sample::get(Channel channel) const
{
    const auto number = [](const auto& some, auto unit) {
        return some ? std::optional((*some.*unit)()) : std::nullopt;
    };
    switch (channel) {
    case Channel::signal: return number(signal, &Signal::value);
    case Channel::signal2: return number(signal2, &Signal::value);
    case Channel::speed: return number(speed, &Speed::kmPerHour);
    case Channel::fuelRate: return number(fuelRate, &FlowRate::litresPerHour);
    case Channel::distance: return number(distance, &Distance::km);
    default: return number(further[indexOf(channel) - kOwnChannels], &Signal::value);
    }
}

} // namespace undermark
