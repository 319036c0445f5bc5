// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/problem.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

namespace undermark::planning {

namespace {

bool isOneOf(double value, double lowest, double highest)
{
    return std::isfinite(value) && value >= lowest && value <= highest;
}

Result<void> checkTank(const Tank& tank)
{
    const double capacity = tank.capacity.litres();
    if (!(std::isfinite(capacity) && capacity > 0))
        return failInput("the tank's capacity must be above 0", "litres above 0");
    if (!isOneOf(tank.start.mean.litres(), 0, capacity + 1e-9))
        return failInput("the level at the start does not fit the tank",
                         "0 to " + std::to_string(capacity) + " L",
                         std::to_string(tank.start.mean.litres()) + " L");
    if (!isOneOf(tank.floor.litres(), 0, capacity) || !isOneOf(tank.end.litres(), 0, capacity))
        return failInput("the floor and the level at the finish must fit the tank",
                         "0 to " + std::to_string(capacity) + " L");
    if (!isOneOf(tank.start.sd.litres(), 0, 1e6) || !isOneOf(tank.fullSd.litres(), 0, 1e6))
        return failInput("a standard deviation of the level must be 0 or more",
                         "litres of 0 or more");
    return {};
}

Result<void> checkRates(const RateModel& rates)
{
    const std::size_t modes = std::max<std::size_t>(rates.modes.size(), 1);
    if (rates.mean.size() != modes || rates.covariance.size() != modes * modes)
        return failInput("every mode needs one rate and its covariances");
    for (const Consumption rate : rates.mean) {
        if (!(isFinite(rate) && rate > Consumption()))
            return failInput("a rate must be above 0", "L/100 km above 0");
    }
    for (std::size_t i = 0; i < modes; ++i) {
        if (!(rates.covariance[i * modes + i] >= 0))
            return failInput("the variance of a rate must be 0 or more");
    }
    if (!isOneOf(rates.legNoiseSd, 0, 1e6) || !(rates.idling >= FlowRate()))
        return failInput("leg noise and idling rate must be 0 or more");
    return {};
}

Result<void> checkRequest(const PlanRequest& request)
{
    if (auto sound = checkRoute(request.route); !sound)
        return sound;
    if (auto sound = checkTank(request.tank); !sound)
        return sound;
    if (auto sound = checkRates(request.rates); !sound)
        return sound;
    const double trip = request.tripConfidence.value_or(request.confidence).value();
    if (!(request.confidence.value() >= 0.5 && request.confidence.value() < 1 && trip >= 0.5 &&
          trip < 1))
        return failInput("a confidence must be from 0.5 to below 1", "0.5 to 0.999999");
    if (!isOneOf(request.stopCost, 0, 1e12))
        return failInput("a stop costs 0 or more");
    if (request.cans < 0 || (request.cans > 0 && !(request.canVolume > Volume())))
        return failInput("cans need a number and the litres of each", "litres above 0");
    if (request.aim == Aim::time && request.pumpFlow && !(*request.pumpFlow > FlowRate()))
        return failInput("the pump's flow must be above 0", "litres per minute above 0");
    for (const RoutePoint& point : request.route.points) {
        if (request.rules.zoneLimitDemanded && point.fuel == FuelSource::zone &&
            !point.mostPurchase)
            return failInput("the event demands a limit for every refuel zone", "max_litres",
                             point.name);
    }
    return {};
}

Result<int> modeIndex(const RateModel& rates, const RoutePoint& point)
{
    if (rates.modes.empty())
        return 0;
    const auto found = std::ranges::find(rates.modes, point.mode);
    if (found == rates.modes.end()) {
        Error error;
        error.code = ErrorCode::notFound;
        error.detail = "there is no consumption for this mode of driving, at '" + point.name + "'";
        error.found = point.mode;
        return fail(error);
    }
    return static_cast<int>(found - rates.modes.begin());
}

Result<void> addSections(const PlanRequest& request, Problem& problem)
{
    const auto& points = request.route.points;
    const auto modes = static_cast<std::size_t>(problem.modes);
    problem.fuelTo.assign(points.size(), 0.0);
    problem.noiseTo.assign(points.size(), 0.0);
    problem.kmTo.assign(points.size() * modes, 0.0);
    const double noise = request.rates.legNoiseSd * request.rates.legNoiseSd;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Result<int> mode = modeIndex(request.rates, points[i]);
        if (!mode)
            return fail(mode.error());
        const auto m = static_cast<std::size_t>(*mode);
        const Distance length = points[i + 1].at - points[i].at;
        const double idleHours = points[i].idle.value_or(Minutes{}).count() / 60.0;
        problem.fuelTo[i + 1] = problem.fuelTo[i] + (request.rates.mean[m] * length).litres() +
                                request.rates.idling.litresPerHour() * idleHours;
        problem.noiseTo[i + 1] = problem.noiseTo[i] + noise * length.km();
        for (std::size_t k = 0; k < modes; ++k)
            problem.kmTo[(i + 1) * modes + k] = problem.kmTo[i * modes + k];
        problem.kmTo[(i + 1) * modes + m] += length.km();
        const double detour = points[i].detour.value_or(Distance()).km();
        problem.offers[i].detourLitres = request.rates.mean[m].litresPerKm() * detour;
    }
    return {};
}

bool isOpen(const PlanRequest& request, const RoutePoint& point)
{
    switch (point.fuel) {
    case FuelSource::none:
        return false;
    case FuelSource::pump:
        return !request.rules.zonesOnly;
    case FuelSource::zone:
        return true;
    case FuelSource::can:
        return !request.rules.cansForbidden && (request.cans > 0 || point.mostPurchase);
    }
    return false;
}

Result<void> addOffers(const PlanRequest& request, Problem& problem)
{
    bool anyPrice = false;
    const RoutePoint* unpriced = nullptr;
    for (std::size_t i = 0; i < request.route.points.size(); ++i) {
        const RoutePoint& point = request.route.points[i];
        Offer& offer = problem.offers[i];
        offer.open = isOpen(request, point);
        if (!offer.open)
            continue;
        offer.fromCans = point.fuel == FuelSource::can && request.cans > 0;
        offer.clicks = point.fuel != FuelSource::can;
        offer.least = point.leastPurchase.value_or(Volume()).litres();
        offer.most = point.mostPurchase ? point.mostPurchase->litres() : kNoLimit;
        offer.perLitre = point.pricePerLitre.value_or(0.0);
        offer.perStop = request.stopCost;
        anyPrice = anyPrice || point.pricePerLitre;
        if (!point.pricePerLitre && point.fuel != FuelSource::can)
            unpriced = &point;
    }
    if (request.aim == Aim::cost && anyPrice && unpriced)
        return failInput("a price is missing while other points have one", "a price per litre",
                         unpriced->name);
    return {};
}

// Turns money into the aim's objective; money stays as the tie-breaker, scaled
// so that all of it together weighs less than kTie of the aim's unit.
void applyAim(const PlanRequest& request, Problem& problem)
{
    constexpr double kTie = 1e-6;
    double dearest = 0.0;
    for (const Offer& offer : problem.offers)
        dearest = std::max(dearest, offer.perLitre);
    const double mostMoney =
        1.0 + request.stopCost * problem.points +
        dearest * (problem.fuelTo.back() + 2 * std::min(problem.capacity, problem.fuelTo.back()));
    const bool someTimed = std::ranges::any_of(request.route.points, &RoutePoint::timed);
    const double flow =
        request.pumpFlow.value_or(FlowRate::fromLitresPerHour(2400)).litresPerHour();
    for (std::size_t i = 0; i < problem.offers.size(); ++i) {
        const RoutePoint& point = request.route.points[i];
        Offer& offer = problem.offers[i];
        const bool stops = request.aim == Aim::stops;
        if (request.aim != Aim::cost) {
            offer.perLitre *= (stops ? 0.5 : kTie) / mostMoney;
            offer.perStop *= (stops ? 0.5 : kTie) / mostMoney;
        }
        if (stops)
            offer.perStop += 1.0;
        if (request.aim == Aim::cost || request.aim == Aim::weight)
            offer.perStop += 1e-9; // of equal plans, the one with fewer stops
        if (request.aim == Aim::time) {
            offer.perLitre += 60.0 / flow;
            offer.perStop += point.stopTime.value_or(Minutes{}).count();
            if (point.detour && request.speed)
                offer.perStop += 60.0 * point.detour->km() / request.speed->kmPerHour();
        }
        if (request.aim == Aim::weight && i + 1 < problem.offers.size() &&
            (point.timed || !someTimed))
            problem.hold[i] = (request.route.points[i + 1].at - point.at).km();
    }
}

} // namespace

