// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/cures.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kMostGentle = 0.5; // nobody halves a car's consumption
constexpr int kPourPlacesPerTank = 16;

bool stopped(const GoOn& goOn)
{
    return goOn && !goOn(std::nullopt);
}

double roundedUp(double value, double step)
{
    return std::ceil(value / step - 1e-9) * step;
}

// The least litres of one kind of fuel: that kind costs 1 a litre, everything
// else nothing, and the cheapest plan is the answer.
PlanRequest pricedAtNothing(const PlanRequest& request)
{
    PlanRequest free = request;
    free.aim = Aim::cost;
    free.stopCost = 0.0;
    free.leastStop = Volume(); // the least litres are what is asked for
    for (RoutePoint& point : free.route.points)
        point.pricePerLitre = 0.0;
    return free;
}

// Planned again and again rather than bought at the start: pouring takes time, and the pump may
// click before the tank is as full as it can be.
Result<std::optional<Cure>> startWithMore(const PlanRequest& request, const GoOn& goOn)
{
    const double room = (request.tank.capacity - request.tank.start.mean).litres();
    const double step = 0.1;
    std::optional<Cure> least;
    const auto proves = [&](double litres) -> Result<bool> {
        PlanRequest cured = request;
        cured.tank.start.mean += Volume::fromLitres(litres);
        Result<Plan> proof = plan(cured, goOn);
        if (!proof)
            return fail(proof.error());
        const bool feasible = proof->feasible;
        if (feasible)
            least = Cure{CureKind::startWithMore, Volume::fromLitres(litres), {}, {}, std::move(*proof)};
        return feasible;
    };
    int tooLittle = 0; // steps; the tank's last is shorter
    int enough = int(std::ceil(room / step - 1e-9));
    for (int tried = enough; tooLittle < enough; tried = (tooLittle + enough) / 2) {
        if (stopped(goOn))
            return std::optional<Cure>(); // what was found may not be the least
        const Result<bool> proven = proves(std::min(tried * step, room));
        if (!proven)
            return fail(proven.error());
        if (!least)
            return least;
        (*proven ? enough : tooLittle) = tried;
        if (tooLittle + 1 == enough)
            break;
    }
    return least;
}

// The route with a place to pour a can in at every point and, on long sections,
// between points.
Route withPourPlaces(const PlanRequest& request, double price)
{
    Route route;
    const auto& points = request.route.points;
    double thirst = 0.0;
    for (const Consumption rate : request.rates.mean)
        thirst = std::max(thirst, rate.litresPerKm());
    const double step = request.tank.capacity.litres() / thirst / kPourPlacesPerTank;
    for (std::size_t i = 0; i < points.size(); ++i) {
        route.points.push_back(points[i]);
        if (i + 1 == points.size())
            break;
        route.points.back().climb = {}; // no way to the first of the places
        const double length = (points[i + 1].at - points[i].at).km();
        const int places = static_cast<int>(std::min(std::floor(length / step), 1000.0));
        for (int k = 0; k <= places; ++k) {
            RoutePoint pour = pointOnSection(
                points[i], points[i].at + Distance::fromKm(length * k / (places + 1)), "own can");
            pour.climb = points[i].climb * (1.0 / (places + 1));
            pour.fuel = FuelSource::can;
            pour.pricePerLitre = price;
            pour.mostPurchase = request.tank.capacity;
            route.points.push_back(pour);
        }
    }
    return route;
}

Result<std::optional<Cure>> carryInCans(const PlanRequest& request, const GoOn& goOn)
{
    if (request.rules.cansForbidden || request.cans > 0)
        return std::optional<Cure>();
    PlanRequest asked = pricedAtNothing(request);
    asked.route = withPourPlaces(asked, 1.0);
    Result<Plan> proof = plan(asked, goOn);
    if (!proof)
        return fail(proof.error());
    if (!proof->feasible || proof->stopped)
        return std::optional<Cure>();
    Volume poured;
    for (const PlannedStop& stop : proof->stops) {
        if (asked.route.points[stop.point].name == "own can")
            poured += stop.buy;
    }
    Cure cure{CureKind::carryInCans, Volume::fromLitres(roundedUp(poured.litres(), 0.1))};
    cure.plan = std::move(*proof);
    return std::optional(std::move(cure));
}

