// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/several_tanks.h"

#include <algorithm>
#include <utility>

namespace undermark {

namespace {

// Those of the tank, as if they were of the vehicle's own.
template <class T>
std::vector<Entry<T>> ofTank(const std::vector<Entry<T>>& all, const std::string& tank)
{
    std::vector<Entry<T>> some;
    for (const Entry<T>& each : all) {
        if (each.value.tank != tank)
            continue;
        some.push_back(each);
        some.back().value.tank.reset();
    }
    return some;
}

const ExtraTank* tankNamed(const VehicleLog& log, const std::string& name)
{
    const auto found = std::ranges::find(log.tanks, name, [](const auto& each) { return each.value.name; });
    return found == log.tanks.end() ? nullptr : &found->value;
}

// Goes through the fills once, in their order.
class HaltWalk {
public:
    explicit HaltWalk(const VehicleLog& log) : m_log(log)
    {
        m_full[{}] = false;
        for (const Entry<ExtraTank>& tank : log.tanks)
            if (tank.value.feed == TankFeed::shared)
                m_whole.inUse[tank.value.name] = Instant::min();
    }

    WholeFills walk()
    {
        for (const Entry<Fill>& fill : m_log.fills)
            take(fill.value);
        return std::move(m_whole);
    }

private:
    void take(const Fill& fill)
    {
        const bool sameHalt = !m_whole.fills.empty() && goesOn(m_log.fills[m_whole.fills.size() - 1].value, fill);
        if (!sameHalt)
            for (auto& [name, full] : m_full)
                full = false;
        const std::string name = filledTank(fill);
        if (!m_full.contains(name)) {
            m_whole.inUse[name] = fill.time;
            m_anew = true;
        }
        m_full[name] = fill.extent != FillExtent::partial;
        m_whole.fills.push_back(fill);
        Fill& here = m_whole.fills.back();
        here.tank.reset();
        const bool allFull = std::ranges::all_of(m_full, [](const auto& tank) { return tank.second; });
        if (!allFull)
            here.extent = FillExtent::partial;
        if (sameHalt)
            joinToHalt(allFull);
        if (allFull && std::exchange(m_anew, false))
            m_whole.anew.push_back(m_whole.fills.size() - 1);
    }

    // Of tanks that share their level one name, the vehicle's own.
    std::string filledTank(const Fill& fill) const
    {
        const ExtraTank* tank = fill.tank ? tankNamed(m_log, *fill.tank) : nullptr;
        return tank && tank->feed != TankFeed::shared ? tank->name : std::string();
    }

    bool goesOn(const Fill& before, const Fill& after) const
    {
        const bool moved = after.sinceLast.value_or(Distance()) > kHaltWay
            || (before.odometer && after.odometer && abs(*after.odometer - *before.odometer) > kHaltWay);
        return after.time - before.time <= kHaltTime && !moved
            && std::ranges::none_of(m_log.trips, [&](const Entry<Trip>& trip) {
                   return trip.value.time > before.time && trip.value.time <= after.time;
               });
    }

    // The halt's road stands at its last fill, unless an earlier one had left all tanks full already.
    void joinToHalt(bool allFull)
    {
        Fill& last = m_whole.fills.back();
        Fill& before = m_whole.fills[m_whole.fills.size() - 2];
        if (before.extent != FillExtent::partial && !allFull) {
            last.odometer.reset();
            last.sinceLast = Distance();
            return;
        }
        if (!m_whole.anew.empty() && m_whole.anew.back() == m_whole.fills.size() - 2) {
            m_whole.anew.pop_back();
            m_anew = true;
        }
        if (!last.odometer)
            last.odometer = before.odometer;
        last.sinceLast = before.sinceLast
            ? std::optional(*before.sinceLast + last.sinceLast.value_or(Distance())) : std::nullopt;
        last.odometerReset = last.odometerReset || before.odometerReset;
        before.extent = FillExtent::partial;
        before.odometer.reset();
        before.odometerReset = false;
        before.sinceLast = Distance();
    }

    const VehicleLog& m_log;
    WholeFills m_whole;
    std::map<std::string, bool> m_full; // at this halt, of the tanks in use
    bool m_anew = false;
};

} // namespace

VehicleLog logOfTank(const VehicleLog& log, const ExtraTank& tank)
{
    VehicleLog own = log;
    Vehicle& vehicle = own.vehicle.value;
    vehicle.name += ", " + tank.name;
    vehicle.capacity = tank.capacity;
    vehicle.leftBehind = tank.leftBehind;
    vehicle.unusable = tank.unusable;
    vehicle.zeroMark = tank.zeroMark;
    vehicle.zeroSince = tank.zeroSince;
    vehicle.lamp.reset();
    vehicle.sender = tank.sender;
    own.calibrations = ofTank(log.calibrations, tank.name);
    own.calibration.reset();
    if (!own.calibrations.empty())
        own.calibration = own.calibrations.back();
    own.fills = ofTank(log.fills, tank.name);
    own.proofs = ofTank(log.proofs, tank.name);
    own.levels = ofTank(log.levels, tank.name);
    own.verifications = ofTank(log.verifications, tank.name);
    own.photos = ofTank(log.photos, tank.name);
    own.sources = ofTank(log.sources, tank.name);
    own.tanks.clear();
    return own;
}

double burnShare(const VehicleLog& log, const std::string& name)
{
    const ExtraTank* tank = name.empty() ? nullptr : tankNamed(log, name);
    if (tank && tank->feed != TankFeed::shared)
        return 1.0;
    Volume together = log.vehicle.value.capacity;
    for (const Entry<ExtraTank>& each : log.tanks)
        if (each.value.feed == TankFeed::shared)
            together += each.value.capacity;
    return (tank ? tank->capacity : log.vehicle.value.capacity) / together;
}

WholeFills wholeFills(const VehicleLog& log)
{
    if (!log.tanks.empty())
        return HaltWalk(log).walk();
    return {valuesOf(log.fills), {}, {}};
}

} // namespace undermark