double Problem::variance(int since, int point) const
{
    const int from = std::max(since, 0);
    const double level = since == kStart ? startVariance : fullVariance;
    const double* here = &kmTo[static_cast<std::size_t>(point * modes)];
    const double* there = &kmTo[static_cast<std::size_t>(from * modes)];
    double common = 0.0;
    for (int i = 0; i < modes; ++i) {
        for (int j = 0; j < modes; ++j)
            common += (here[i] - there[i]) * covariance[static_cast<std::size_t>(i * modes + j)] *
                      (here[j] - there[j]);
    }
    const double noise =
        noiseTo[static_cast<std::size_t>(point)] - noiseTo[static_cast<std::size_t>(from)];
    return level + std::max(common, 0.0) + noise;
}

double Problem::leastSupply(int since, int point) const
{
    const double spread = uncertain ? z * std::sqrt(variance(since, point)) : 0.0;
    return fuelTo[static_cast<std::size_t>(point)] + least[static_cast<std::size_t>(point)] +
           spread;
}

Result<Problem> makeProblem(const PlanRequest& request)
{
    if (const auto sound = checkRequest(request); !sound)
        return fail(sound.error());
    Problem problem;
    const std::size_t count = request.route.points.size();
    problem.points = static_cast<int>(count);
    problem.modes = static_cast<int>(std::max<std::size_t>(request.rates.modes.size(), 1));
    problem.capacity = request.tank.capacity.litres();
    problem.start = request.tank.start.mean.litres();
    problem.startVariance = std::pow(request.tank.start.sd.litres(), 2);
    problem.fullVariance = std::pow(request.tank.fullSd.litres(), 2);
    problem.z = boost::math::quantile(boost::math::normal(), request.confidence.value());
    problem.cans = request.rules.cansForbidden ? 0 : request.cans;
    problem.canLitres = request.canVolume.litres();
    problem.covariance = request.rates.covariance;
    problem.spreadGrows = std::ranges::all_of(problem.covariance, [](double c) { return c >= 0; });
    problem.least.assign(count, request.tank.floor.litres());
    problem.least.back() = std::max(request.tank.floor, request.tank.end).litres();
    problem.hold.assign(count, 0.0);
    problem.offers.resize(count);
    if (const auto added = addSections(request, problem); !added)
        return fail(added.error());
    if (!(std::isfinite(problem.fuelTo.back()) &&
          std::isfinite(problem.variance(kStart, problem.points - 1))))
        return failInput("the way needs more fuel than can be counted");
    if (const auto added = addOffers(request, problem); !added)
        return fail(added.error());
    applyAim(request, problem);
    problem.uncertain =
        problem.variance(kStart, problem.points - 1) > 0 || problem.fullVariance > 0;
    return problem;
}

} // namespace undermark::planning
