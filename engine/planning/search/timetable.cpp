// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/search/timetable.h"

#include <algorithm>
#include <cmath>

namespace undermark::planning {

namespace {

constexpr double kDay = 24 * 60.0;
constexpr double kTolerance = 1e-6; // minutes

struct Opening {
    double opens, closes; // since the midnight before the departure
};

double length(const Timetable::Window& hours)
{
    const double open = hours.closes - hours.opens;
    return open <= 0 ? open + kDay : open;
}

// The last opening that began by `clock`, or the first of all where none has; what is open day and
// night is one opening. Nothing where none ever comes: firstDay is not above lastDay.
Opening openingAt(const Timetable::Window& hours, double clock)
{
    if (length(hours) >= kDay)
        return {hours.firstDay * kDay + hours.opens, (hours.lastDay + 1) * kDay + hours.opens};
    const double day = std::clamp(std::floor((clock - hours.opens + kTolerance) / kDay), hours.firstDay, hours.lastDay);
    const double opens = hours.opens + day * kDay;
    return {opens, opens + length(hours)};
}

double daysFrom(const Timetable::Window& hours, const Opening& opening)
{
    return std::round((opening.opens - hours.opens) / kDay);
}

} // namespace

double Timetable::clock(int point, double supply, double stopped) const
{
    return departure + onTheWay[static_cast<std::size_t>(point)] + stopped +
           (supply - startLitres) * minutesPerLitre;
}

double Timetable::waitAt(int point, double clock) const
{
    const Window& window = hours[static_cast<std::size_t>(point)];
    const Opening now = openingAt(window, clock);
    if (clock < now.opens - kTolerance)
        return now.opens - clock;
    if (clock <= now.closes + kTolerance)
        return 0.0;
    return length(window) < kDay && daysFrom(window, now) < window.lastDay ? now.opens + kDay - clock : kForEver;
}

std::vector<Timetable::Found> Timetable::found(int point, double stopped, const Pieces& pieces) const
{
    const Window& window = hours[static_cast<std::size_t>(point)];
    if (pieces.empty())
        return {};
    const double earliest = clock(point, pieces.front().from, stopped);
    if (minutesPerLitre == 0) {
        const double wait = waitAt(point, earliest);
        return wait <= mostWait ? std::vector<Found>{{pieces, wait}} : std::vector<Found>();
    }
    const double latest = clock(point, pieces.back().to, stopped);
    // The levels with which it is passed between two times.
    const auto between = [&](double from, double to) {
        Pieces part = pieces;
        if (from > earliest)
            cutBelow(part, pieces.front().from + (from - earliest) / minutesPerLitre);
        if (to < latest)
            cutAbove(part, pieces.front().from + (to - earliest) / minutesPerLitre);
        return part;
    };
    std::vector<Found> all{{{}, 0.0}};
    double closed = -kForEver; // since the opening before
    for (Opening opening = openingAt(window, earliest);; opening = {opening.opens + kDay, opening.closes + kDay}) {
        if (opening.opens - mostWait > latest)
            break;
        const Pieces open = between(opening.opens, opening.closes);
        all.front().pieces.insert(all.front().pieces.end(), open.begin(), open.end());
        const double waits = std::max(opening.opens - mostWait, closed);
        if (Pieces soon = waits < opening.opens ? between(waits, opening.opens) : Pieces(); !soon.empty()) {
            const double wait = opening.opens - clock(point, soon.front().from, stopped);
            all.push_back({std::move(soon), wait});
        }
        if (length(window) >= kDay || daysFrom(window, opening) >= window.lastDay)
            break;
        closed = opening.closes;
    }
    return all;
}

} // namespace undermark::planning
