// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/problem.h"

#include "engine/base/normal_law.h"
#include "engine/planning/request_check.h"
#include "engine/planning/route_rates.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

bool isOpen(const PlanRequest& request, const RoutePoint& point)
{
    if (point.fuel == FuelSource::can)
        return !request.rules.cansForbidden && (request.cans > 0 || point.mostPurchase);
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
    offer.fromCans = point.fuel == FuelSource::can && request.cans > 0;
    offer.clicks = point.fuel != FuelSource::can;
    offer.least = point.leastPurchase.value_or(Volume()).litres();
    offer.most = point.mostPurchase ? point.mostPurchase->litres() : kNoLimit;
    offer.perLitre = point.pricePerLitre.value_or(0.0);
    offer.perStop = request.stopCost;
    prices.any = prices.any || point.pricePerLitre;
    prices.dearest = std::max(prices.dearest, offer.perLitre);
    if (!point.pricePerLitre && point.fuel != FuelSource::can)
        prices.missing = &point;
    return offer;
}

// One pass over the route: checks it, adds up the sections, notes the offers.
class Sections {
public:
    Sections(const PlanRequest& request, const RateModel& rates, Problem& problem)
        : m_request(request), m_rates(rates), m_problem(problem)
    {
        const std::size_t count = request.route.points.size();
        problem.at.reserve(count);
        problem.fuelTo.reserve(count);
        problem.timed.reserve(count);
        problem.offers.reserve(count);
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
                                 (m_problem.offers.back().open && (point.opens || point.closes));
            if (m_byMode)
                m_problem.kmTo.insert(m_problem.kmTo.end(), m_km.begin(), m_km.end());
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

    void drive(const RoutePoint& point, Distance length)
    {
        const std::size_t m = *modeOf(m_rates, point);
        const Consumption rate = m_rates.mean[m];
        m_fuel += (rate * length).litres();
        if (point.idle)
            m_fuel += m_rates.idling.litresPerHour() * point.idle->count() / 60.0;
        if (point.detour)
            m_problem.offers.back().detourLitres = (rate * *point.detour).litres();
        m_km[m] += length.km();
    }

    const PlanRequest& m_request;
    const RateModel& m_rates;
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
    table.minutesPerKm = 60.0 / request.speed->kmPerHour();
    table.minutesPerLitre = pouringTime(request, Volume::fromLitres(1)).count();
    table.startKm = problem.at.front();
    table.startLitres = problem.start;
    for (std::size_t i = 0; i < problem.offers.size(); ++i) {
        const RoutePoint& point = request.route.points[i];
        table.hours.push_back({point.opens.value_or(Minutes(0)).count(),
                               point.closes.value_or(Minutes(24 * 60)).count()});
        // The clock takes the supply gained for what was poured: more by what the detour burnt.
        table.stopMinutes.push_back(stoppingTime(request, point).count() +
                                    problem.offers[i].detourLitres * table.minutesPerLitre);
        if (problem.offers[i].open && (point.opens || point.closes))
            table.last = static_cast<int>(i);
    }
    return table;
}

// Turns money into the aim's objective; money stays as the tie-breaker, scaled
// so that all of it together weighs less than kTie of the aim's unit.
void applyAim(const PlanRequest& request, double dearest, Problem& problem)
{
    constexpr double kFewerStops = 1e-9; // of equal plans, the one with fewer stops
    constexpr double kTie = 1e-6;
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

} // namespace

double Problem::variance(int since, int point) const
{
    const auto from = static_cast<std::size_t>(std::max(since, 0));
    const auto to = static_cast<std::size_t>(point);
    const double km = at[to] - at[from];
    if (kmTo.empty())
        return ownVariance(since, point) + km * km * covariance[0];
    const auto n = static_cast<std::size_t>(modes);
    double common = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < n; ++j)
            common += (kmTo[to * n + i] - kmTo[from * n + i]) * covariance[i * n + j] *
                      (kmTo[to * n + j] - kmTo[from * n + j]);
    }
    return ownVariance(since, point) + std::max(common, 0.0);
}

double Problem::ownVariance(int since, int point) const
{
    const double km = at[static_cast<std::size_t>(point)] - at[static_cast<std::size_t>(std::max(since, 0))];
    return (since == kStart ? startVariance : fullVariance) + noisePerKm * km;
}

double Problem::leastSupply(int since, int point) const
{
    const double spread = uncertain ? z * std::sqrt(variance(since, point)) : 0.0;
    return fuelTo[static_cast<std::size_t>(point)] + leastAt(point) + spread;
}

double Problem::leastSupplyToStop(int since, int point) const
{
    const auto index = static_cast<std::size_t>(point);
    double least = leastSupply(since, point);
    if (point > 0)
        least += offers[index].detourLitres / 2;
    if (uncertain && stopZ > 0)
        least = std::max(least, fuelTo[index] + floor + stopZ * std::sqrt(variance(since, point)));
    return least;
}

Result<Problem> makeProblem(const PlanRequest& request)
{
    if (const auto sound = checkRequest(request); !sound)
        return fail(sound.error());
    const Result<RateModel> rates = ratesOnRoute(request);
    if (!rates)
        return fail(rates.error());
    Problem problem;
    problem.points = static_cast<int>(request.route.points.size());
    problem.modes = static_cast<int>(rates->mean.size());
    problem.capacity = request.tank.capacity.litres();
    problem.start = request.tank.start.mean.litres();
    problem.startVariance = std::pow(request.tank.start.sd.litres(), 2);
    problem.fullVariance = std::pow(request.tank.fullSd.litres(), 2);
    problem.z = normalQuantile(request.confidence.value());
    problem.cans = request.rules.cansForbidden ? 0 : request.cans;
    problem.canLitres = request.canVolume.litres();
    problem.covariance = rates->covariance;
    problem.spreadGrows = std::ranges::all_of(problem.covariance, [](double c) { return c >= 0; });
    problem.floor = request.tank.floor.litres();
    problem.atFinish = std::max(request.tank.floor, request.tank.end).litres();
    problem.noisePerKm = request.rates.legNoiseSd * request.rates.legNoiseSd;
    const Result<Prices> prices = Sections(request, *rates, problem).add();
    if (!prices)
        return fail(prices.error());
    if (!(std::isfinite(problem.fuelTo.back()) &&
          std::isfinite(problem.variance(kStart, problem.points - 1))))
        return failInput(Sentence::of("the way needs more fuel than can be counted"));
    if (request.aim == Aim::cost && prices->any && prices->missing)
        return failInput(Sentence::of("a price is missing while other points have one"),
                         Sentence::of("a price per litre"), prices->missing->name);
    applyAim(request, prices->dearest, problem);
    if (problem.hasHours && request.departure && request.speed)
        problem.timetable = timetableOf(request, problem);
    problem.uncertain =
        problem.variance(kStart, problem.points - 1) > 0 || problem.fullVariance > 0;
    return problem;
}

} // namespace undermark::planning
