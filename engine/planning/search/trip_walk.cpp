// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/trip_walk.h"

#include "engine/planning/risk/trip_risk.h"

#include <algorithm>

namespace undermark::planning {

namespace {

constexpr double kAnySupply = 1e9;

} // namespace

TripWalk::TripWalk(const Problem& problem, std::vector<Purchase> stops)
    : m_problem(problem), m_stops(std::move(stops))
{
    for (const Purchase& stop : m_stops)
        m_parts += stop.isPart();
    findWindows();
}

const Offer& TripWalk::offer(const Purchase& stop) const
{
    return m_problem.offers[static_cast<std::size_t>(stop.point)];
}

double TripWalk::most(const Purchase& stop) const
{
    return std::max(std::min(offer(stop).most, m_problem.capacity), offer(stop).least);
}

// The litres to the first click for whoever arrives with `supply`.
double TripWalk::roomAfterFull(const Purchase& stop, double supply) const
{
    return m_problem.highestSupply(stop.point) + offer(stop).detourLitres - supply;
}

void TripWalk::findWindows()
{
    m_windows.assign(m_stops.size(), {-kAnySupply, kAnySupply});
    if (!m_problem.timetable)
        return;
    const Timetable& table = *m_problem.timetable;
    double stopped = 0.0;
    for (std::size_t i = 0; i < m_stops.size(); ++i) {
        const auto at = static_cast<std::size_t>(m_stops[i].point);
        const double lowest = at == 0 ? m_problem.start : m_problem.fuelTo[at];
        const double highest = at == 0 ? m_problem.start : lowest + m_problem.capacity;
        const Pieces open = table.openParts(m_stops[i].point, m_problem.at[at], stopped,
                                            {{lowest, highest, 0.0, 0.0, kStart}});
        if (open.empty())
            m_windows[i] = {kAnySupply, -kAnySupply};
        else
            m_windows[i] = {open.front().from, open.front().to};
        stopped += table.stopMinutes[at];
    }
}

Litres TripWalk::given() const
{
    Litres litres;
    for (const Purchase& stop : m_stops) {
        if (stop.isPart())
            litres.push_back(std::clamp(stop.litres, offer(stop).least, most(stop)));
    }
    return litres;
}

Litres TripWalk::mostPossible() const
{
    Litres roof(m_stops.size()); // of the supply on leaving
    double next = kNoLimit;      // of the supply on the next arrival
    for (std::size_t i = m_stops.size(); i-- > 0;) {
        const Purchase& stop = m_stops[i];
        const double full = m_problem.highestSupply(stop.point);
        roof[i] = std::min(full, next);
        next = (stop.full ? full : roof[i]) + offer(stop).detourLitres -
               (stop.cans > 0 ? stop.litres : offer(stop).least);
        next = std::min(next, m_windows[i].to);
    }
    Litres litres;
    double supply = m_problem.start;
    for (std::size_t i = 0; i < m_stops.size(); ++i) {
        const Purchase& stop = m_stops[i];
        double bought = stop.litres;
        if (stop.full) {
            bought = roomAfterFull(stop, supply);
        } else if (stop.isPart()) {
            bought = roof[i] + offer(stop).detourLitres - supply;
            litres.push_back(bought = std::clamp(bought, offer(stop).least, most(stop)));
        }
        supply += bought - offer(stop).detourLitres;
    }
    return litres;
}

Walked TripWalk::walk(const Litres& litres)
{
    Walked walked;
    double supply = m_problem.start;
    int since = kStart;
    int from = 0;
    std::size_t part = 0;
    for (std::size_t i = 0; i < m_stops.size(); ++i) {
        Purchase& stop = m_stops[i];
        drive(walked, supply, since, from, stop.point);
        if (m_problem.timetable) {
            walked.slack.push_back(supply - m_windows[i].from);
            walked.slack.push_back(m_windows[i].to - supply);
        }
        from = stop.point;
        if (stop.full)
            stop.litres = roomAfterFull(stop, supply);
        else if (stop.isPart())
            stop.litres = litres[part++];
        if (stop.cans == 0) {
            walked.slack.push_back(stop.litres - offer(stop).least);
            if (offer(stop).most < m_problem.capacity)
                walked.slack.push_back(offer(stop).most - stop.litres);
        }
        supply += stop.litres - offer(stop).detourLitres;
        walked.slack.push_back(m_problem.highestSupply(stop.point) - supply);
        walked.objective += offer(stop).perStop + offer(stop).perLitre * stop.litres;
        if (stop.full)
            since = stop.point;
    }
    drive(walked, supply, since, from, m_problem.points - 1);
    for (const Arrival& arrival : arrivalsOf(m_problem, m_stops))
        walked.level.push_back(arrival.level);
    return walked;
}

void TripWalk::drive(Walked& walked, double supply, int since, int from, int to) const
{
    double least = -kNoLimit;
    for (int point = from; point < to; ++point) {
        walked.objective += m_problem.holdFrom(point) *
                            (supply - m_problem.fuelTo[static_cast<std::size_t>(point)]);
        least = std::max(least, m_problem.leastSupply(since, point + 1));
    }
    if (to > from)
        walked.slack.push_back(supply - std::max(least, m_problem.leastSupplyToStop(since, to)));
}

Litres TripWalk::toSums(Litres litres) const
{
    std::size_t part = 0;
    double before = 0.0;
    for (const Purchase& stop : m_stops) {
        if (stop.full)
            before = 0.0;
        if (stop.isPart())
            before = litres[part++] += before;
    }
    return litres;
}

Litres TripWalk::fromSums(const Litres& sums) const
{
    Litres litres(m_parts);
    std::size_t part = 0;
    double before = 0.0;
    for (const Purchase& stop : m_stops) {
        if (stop.full)
            before = 0.0;
        if (!stop.isPart())
            continue;
        litres[part] = sums[part] - before;
        before = sums[part++];
    }
    return litres;
}

} // namespace undermark::planning
