// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/route_with_pumps.h"

#include "engine/base/format.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace undermark {

namespace {

constexpr int kMinutesOfDay = 24 * 60;

std::vector<std::string> distinctNames(const std::vector<PumpAlong>& pumps)
{
    std::map<std::string, int> count;
    for (const PumpAlong& pump : pumps)
        ++count[pump.pump.name];
    std::vector<std::string> names;
    std::map<std::string, int> used;
    for (const PumpAlong& pump : pumps) {
        std::string name = pump.pump.name;
        if (count[name] > 1)
            name += format(" km %.1f", pump.at.km());
        if (const int before = used[name]++; before > 0) // within a hundred metres of each other
            name += " (" + std::to_string(before + 1) + ")";
        names.push_back(std::move(name));
    }
    return names;
}

} // namespace

DriveClock::DriveClock(std::chrono::year_month_day day, PlanRequest way, Distance from)
    : m_day(day), m_way(std::move(way)), m_times(timesOnTheWay(m_way)), m_from(from)
{
}

Minutes DriveClock::since(Distance at) const
{
    const auto& points = m_way.route.points;
    const auto behind = std::ranges::lower_bound(points, at, {}, &RoutePoint::at); // not before it
    if (behind == points.begin() || behind == points.end())
        return behind == points.begin() ? Minutes{} : m_times.back();
    const auto i = std::size_t(behind - points.begin());
    return m_times[i] - drivingTime(speedIn(m_way, points[i - 1].mode), points[i].at - at);
}

Minutes DriveClock::passing(Distance at) const
{
    return *m_way.departure + std::max(since(at) - since(m_from), Minutes{});
}

std::pair<std::chrono::year_month_day, int> DriveClock::dayAndMinute(Distance at) const
{
    const int minutes = int(passing(at).count());
    return {std::chrono::sys_days(m_day) + std::chrono::days(minutes / kMinutesOfDay), minutes % kMinutesOfDay};
}

Arrival arrivalAt(const PumpAlong& pump, const DriveClock& clock)
{
    if (!pump.hours)
        return {};
    const auto [day, minute] = clock.dayAndMinute(pump.at);
    const auto spans = pump.hours->on(day);
    const auto next = std::ranges::find_if(spans, [now = minute](const auto& span) { return now < span.to; });
    if (next == spans.end())
        return {OnArrival::closed, {}};
    Arrival arrival{minute >= next->from ? OnArrival::open : OnArrival::closed, *next};
    if (next->from == 0 && next->to == kMinutesOfDay)
        arrival.hours.reset();
    return arrival;
}

double chanceOfBeingOpen(const std::vector<PumpAlong>& pumps, const DriveClock& clock, Distance at)
{
    const auto [day, minute] = clock.dayAndMinute(at);
    constexpr double kPriorWorth = 2;
    const bool byDay = minute >= 6 * 60 && minute < 22 * 60;
    double open = kPriorWorth * (byDay ? 0.9 : 0.5);
    double known = kPriorWorth;
    for (const PumpAlong& pump : pumps) {
        if (!pump.hours)
            continue;
        ++known;
        open += pump.hours->isOpen(day, minute) ? 1 : 0;
    }
    return open / known;
}

RouteWithPumps withPumps(RouteFile file, const std::vector<PumpAlong>& pumps,
                         const std::optional<DriveClock>& clock)
{
    RouteWithPumps out;
    const std::vector<std::string> names = distinctNames(pumps);
    auto& points = file.route.points;
    std::size_t unknown = 0;
    for (std::size_t i = 0; i < pumps.size(); ++i) {
        const PumpAlong& pump = pumps[i];
        // Behind all that is not further, but before the finish, which it would hide.
        const auto further = std::ranges::upper_bound(points, pump.at, {}, &RoutePoint::at);
        const auto place = std::min(further, points.end() - 1);
        if (place == points.begin())
            continue; // a route that begins later
        RoutePoint point = pointOnSection(*(place - 1), std::min(pump.at, place->at), names[i]);
        point.fuel = FuelSource::pump;
        point.detour = pump.detour;
        point.pricePerLitre = pump.price;
        if (clock) {
            const Arrival arrival = arrivalAt(pump, *clock);
            if (arrival.state == OnArrival::closed && !arrival.hours) {
                out.notes.push_back(Sentence::of("'%1' is closed when you pass and is left out", names[i]));
                continue;
            }
            unknown += arrival.state == OnArrival::unknown;
            if (arrival.hours) {
                point.opens = Minutes(arrival.hours->from);
                point.closes = Minutes(arrival.hours->to % kMinutesOfDay);
            }
        }
        file.positions.insert(file.positions.begin() + (place - points.begin()), pump.pump.position);
        points.insert(place, std::move(point));
    }
    if (unknown > 0)
        out.notes.push_back(Sentence::of("of %1 of %2 pumps the map tells no opening hours: ask before you count on one",
                                         std::to_string(unknown), std::to_string(pumps.size())));
    out.file = std::move(file);
    return out;
}

} // namespace undermark
