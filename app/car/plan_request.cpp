// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/plan_request.h"

#include "engine/base/format.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// The modes, and one of no name for road that states none: driven in the usual
// mix, whose own uncertainty is added.
RateModel ratesWithUsualMix(const ModeRates& rates)
{
    const std::size_t n = rates.modes.size();
    const auto share = [&](std::size_t m) { return rates.usualMix[m].ratio(); };
    RateModel model;
    model.modes = rates.modes;
    model.modes.emplace_back();
    model.mean = rates.mean;
    Consumption mixed;
    std::vector<double> withMix(n + 1, 0.0); // covariances of the mix
    for (std::size_t a = 0; a < n; ++a) {
        mixed += rates.mean[a] * share(a);
        for (std::size_t b = 0; b < n; ++b)
            withMix[a] += rates.covariance[a * n + b] * share(b);
        withMix[n] += share(a) * withMix[a];
    }
    model.mean.push_back(mixed);
    withMix[n] += rates.usualMixVariance;
    for (std::size_t a = 0; a < n; ++a) {
        for (std::size_t b = 0; b < n; ++b)
            model.covariance.push_back(rates.covariance[a * n + b]);
        model.covariance.push_back(withMix[a]);
    }
    model.covariance.insert(model.covariance.end(), withMix.begin(), withMix.end());
    model.legNoiseSd = std::sqrt(rates.tauSquaredPerKm);
    model.idling = rates.idle.mean;
    return model;
}

} // namespace

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
    both.rates = ratesWithUsualMix(car.consumption.model.rates());
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
