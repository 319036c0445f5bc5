// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/plan_request.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// What a stop has to bring: the least that a pump need measure rightly, which stands on its
// plate (minimum measured quantity of OIML R 117: mostly 2 or 5 L; from memory).
constexpr Volume kLeastStop = Volume::fromLitres(2);

constexpr Minutes kMostWait{60}; // at a place that is not open yet: a usual halt (no source)

// Heights, of which the rates hold the usual ones already, become what is beyond them.
void takeUsualHills(Route& route, double usual)
{
    for (std::size_t i = 0; i + 1 < route.points.size(); ++i) {
        SectionClimb& climb = route.points[i].climb;
        if (climb == SectionClimb())
            continue;
        const Distance hills = (route.points[i + 1].at - route.points[i].at) * usual;
        climb = {climb.there - hills, climb.back - hills};
    }
}

bool statesPrice(const RoutePoint& point) { return point.pricePerLitre.has_value(); }

} // namespace

Result<TankAndRate> tankFromCar(const CarKnowledge& car, const Question& question)
{
    Result<Outlook> now = outlook(car, question);
    if (!now)
        return fail(now.error());
    const JointLaw& law = now->law;
    const Estimate<Volume> capacity = car.usableCapacity();
    TankAndRate both;
    both.tank.capacity = capacity.mean;
    both.tank.start = {now->usable.mean, law.usable.sd};
    if (now->source != LevelSource::given) // what was told is checked, not mended
        both.tank.start.mean = std::clamp(now->usable.mean, Volume(), capacity.mean);
    both.tank.driven = law.driven;
    both.tank.fullSd = fullFillSd(car);
    both.tank.surge = law.surge;
    both.tank.zeroMark = now->reserve.mean;
    both.rates = law.rates;
    both.fuel = car.vehicle().fuel;
    both.currency = car.vehicle().currency.value_or(std::string());
    both.ofCar = true;
    both.warnings = std::move(now->warnings);
    return both;
}

Aim usualAim(const Route& route)
{
    return std::ranges::any_of(route.points, statesPrice) ? Aim::cost : Aim::stops;
}

bool pricesAreKnown(const Route& route)
{
    const auto unpriced = [](const RoutePoint& point) {
        return sellsFuel({}, point) && !statesPrice(point);
    };
    return std::ranges::none_of(route.points, unpriced) ||
           std::ranges::none_of(route.points, statesPrice);
}

double usualStopCost(const Route& route)
{
    std::vector<double> prices;
    for (const RoutePoint& point : route.points)
        if (sellsFuel({}, point) && point.pricePerLitre)
            prices.push_back(*point.pricePerLitre);
    if (prices.empty())
        return 0.0;
    const auto middle = prices.begin() + std::ptrdiff_t(prices.size() / 2);
    std::ranges::nth_element(prices, middle);
    return *middle;
}

Probability usualStageConfidence(Probability confidence)
{
    return Probability::of(1 - (1 - confidence.value()) / 10);
}

void setConfidence(PlanRequest& request, Probability confidence)
{
    request.confidence = confidence;
    if (request.stageConfidence)
        request.stageConfidence = usualStageConfidence(confidence);
}

PlanRequest planRequest(Route route, const TankAndRate& car)
{
    PlanRequest request;
    request.aim = usualAim(route);
    request.route = std::move(route);
    request.tank = car.tank;
    request.rates = car.rates;
    takeUsualHills(request.route, car.rates.usualClimb);
    request.currency = car.currency;
    if (car.ofCar) {
        request.leastStop = kLeastStop;
        request.stopCost = usualStopCost(request.route);
        request.stageConfidence = usualStageConfidence(request.confidence);
    }
    request.startNotes = car.warnings;
    request.mostWait = kMostWait;
    return request;
}

} // namespace undermark
