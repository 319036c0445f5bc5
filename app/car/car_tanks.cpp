// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/car_tanks.h"

#include "engine/signals/sample.h"

#include <algorithm>
#include <cctype>
#include <functional>

namespace undermark {

std::optional<std::string> tankName(const std::string& tank)
{
    return tank.empty() ? std::nullopt : std::optional(tank);
}

std::string fileOfTank(const std::string& stem, const std::string& extension, const std::string& tank)
{
    std::string name = tank.empty() ? stem : stem + "-" + tank;
    const auto isPlain = [](unsigned char c) { return c >= 0x80 || std::isalnum(c) || c == '-'; };
    std::ranges::replace_if(name, std::not_fn(isPlain), '-');
    return name + "." + extension;
}

namespace {

tl::unexpected<Error> failTank(const std::vector<std::string>& tanks, const std::string& name)
{
    std::string known;
    for (const std::string& each : tanks)
        known += (known.empty() ? "" : ", ") + each;
    return fail(ErrorCode::notFound, Sentence::of("the vehicle has no tank of this name"), {.column = "tank"},
                Sentence::just(known.empty() ? "vehicle tank add" : known), name);
}

} // namespace

std::vector<std::string> furtherNames(const VehicleLog& log)
{
    std::vector<std::string> names;
    for (const Entry<ExtraTank>& each : log.tanks)
        names.push_back(each.value.name);
    return names;
}

Result<std::size_t> placeOfTank(const std::vector<std::string>& tanks, const std::optional<std::string>& tank)
{
    if (!tank)
        return 0;
    const auto found = std::ranges::find(tanks, *tank);
    if (found == tanks.end())
        return failTank(tanks, *tank);
    const auto place = 1 + static_cast<std::size_t>(found - tanks.begin());
    if (place > kMostFurtherTanks)
        return failInput(Sentence::of("no more than %1 further tanks can be heard", counted(kMostFurtherTanks)),
                         Sentence::of("one of the first, in the order in which they were added"), *tank);
    return place;
}

Result<Entry<ExtraTank>> furtherTank(const VehicleLog& log, const std::string& name)
{
    for (const Entry<ExtraTank>& each : log.tanks)
        if (each.value.name == name)
            return each;
    return failTank(furtherNames(log), name);
}

Result<CarKnowledge> carOfTank(const CarKnowledge& car, const std::string& tank)
{
    if (tank.empty()) {
        CarKnowledge own = car;
        own.further.clear();
        return own;
    }
    const auto named = furtherTank(car.log, tank);
    return named ? Result<CarKnowledge>(*car.tank(tank)) : fail(named.error());
}

Knowledge knownOfTank(const Knowledge& car, const std::string& tank)
{
    const CarKnowledge* further = car->tank(tank);
    return further ? Knowledge(car, further) : car;
}

std::optional<std::string> TankAtHand::name() const
{
    return further ? std::optional(further->value.name) : std::nullopt;
}

Result<TankAtHand> tankAtHand(const Car& car, const std::string& tank)
{
    auto log = car.log();
    if (!log)
        return fail(log.error());
    if (tank.empty())
        return TankAtHand{std::move(*log), {}};
    auto further = furtherTank(*log, tank);
    return further ? Result<TankAtHand>({std::move(*log), std::move(*further)}) : fail(further.error());
}

Result<void> restateZero(Car& car, const Entry<Calibration>& calibration, Volume zero, std::optional<Instant> since)
{
    Calibration restated = calibration.value;
    restated.zeroMark = zero;
    if (!since)
        return restated == calibration.value ? Result<void>() : car.revise(calibration.id, restated);
    restated.time = std::max(car.time(), calibration.value.time);
    restated.zeroSince = since;
    const auto id = car.record(restated);
    return id ? Result<void>() : fail(id.error());
}

Result<void> keepSender(Car& car, const TankAtHand& tank, const Sender& sender)
{
    if (tank.sender() == sender)
        return {};
    if (tank.further) {
        ExtraTank further = tank.further->value;
        further.sender = sender;
        return car.revise(tank.further->id, further);
    }
    Vehicle vehicle = tank.log.vehicle.value;
    vehicle.sender = sender;
    return car.revise(tank.log.vehicle.id, vehicle);
}

} // namespace undermark
