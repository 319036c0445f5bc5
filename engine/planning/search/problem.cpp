// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/problem.h"

#include "engine/planning/request_check.h"
#include "engine/planning/route_rates.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace undermark::planning {

namespace {

constexpr double kTie = 1e-6; // of the aim's unit: breaks ties
constexpr double kForEver = std::numeric_limits<double>::infinity(); // days
// Of the risk allowed on an arrival: how likely the pump may click before the litres wanted are
// in, and a limit end before it clicks. Both are taken for never where they are less likely.
constexpr double kClickShare = 0.01;

// Hours, or dates where the day of the departure is known.
bool hasHours(const PlanRequest& request, const RoutePoint& point)
{
    return point.opens || point.closes || (request.departureDay && (point.firstDay || point.lastDay));
}

// Counted from the day of the departure.
double dayOf(const PlanRequest& request, const std::optional<std::chrono::sys_days>& date, double none)
{
    return date && request.departureDay ? double((*date - *request.departureDay).count()) : none;
}

bool isOpen(const PlanRequest& request, const RoutePoint& point)
{
    if (point.fuel == FuelSource::can)
        return !request.rules.cansForbidden && (request.cans > 0 || point.mostPurchase);
    if (point.fuel == FuelSource::crew)
        return !request.rules.zonesOnly && (request.crewCans > 0 || point.mostPurchase);
    return sellsFuel(request.rules, point);
}

// What the prices and limits of the aims need to know of the whole route.
struct Prices {
    bool any = false;
    double dearest = 0.0;
    const RoutePoint* missing = nullptr; // a point that should state one
};

Offer offerOf(const PlanRequest& request, const RoutePoint& point, Prices& prices)
{
    Offer offer;
    offer.open = isOpen(request, point);
    if (!offer.open)
        return offer;
    const bool poured = point.fuel == FuelSource::can || point.fuel == FuelSource::crew;
    offer.fromCrew = point.fuel == FuelSource::crew && request.crewCans > 0;
    offer.fromCans = offer.fromCrew || (point.fuel == FuelSource::can && request.cans > 0);
    offer.clicks = !poured;
    offer.least = point.leastPurchase.value_or(Volume()).litres();
    offer.most = point.mostPurchase ? point.mostPurchase->litres() : kNoLimit;
    offer.perLitre = point.pricePerLitre.value_or(0.0);
    offer.perStop = request.stopCost;
    prices.any = prices.any || point.pricePerLitre;
    prices.dearest = std::max(prices.dearest, offer.perLitre);
    if (!point.pricePerLitre && !poured)
        prices.missing = &point;
    return offer;
}

// One pass over the route: checks it, adds up the sections, notes the offers.
class Sections {
public:
    Sections(const PlanRequest& request, const RouteRates& route, Problem& problem)
        : m_request(request), m_rates(route.rates), m_surge(route.surge), m_problem(problem)
    {
        const std::size_t count = request.route.points.size();
        problem.at.reserve(count);
        problem.fuelTo.reserve(count);
        problem.timed.reserve(count);
        problem.offers.reserve(count);
        if (!m_surge.empty())
            problem.surgeTo.push_back(0.0); // at the start nothing was driven yet
        m_byMode = problem.modes > 1;
        m_km.assign(static_cast<std::size_t>(problem.modes), 0.0);
    }

    Result<Prices> add()
    {
        const auto& points = m_request.route.points;
        for (std::size_t i = 0; i < points.size(); ++i) {
            if (auto sound = check(i); !sound)
                return fail(sound.error());
            const RoutePoint& point = points[i];
            m_problem.at.push_back(point.at.km());
            m_problem.fuelTo.push_back(m_fuel);
            m_problem.timed.push_back(point.timed);
            m_problem.someTimed = m_problem.someTimed || point.timed;
            m_problem.offers.push_back(offerOf(m_request, point, m_prices));
            m_problem.hasHours = m_problem.hasHours ||
                                 (m_problem.offers.back().open && hasHours(m_request, point));
            if (m_byMode)
                m_problem.kmTo.insert(m_problem.kmTo.end(), m_km.begin(), m_km.end());
            addFloor(i);
            if (i + 1 == points.size())
                break;
            drive(point, points[i + 1].at - point.at);
        }
        return m_prices;
    }

private:
    Result<void> check(std::size_t i) const
    {
        const RoutePoint& point = m_request.route.points[i];
        if (m_request.rules.zoneLimitDemanded && point.fuel == FuelSource::zone &&
            !point.mostPurchase)
            return failInput(Sentence::of("the event demands a limit for every refuel zone"),
                             Sentence::of("max_litres"), point.name);
        return checkRoutePoint(m_request.route, i);
    }

