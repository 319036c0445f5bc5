// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/zero_mark.h"

#include <algorithm>

namespace undermark {

namespace {

// The newest that is in force, `since` telling since when; the first has to be looked at apart.
template <class Since>
const Calibration* inForceAt(const VehicleLog& log, Instant time, Since&& since)
{
    if (!log.calibration)
        return nullptr;
    bool first = true;
    const Calibration* inForce = nullptr;
    for (const Entry<Calibration>& each : log.calibrations) {
        if (each.value.tank != log.calibration->value.tank)
            continue;
        const std::optional<Instant> from = since(each.value, first);
        if (!from || *from <= time)
            inForce = &each.value;
        first = false;
    }
    return inForce;
}

} // namespace

const Calibration* latestCalibration(const VehicleLog& log)
{
    return inForceAt(log, Instant::max(), [](const Calibration& each, bool) { return std::optional(each.time); });
}

const Calibration* calibrationAt(const VehicleLog& log, Instant time)
{
    return inForceAt(log, time, [](const Calibration& each, bool first) {
        return first ? std::nullopt : std::optional(each.time);
    });
}

std::optional<ZeroThen> zeroMarkAt(const CarKnowledge& tank, Instant time)
{
    const VehicleLog& log = tank.log;
    const Calibration* now = latestCalibration(log);
    if (!now) {
        const std::optional<Instant> since = tank.vehicle().zeroSince;
        return since && time < *since ? std::nullopt : std::optional(ZeroThen{});
    }
    const Calibration* then = inForceAt(log, time, [](const Calibration& each, bool first) {
        return each.zeroSince || first ? each.zeroSince : std::optional(each.time);
    });
    if (then == now)
        return ZeroThen{};
    if (!then || then->points.empty() != now->points.empty())
        return std::nullopt;
    Result<Gauge> gauge = Gauge::of(*then, tank.vehicle().sender);
    if (!gauge || !gauge->isKnown() || !tank.gauge.isKnown())
        return std::nullopt;
    const Volume above =
        gauge->knownDriving(then->zeroMark).mean - tank.gauge.knownDriving(now->zeroMark).mean;
    return ZeroThen{above, std::move(*gauge)};
}

} // namespace undermark
