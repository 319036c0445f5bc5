// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/left_of_plan.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr Volume kWorthSaying = Volume::fromLitres(0.5);
constexpr double kRiskWorthSaying = 1.5; // times as much, or the other way round
constexpr double kLeastRisk = 1e-4;      // below it no risk is told from another

// How well the level is known: since which full tank, and over which road.
class Known {
public:
    Known(const PlanRequest& request, const Plan& plan, Tank& tank)
        : m_request(request), m_plan(plan), m_tank(tank)
    {
    }

    // Up to the point's own stop, which is not made.
    void driveTo(std::size_t point)
    {
        auto stop = m_plan.stops.begin();
        for (std::size_t i = 0; i < point; ++i) {
            if (stop != m_plan.stops.end() && stop->point == i)
                stopAt(*stop++);
            driveOn(i, m_request.route.points[i + 1].at - m_request.route.points[i].at);
        }
    }

    // On from a point, its stop made.
    void leave(std::size_t point, Distance length)
    {
        const auto stop = std::ranges::find(m_plan.stops, point, &PlannedStop::point);
        if (stop != m_plan.stops.end())
            stopAt(*stop);
        driveOn(point, length);
    }

private:
    void stopAt(const PlannedStop& stop)
    {
        const auto detour = m_request.route.points[stop.point].detour.value_or(Distance());
        if (stop.known) { // the way back from it belongs to the new run
            m_tank.start.sd = m_request.tank.fullSd;
            m_tank.driven.clear();
        }
        drive(stop.point, detour * (stop.known ? 0.5 : 1.0));
    }

    // On the way: with its part of the climb.
    void driveOn(std::size_t section, Distance length)
    {
        const auto& points = m_request.route.points;
        const Distance whole = points[section + 1].at - points[section].at;
        if (whole > Distance())
            drive(section, length, points[section].climb.there * (length / whole));
    }

    void drive(std::size_t section, Distance length, Distance climb = {})
    {
        if (length > Distance())
            m_tank.driven.push_back(
                {length, *m_request.rates.indexOf(m_request.route.points[section].mode), climb});
    }

    const PlanRequest& m_request;
    const Plan& m_plan;
    Tank& m_tank;
};

// The stops behind which is more of the way than is left.
bool isAhead(const PlanRequest& before, std::size_t point, const PlanRequest& now)
{
    const Distance left = now.route.points.back().at - now.route.points.front().at;
    return before.route.points.back().at - before.route.points[point].at <= left + Distance::fromKm(1e-6);
}

bool areNear(Volume a, Volume b)
{
    return a - b < kWorthSaying && b - a < kWorthSaying;
}

class Changes {
public:
    Changes(const PlanRequest& before, const Plan& was, const PlanRequest& now, const Plan& is)
        : m_before(before), m_was(was), m_now(now), m_is(is)
    {
    }

    std::vector<Sentence> all() &&
    {
        for (const PlannedStop& stop : m_is.stops)
            ofStop(stop);
        for (const PlannedStop& stop : m_was.stops) {
            if (isAhead(m_before, stop.point, m_now) && !stopNamed(m_now, m_is, nameOf(m_before, stop)))
                m_said.push_back(Sentence::of("%1: no stop any more.", nameOf(m_before, stop)));
        }
        if (!areNear(m_is.finish.mean, m_was.finish.mean))
            m_said.push_back(Sentence::of("At the finish %1 instead of %2.", amount(m_is.finish.mean),
                                          amount(m_was.finish.mean)));
        ofRisk();
        return std::move(m_said);
    }

private:
    static const std::string& nameOf(const PlanRequest& request, const PlannedStop& stop)
    {
        return request.route.points[stop.point].name;
    }

    static const PlannedStop* stopNamed(const PlanRequest& request, const Plan& plan,
                                        const std::string& name)
    {
        for (const PlannedStop& stop : plan.stops)
            if (nameOf(request, stop) == name)
                return &stop;
        return nullptr;
    }

    void ofStop(const PlannedStop& stop)
    {
        const std::string& name = nameOf(m_now, stop);
        const PlannedStop* const before = stopNamed(m_before, m_was, name);
        if (!before)
            m_said.push_back(Sentence::of("%1: take on %2, which was not planned.", name, amount(stop.buy)));
        else if (!areNear(stop.buy, before->buy))
            m_said.push_back(Sentence::of("%1: take on %2 instead of %3.", name, amount(stop.buy),
                                          amount(before->buy)));
    }

    void ofRisk()
    {
        const double is = std::max(m_is.dryRisk, kLeastRisk);
        const double was = std::max(m_was.dryRisk, kLeastRisk);
        if (is > was * kRiskWorthSaying || was > is * kRiskWorthSaying)
            m_said.push_back(Sentence::of("Risk of running dry %1 instead of %2.",
                                          amount(is * 100, Digits::significant(2), "%"),
                                          amount(was * 100, Digits::significant(2), "%")));
    }

    const PlanRequest& m_before;
    const Plan& m_was;
    const PlanRequest& m_now;
    const Plan& m_is;
    std::vector<Sentence> m_said;
};

} // namespace

Result<PlanRequest> leftOfPlan(const PlanRequest& request, const Plan& plan, Distance here)
{
    Result<Route> rest = routeFrom(request.route, here);
    if (!rest)
        return fail(rest.error());
    const auto& points = request.route.points;
    const auto next = std::size_t(std::ranges::lower_bound(points, here, {}, &RoutePoint::at) - points.begin());
    PlanRequest left = request;
    left.route = std::move(*rest);
    Known known(request, plan, left.tank);
    const Passage& arrival = plan.passages[next];
    left.tank.start.mean = arrival.arrive.mean;
    auto clock = arrival.clock;
    if (points[next].at == here) {
        known.driveTo(next);
    } else {
        const Passage& behind = plan.passages[next - 1];
        const Distance length = points[next].at - points[next - 1].at;
        const double part = (here - points[next - 1].at) / length;
        known.driveTo(next - 1);
        known.leave(next - 1, here - points[next - 1].at);
        left.tank.start.mean = behind.leave - part * arrival.used;
        if (clock && request.speed)
            clock = *clock - drivingTime(speedIn(request, points[next - 1].mode), points[next].at - here);
    }
    left.tank.start.mean = std::clamp(left.tank.start.mean, Volume(), request.tank.capacity);
    if (clock) {
        const auto day = std::chrono::floor<std::chrono::days>(*clock);
        left.departure = *clock - day;
        if (left.departureDay)
            *left.departureDay += day;
    }
    left.cans -= cansPoured(request, plan, FuelSource::can, here);
    left.crewCans -= cansPoured(request, plan, FuelSource::crew, here);
    left.startNotes.clear();
    return left;
}

std::vector<Sentence> planChanges(const PlanRequest& before, const Plan& was,
                                  const PlanRequest& now, const Plan& is)
{
    if (was.feasible && !is.feasible)
        return {Sentence::of("There is no plan any more.")};
    if (!was.feasible)
        return is.feasible ? std::vector{Sentence::of("There is a plan again.")} : std::vector<Sentence>();
    return Changes(before, was, now, is).all();
}

} // namespace undermark