    void addFloor(std::size_t i)
    {
        const std::optional<Volume>& floor = m_request.route.points[i].floor;
        if (!floor || i == 0) // it holds on arrival
            return;
        m_problem.floors.resize(m_request.route.points.size());
        m_problem.floors[i] = floor->litres();
    }

    void drive(const RoutePoint& point, Distance length)
    {
        const std::size_t m = *m_rates.indexOf(point.mode);
        const Consumption rate = m_rates.mean[m];
        const RouteLeg leg{length, m, point.climb.there};
        m_fuel += m_rates.burntOver({&leg, 1}).litres();
        if (m_problem.climbMode != kNoMode)
            climb(leg, point.climb.back);
        if (point.idle)
            m_fuel += m_rates.idling.litresPerHour() * point.idle->count() / 60.0;
        if (point.detour) {
            Offer& offer = m_problem.offers.back();
            offer.detourLitres = (rate * *point.detour).litres();
            offer.detourKm = point.detour->km();
            offer.detourMode = static_cast<int>(m);
        }
        if (!m_surge.empty())
            m_problem.surgeTo.push_back(m_surge[m]);
        m_km[m] += length.km();
    }

    void climb(const RouteLeg& leg, Distance back)
    {
        const double there = m_rates.climbKm(leg);
        m_problem.falls = m_problem.falls || there < 0;
        m_km[static_cast<std::size_t>(m_problem.climbMode)] += there;
        auto& backTo = m_problem.climbBackTo;
        if (backTo.empty())
            backTo.push_back(0.0);
        backTo.push_back(backTo.back() + m_rates.climbKm({leg.length, leg.mode, back}));
    }

    const PlanRequest& m_request;
    const RateModel& m_rates;
    const std::vector<double>& m_surge; // L by mode, empty: none
    Problem& m_problem;
    Prices m_prices;
    std::vector<double> m_km; // by mode
    double m_fuel = 0.0;
    bool m_byMode = false;
};

Timetable timetableOf(const PlanRequest& request, const Problem& problem)
{
    Timetable table;
    table.departure = request.departure->count();
    table.minutesPerLitre = pouringTime(request, Volume::fromLitres(1)).count();
    table.startLitres = problem.start;
    table.mostWait = request.mostWait.count();
    table.perMinuteWaited = request.aim == Aim::time ? 1.0 : kTie;
    for (const Minutes& way : timesOnTheWay(request))
        table.onTheWay.push_back(way.count());
    for (std::size_t i = 0; i < problem.offers.size(); ++i) {
        const RoutePoint& point = request.route.points[i];
        const double halfDetour =
            drivingTime(speedIn(request, point.mode), point.detour.value_or(Distance())).count() / 2;
        table.hours.push_back({point.opens.value_or(Minutes(0)).count() - halfDetour,
                               point.closes.value_or(Minutes(24 * 60)).count() - halfDetour,
                               dayOf(request, point.firstDay, -kForEver), dayOf(request, point.lastDay, kForEver)});
        // The clock takes the supply gained for what was poured: more by what the detour burnt.
        table.stopMinutes.push_back(stoppingTime(request, point).count() +
                                    problem.offers[i].detourLitres * table.minutesPerLitre);
        if (problem.offers[i].open && hasHours(request, point))
            table.last = static_cast<int>(i);
    }
    return table;
}

// Turns money into the aim's objective; money stays as the tie-breaker, scaled
// so that all of it together weighs less than kTie of the aim's unit.
void applyAim(const PlanRequest& request, double dearest, Problem& problem)
{
    constexpr double kFewerStops = 1e-9; // of equal plans, the one with fewer stops
    if (request.aim == Aim::cost) {
        for (Offer& offer : problem.offers)
            offer.perStop += kFewerStops;
        return;
    }
    const double mostMoney =
        1.0 + request.stopCost * problem.points +
        dearest * (problem.fuelTo.back() + 2 * std::min(problem.capacity, problem.fuelTo.back()));
    const double money = (request.aim == Aim::stops ? 0.5 : kTie) / mostMoney;
    problem.carryingCosts = request.aim == Aim::weight;
    for (std::size_t i = 0; i < problem.offers.size(); ++i) {
        const RoutePoint& point = request.route.points[i];
        Offer& offer = problem.offers[i];
        offer.perLitre *= money;
        offer.perStop *= money;
        if (request.aim == Aim::stops)
            offer.perStop += 1.0;
        if (request.aim == Aim::weight)
            offer.perStop += kFewerStops;
        if (request.aim == Aim::time) {
            offer.perLitre += pouringTime(request, Volume::fromLitres(1)).count();
            offer.perStop += stoppingTime(request, point).count();
        }
    }
}

// A longer run never asks for less: no covariance takes a spread back, and the confidence
// is beyond the place where a skewed law's spread would help.
bool needsGrow(const Problem& problem)
{
    if (std::ranges::any_of(problem.covariance, [](double c) { return c < 0; }))
        return false;
    const LevelSpread factorAlone{0.0, 0.0, 1.0};
    return problem.worlds.size() == 1 ||
           riskBelow(0.0, factorAlone, problem.worlds) > problem.allowed.risk;
}

// One mode more, independent of the others.
void addClimb(const RouteRates& route, Problem& problem)
{
    const auto n = static_cast<std::size_t>(problem.modes);
    std::vector<double> wider((n + 1) * (n + 1), 0.0);
    for (std::size_t i = 0; i < n; ++i)
        std::copy_n(problem.covariance.begin() + static_cast<std::ptrdiff_t>(i * n), n,
                    wider.begin() + static_cast<std::ptrdiff_t>(i * (n + 1)));
    wider.back() = std::pow(route.rates.climb.sd.litresPerKm(), 2);
    problem.covariance = std::move(wider);
    problem.rates.push_back(route.rates.climb.mean.litresPerKm());
    problem.kmPast.push_back(route.climbPast);
    problem.climbMode = problem.modes++;
}

Result<RouteRates> addRates(const PlanRequest& request, Problem& problem)
{
    Result<RouteRates> route = ratesOnRoute(request);
    if (!route)
        return route;
    const RateModel& rates = route->rates;
    problem.modes = static_cast<int>(rates.mean.size());
    for (const Consumption rate : rates.mean)
        problem.rates.push_back(rate.litresPerKm());
    problem.covariance = rates.covariance;
    problem.worlds = rates.worlds;
    problem.noisePerKm = rates.legNoiseSd * rates.legNoiseSd;
    problem.kmPast = route->kmPast;
    if (route->climbs)
        addClimb(*route, problem);
    problem.needsGrow = needsGrow(problem);
    return route;
}

} // namespace

