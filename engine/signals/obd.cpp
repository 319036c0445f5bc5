// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/obd.h"

namespace undermark {

std::optional<double> obdValue(ObdPid pid, std::span<const std::uint8_t> data)
{
    const auto whole = [&](std::size_t bytes) -> std::optional<double> {
        if (data.size() < bytes)
            return std::nullopt;
        std::uint32_t value = 0;
        for (const std::uint8_t byte : data.first(bytes))
            value = value << 8 | byte;
        return value;
    };
    const auto scaled = [](std::optional<double> value, double factor, double divisor) {
        return value ? std::optional(*value * factor / divisor) : std::nullopt;
    };
    switch (pid) {
    case ObdPid::speed:
    case ObdPid::fuelType: return whole(1);
    case ObdPid::airFlow: return scaled(whole(2), 1.0, 100.0);
    case ObdPid::level: return scaled(whole(1), 100.0, 255.0);
    case ObdPid::fuelRate: return scaled(whole(2), 1.0, 20.0);
    case ObdPid::odometer: return scaled(whole(4), 1.0, 10.0);
    }
    return std::nullopt;
}

} // namespace undermark
