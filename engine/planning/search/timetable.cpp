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
    return open < 0 ? open + kDay : open;
}

} // namespace

double Timetable::clock(double km, double supply, double stopped) const
{
    return departure + (km - startKm) * minutesPerKm + stopped +
           (supply - startLitres) * minutesPerLitre;
}

bool Timetable::isOpen(int point, double clock) const
{
    const Window& window = hours[static_cast<std::size_t>(point)];
    const double since = clock - window.opens + kTolerance;
    return since - std::floor(since / kDay) * kDay <= length(window) + 2 * kTolerance;
}

Pieces Timetable::openParts(int point, double km, double stopped, const Pieces& pieces) const
{
    const Window& window = hours[static_cast<std::size_t>(point)];
    if (pieces.empty() || length(window) >= kDay)
        return pieces;
    const double earliest = clock(km, pieces.front().from, stopped);
    if (minutesPerLitre == 0)
        return isOpen(point, earliest) ? pieces : Pieces();
    const double latest = clock(km, pieces.back().to, stopped);
    Pieces open;
    const double firstDay = std::floor((earliest - window.opens) / kDay);
    const double lastDay = std::floor((latest - window.opens) / kDay);
    for (int i = 0; i <= int(lastDay - firstDay); ++i) {
        const double opens = window.opens + (firstDay + i) * kDay;
        Pieces part = pieces;
        const double from = pieces.front().from + (opens - earliest) / minutesPerLitre;
        cutBelow(part, from);
        cutAbove(part, from + length(window) / minutesPerLitre);
        open.insert(open.end(), part.begin(), part.end());
    }
    return open;
}

} // namespace undermark::planning