Result<Problem> makeProblem(const PlanRequest& request)
{
    if (const auto sound = checkRequest(request); !sound)
        return fail(sound.error());
    Problem problem;
    problem.points = static_cast<int>(request.route.points.size());
    problem.capacity = request.tank.capacity.litres();
    problem.start = request.tank.start.mean.litres();
    problem.startVariance = std::pow(request.tank.start.sd.litres(), 2);
    problem.fullVariance = std::pow(request.tank.fullSd.litres(), 2);
    problem.allowed = AllowedRisk::of(1 - request.confidence.value());
    if (request.stageConfidence)
        problem.onStage = AllowedRisk::of(1 - request.stageConfidence->value());
    problem.cans = request.rules.cansForbidden ? 0 : request.cans;
    problem.crewCans = request.crewCans;
    problem.canLitres = request.canVolume.litres();
    problem.floor = request.tank.floor.litres();
    problem.atFinish = request.tank.end.litres();
    const Result<RouteRates> route = addRates(request, problem);
    if (!route)
        return fail(route.error());
    const Result<Prices> prices = Sections(request, *route, problem).add();
    if (!prices)
        return fail(prices.error());
    if (!(std::isfinite(problem.fuelTo.back()) &&
          std::isfinite(problem.variance(kStart, problem.points - 1))))
        return failInput(Sentence::of("the way needs more fuel than can be counted"));
    if (request.aim == Aim::cost && prices->any && prices->missing)
        return failInput(Sentence::of("a price is missing while other points have one"),
                         Sentence::of("a price per litre"), prices->missing->name);
    problem.needsGrow = problem.needsGrow && !problem.falls;
    applyAim(request, prices->dearest, problem);
    if (request.departure && request.speed)
        problem.timetable = timetableOf(request, problem);
    problem.clickZ = AllowedRisk::of(problem.allowed.risk * kClickShare).z;
    problem.uncertain =
        problem.variance(kStart, problem.points - 1) > 0 || problem.fullVariance > 0;
    return problem;
}

} // namespace undermark::planning
