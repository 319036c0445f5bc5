// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/plan_request.h"

#include "engine/base/format.h"

#include <algorithm>
#include <cmath>

namespace undermark {

Result<TankAndRate> tankFromCar(const CarKnowledge& car, const Question& question)
{
    Result<Outlook> now = outlook(car, question);
    if (!now)
        return fail(now.error());
    const JointLaw& law = now->law;
    const Estimate<Volume> capacity = car.reserve.usableCapacity();
    const Volume clickSd = car.consumption.model.clickSd();
    TankAndRate both;
    both.tank.capacity = capacity.mean;
    both.tank.start = {now->usable.mean, law.usable.sd};
    if (now->source != LevelSource::given) // what was told is checked, not mended
        both.tank.start.mean = std::clamp(now->usable.mean, Volume(), capacity.mean);
    both.tank.driven = law.driven;
    both.tank.fullSd = Volume::fromLitres(std::hypot(capacity.sd.litres(), clickSd.litres()));
    both.tank.surge = law.surge;
    both.tank.zeroMark = now->reserve.mean;
    both.rates = law.rates;
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
    switch (cure.kind) {
    case CureKind::startWithMore:
        return format("start with %.1f L more", cure.litres.litres());
    case CureKind::carryInCans:
        return format("carry %.1f L in own cans", cure.litres.litres());
    case CureKind::driveGentler:
        return format("drive so that it burns %.1f %% less",
                      cure.gentler.percent());
    }
    return {};
}

} // namespace undermark
