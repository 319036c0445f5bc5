// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the command line knows of tanks: the flags of a tank and its sender, whether it is the
// vehicle's own or a further one; which one is meant; what is read in several.
#pragma once

#include "app/car/car_tanks.h"
#include "app/cli/cli_command.h"
#include "engine/base/instant_text.h"
#include "engine/outlook/outlook.h"

#include <optional>
#include <string>
#include <vector>

namespace undermark {

struct TankFlags {
    std::optional<double> capacity, zero, leftBehind, leftBehindSd, unusable, unusableSd;
    std::string circuit, signalUnit, zeroSince;
    std::optional<double> supply, pullUp, resolution;
};

// A new tank must state its capacity.
void addTankFlags(CLI::App& command, TankFlags& flags, bool isNew);

// A new estimate where the mean or the spread is given; 0.7 L where no spread is.
void setEstimate(std::optional<Estimate<Volume>>& target, const std::optional<double>& mean,
                 const std::optional<double>& sd);
void setSender(const TankFlags& flags, Sender& sender);

// --zero-since, where it was given. badInput for what is no date.
Result<std::optional<Instant>> zeroSince(const TankFlags& flags);

// What was given, over what is known. T: Vehicle or ExtraTank. Errors: as zeroSince().
template <class T>
Result<void> applyTankFlags(const TankFlags& flags, T& tank)
{
    const auto since = zeroSince(flags);
    if (!since)
        return fail(since.error());
    if (*since)
        tank.zeroSince = *since;
    if (flags.capacity)
        tank.capacity = Volume::fromLitres(*flags.capacity);
    setEstimate(tank.leftBehind, flags.leftBehind, flags.leftBehindSd);
    setEstimate(tank.unusable, flags.unusable, flags.unusableSd);
    if (flags.zero)
        tank.zeroMark = Volume::fromLitres(*flags.zero);
    setSender(flags, tank.sender);
    return {};
}

// Tank, sender and what else a vehicle and its further tanks share, as JSON.
template <class T>
Json tankJson(const T& tank)
{
    const auto number = [](const auto& value) { return value ? Json(*value) : Json(); };
    const auto pair = [](const std::optional<Estimate<Volume>>& e) {
        return e ? Json{{"mean", e->mean.litres()}, {"sd", e->sd.litres()}} : Json();
    };
    return {{"name", tank.name},
            {"capacity_l", tank.capacity.litres()},
            {"zero_at_l", tank.zeroMark ? Json(tank.zeroMark->litres()) : Json()},
            {"zero_since", tank.zeroSince ? Json(instantText(*tank.zeroSince) + "Z") : Json()},
            {"left_behind_l", pair(tank.leftBehind)},
            {"unusable_l", pair(tank.unusable)},
            {"supply_v", number(tank.sender.supplyVolts)},
            {"pull_up_ohm", number(tank.sender.pullUpOhms)},
            {"signal_unit", tank.sender.unit}};
}

// --tank of a command that is about one tank; empty: the vehicle's own.
void addTankOption(CLI::App& command, std::string& tank, const std::string& help);

// One line of a list: name, litres, how it feeds, when it was calibrated.
std::string furtherTankLine(const ExtraTank& tank, const VehicleLog& log);
// vehicle tank add, set, list, remove.
void addTankCommands(CLI::App& vehicle, CliContext& context);

// --tank-signal NAME=READING and --tank-litres NAME=LITRES.
struct TankReadings {
    std::vector<std::string> signals, litres;
};
void addTankReadings(CLI::App& command, TankReadings& readings);
// badInput for what is no NAME=NUMBER. Litres are known as well as a full fill.
Result<void> ask(const TankReadings& readings, const CarKnowledge& car, Question& question);

} // namespace undermark
