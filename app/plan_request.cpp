// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/plan_request.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace undermark {

Result<TankAndRate> tankFromCar(const CarKnowledge& car)
{
    const Result<Outlook> now = outlook(car, Question{});
    if (!now)
        return fail(now.error());
    const Estimate<Volume> capacity = car.reserve.usableCapacity();
    TankAndRate both;
    both.tank.capacity = capacity.mean;
    both.tank.start = {std::clamp(now->usable.mean, Volume(), capacity.mean), now->usable.sd};
    both.tank.fullSd = Volume::fromLitres(std::hypot(capacity.sd.litres(), kUsualFullSd.litres()));
    both.tank.zeroMark = now->reserve.mean;
    const ModeRates rates = car.consumption.model.rates();
    both.rates.modes = rates.modes;
    both.rates.mean = rates.mean;
    both.rates.covariance = rates.covariance;
    both.rates.legNoiseSd = std::sqrt(rates.tauSquaredPerKm);
    both.rates.idling = rates.idle.mean;
    return both;
}

Aim usualAim(const Route& route)
{
    const auto priced = [](const RoutePoint& point) { return point.pricePerLitre.has_value(); };
    return std::ranges::any_of(route.points, priced) ? Aim::cost : Aim::stops;
}

PlanRequest planRequest(Route route, const TankAndRate& car)
{
    PlanRequest request;
    request.aim = usualAim(route);
    request.route = std::move(route);
    request.tank = car.tank;
    request.rates = car.rates;
    return request;
}

std::string cureWords(const Cure& cure)
{
    char text[80];
    switch (cure.kind) {
    case CureKind::startWithMore:
        std::snprintf(text, sizeof text, "start with %.1f L more", cure.litres.litres());
        break;
    case CureKind::carryInCans:
        std::snprintf(text, sizeof text, "carry %.1f L in own cans", cure.litres.litres());
        break;
    case CureKind::driveGentler:
        std::snprintf(text, sizeof text, "drive so that it burns %.1f %% less",
                      cure.gentler.percent());
        break;
    }
    return text;
}

} // namespace undermark
