// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/timetable.h"

#include <cmath>

namespace undermark::planning {

namespace {

constexpr double kDay = 24 * 60.0;
constexpr double kTolerance = 1e-6; // minutes

double length(const Timetable::Window& hours)
{
    const double open = hours.closes - hours.opens;
    return open <= 0 ? open + kDay : open;
}

// Since it opened last.
double sinceOpening(const Timetable::Window& hours, double clock)
{
    const double since = clock - hours.opens + kTolerance;
    return since - std::floor(since / kDay) * kDay;
}

} // namespace

double Timetable::clock(int point, double supply, double stopped) const
{
    return departure + onTheWay[static_cast<std::size_t>(point)] + stopped +
           (supply - startLitres) * minutesPerLitre;
}

bool Timetable::isOpen(int point, double clock) const
{
    const Window& window = hours[static_cast<std::size_t>(point)];
    return sinceOpening(window, clock) <= length(window) + 2 * kTolerance;
}

double Timetable::waitAt(int point, double clock) const
{
    const Window& window = hours[static_cast<std::size_t>(point)];
    return isOpen(point, clock) ? 0.0 : kDay - sinceOpening(window, clock) + kTolerance;
}

std::vector<Timetable::Found> Timetable::found(int point, double stopped, const Pieces& pieces) const
{
    const Window& window = hours[static_cast<std::size_t>(point)];
    if (pieces.empty() || length(window) >= kDay)
        return {{pieces, 0.0}};
    const double earliest = clock(point, pieces.front().from, stopped);
    if (minutesPerLitre == 0) {
        const double wait = waitAt(point, earliest);
        return wait <= mostWait ? std::vector<Found>{{pieces, wait}} : std::vector<Found>();
    }
    const double latest = clock(point, pieces.back().to, stopped);
    // The levels with which it is passed between two times.
    const auto between = [&](double from, double to) {
        Pieces part = pieces;
        const double lowest = pieces.front().from + (from - earliest) / minutesPerLitre;
        cutBelow(part, lowest);
        cutAbove(part, lowest + (to - from) / minutesPerLitre);
        return part;
    };
    std::vector<Found> all{{{}, 0.0}};
    const double firstDay = std::floor((earliest - window.opens) / kDay);
    const double lastDay = std::floor((latest + mostWait - window.opens) / kDay);
    for (int i = 0; i <= int(lastDay - firstDay); ++i) {
        const double opens = window.opens + (firstDay + i) * kDay;
        const Pieces open = between(opens, opens + length(window));
        all.front().pieces.insert(all.front().pieces.end(), open.begin(), open.end());
        const double closed = std::min(mostWait, kDay - length(window));
        if (Pieces soon = closed > 0 ? between(opens - closed, opens) : Pieces(); !soon.empty()) {
            const double wait = opens - clock(point, soon.front().from, stopped);
            all.push_back({std::move(soon), wait});
        }
    }
    return all;
}

} // namespace undermark::planning