PlanRequest gentlerBy(const PlanRequest& request, double fraction)
{
    PlanRequest gentle = request;
    for (Consumption& rate : gentle.rates.mean)
        rate = rate * (1 - fraction);
    return gentle;
}

Result<std::optional<Cure>> driveGentler(const PlanRequest& request, const GoOn& goOn)
{
    double tooLittle = 0.0;
    double enough = kMostGentle;
    for (int i = 0; i < 16; ++i) {
        if (stopped(goOn))
            return std::optional<Cure>();
        const double tried = i == 0 ? enough : (tooLittle + enough) / 2;
        const Result<Plan> answer = plan(gentlerBy(request, tried), goOn);
        if (!answer)
            return fail(answer.error());
        if (i == 0 && !answer->feasible)
            return std::optional<Cure>();
        (answer->feasible ? enough : tooLittle) = tried;
    }
    const double fraction = roundedUp(enough, 0.001);
    Result<Plan> proof = plan(gentlerBy(request, fraction), goOn);
    if (!proof)
        return fail(proof.error());
    Cure cure{CureKind::driveGentler, {}, Fraction::fromRatio(fraction)};
    cure.plan = std::move(*proof);
    return cure.plan.feasible ? std::optional(cure) : std::nullopt;
}

Result<std::optional<Cure>> anotherPump(const PlanRequest& request, const Shortfall& shortfall,
                                        const GoOn& goOn)
{
    const Distance latest = Distance::fromKm(std::floor(shortfall.farthest.km()));
    PlanRequest asked = request;
    std::vector<RoutePoint>& points = asked.route.points;
    if (latest < points[shortfall.from].at)
        return std::optional<Cure>();
    RoutePoint pump = pointOnSection(points[shortfall.from], latest, "another pump");
    pump.fuel = request.rules.zonesOnly ? FuelSource::zone : FuelSource::pump;
    pump.mostPurchase = request.tank.capacity; // which a rule may demand to be stated
    for (const RoutePoint& point : points)
        if (point.pricePerLitre) // the dearest: it is not to be hoped for
            pump.pricePerLitre = std::max(pump.pricePerLitre.value_or(0.0), *point.pricePerLitre);
    RoutePoint& behind = points[shortfall.from];
    const Distance section = points[shortfall.from + 1].at - behind.at;
    const double part = section > Distance() ? (latest - behind.at) / section : 0.0;
    pump.climb = behind.climb * (1 - part);
    behind.climb = behind.climb * part;
    points.insert(points.begin() + static_cast<std::ptrdiff_t>(shortfall.from) + 1, pump);
    Result<Plan> proof = plan(asked, goOn);
    if (!proof)
        return fail(proof.error());
    Cure cure{CureKind::anotherPump, {}, {}, latest};
    cure.plan = std::move(*proof);
    return cure.plan.feasible ? std::optional(std::move(cure)) : std::nullopt;
}

} // namespace

Result<std::vector<Cure>> findCures(const PlanRequest& request, const GoOn& goOn)
{
    std::vector<Cure> cures;
    const Result<Plan> asIs = plan(request, goOn);
    if (!asIs)
        return fail(asIs.error());
    if (asIs->feasible)
        return cures;
    for (const auto find : {startWithMore, carryInCans, driveGentler}) {
        if (stopped(goOn))
            return cures;
        Result<std::optional<Cure>> cure = find(request, goOn);
        if (!cure)
            return fail(cure.error());
        if (*cure)
            cures.push_back(std::move(**cure));
    }
    Result<std::optional<Cure>> pump = anotherPump(request, *asIs->shortfall, goOn);
    if (!pump)
        return fail(pump.error());
    if (*pump)
        cures.push_back(std::move(**pump));
    return cures;
}

} // namespace undermark
