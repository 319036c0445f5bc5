// SPDX-License-Identifier: GPL-3.0-or-later
//
// On-board diagnostics, mode 01 (SAE J1979): what an answer says. Who asks, and hears
// the answers among a bus's frames: obd_conversation.h.
//
//   PID  bytes        unit   channel
//   0D   A            km/h   speed
//   10   (256A+B)/100 g/s    fuel rate, of petrol only
//   2F   A*100/255    %      signal
//   51   A                   1 petrol, 4 diesel
//   5E   (256A+B)/20  L/h    fuel rate
//   A6   ABCD/10      km     distance (from memory)
//
// The level is a signal to calibrate: the car steps it by 0.39 % and filters it as it likes.
#pragma once

#include <cstdint>
#include <optional>
#include <span>

namespace undermark {

enum class ObdPid : std::uint8_t {
    speed = 0x0D, airFlow = 0x10, level = 0x2F, fuelType = 0x51, fuelRate = 0x5E, odometer = 0xA6,
};

// What PID says, in the unit above; nothing for other PIDs and where `data` is too short.
std::optional<double> obdValue(ObdPid pid, std::span<const std::uint8_t> data);

// Fuel burnt with `gramsPerSecond` of air: 14.7 parts of air to one of petrol of 745 g/L
// (from memory; an engine that runs lean or enriches is off by some per cent, which the
// tracker's scale learns). Of petrol engines only: a diesel's mixture varies fivefold.
constexpr double petrolLitresPerHour(double gramsPerSecond)
{
    return gramsPerSecond * 3600.0 / (14.7 * 745.0);
}

} // namespace undermark
