// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tank/reserve_prior.h"

#include <algorithm>
#include <cmath>

namespace undermark {

double floorShare(Volume capacity)
{
    // Nobody said how large the tank is: the usual one.
    return capacity > Volume() ? std::pow(capacity.litres() / 50.0, 2.0 / 3.0) : 1.0;
}

Estimate<Volume> leftBehindOf(const Vehicle& vehicle)
{
    const double share = floorShare(vehicle.capacity);
    return vehicle.leftBehind.value_or(
        Estimate<Volume>{share * kUsualLeftBehind.mean, share * kUsualLeftBehind.sd});
}

Estimate<Volume> unusableOf(const Vehicle& vehicle)
{
    const Estimate<Volume> left = leftBehindOf(vehicle);
    const double sd = std::hypot(left.sd.litres(),
                                 floorShare(vehicle.capacity) * kStarvesFromSpitSd.litres());
    return vehicle.unusable.value_or(Estimate<Volume>{left.mean, Volume::fromLitres(sd)});
}

ReservePrior priorFor(const Vehicle& vehicle, const std::optional<CalibrationSummary>& calibration)
{
    ReservePrior prior;
    prior.leftBehind = leftBehindOf(vehicle);
    prior.unusable = unusableOf(vehicle);
    prior.linked = vehicle.unusable ? 0.0 : prior.leftBehind.sd / prior.unusable.sd;
    prior.calibration = calibration;
    prior.meterScaleSd = kMeterScaleSd;
    const Volume capacity = vehicle.capacity;
    prior.statedCapacity = {capacity, capacity * kStatedCapacitySd.ratio()};
    if (vehicle.zeroMark) {
        const Volume sd = std::max(abs(*vehicle.zeroMark) * kStatedReserveSd.ratio(),
                                   kStatedReserveLeastSd);
        prior.statedReserve = {*vehicle.zeroMark, sd};
    } else {
        prior.statedReserve = {capacity * kUsualReserve.ratio(),
                               capacity * kUsualReserveSd.ratio()};
    }
    return prior;
}

} // namespace undermark
