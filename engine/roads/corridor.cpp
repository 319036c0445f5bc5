// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/corridor.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

constexpr int kCellsPerDegree = 100;
constexpr int kColumns = 360 * kCellsPerDegree;

int row(double latitude)
{
    return int(std::floor((latitude + 90) * kCellsPerDegree));
}

int column(double longitude)
{
    const int raw = int(std::floor((longitude + 180) * kCellsPerDegree));
    return (raw % kColumns + kColumns) % kColumns; // the antimeridian is no edge
}

std::uint32_t cell(int row, int column)
{
    return std::uint32_t(row * kColumns + column);
}

} // namespace

Corridor::Corridor(const GeoLine& line, Distance reach)
{
    const double degrees = reach.km() / kLeastKmPerDegree;
    const auto& places = line.places();
    for (std::size_t i = 0; i < places.size(); ++i) {
        include(places[i].position, degrees);
        if (i == 0 || places[i].afterGap)
            continue;
        const GeoPosition& from = places[i - 1].position;
        const GeoPosition& to = places[i].position;
        const double north = to.latitude - from.latitude;
        const double east = std::remainder(to.longitude - from.longitude, 360.0);
        const int steps = int(std::max(std::fabs(north), std::fabs(east)) * kCellsPerDegree);
        for (int step = 1; step <= steps; ++step) {
            const double part = double(step) / (steps + 1);
            include({from.latitude + part * north, from.longitude + part * east}, degrees);
        }
    }
}

// All cells around the one that holds the place; once for each.
void Corridor::include(const GeoPosition& position, double degrees)
{
    const int middle = column(position.longitude);
    const int line = row(position.latitude);
    if (!m_served.insert(cell(line, middle)).second)
        return;
    const int rows = int(std::ceil(degrees * kCellsPerDegree));
    const double farthest = std::min(std::fabs(position.latitude) + degrees + 0.01, 89.0);
    const double wide = degrees / std::cos(farthest * std::numbers::pi / 180);
    const int columns = std::min(int(std::ceil(wide * kCellsPerDegree)), kColumns / 2);
    for (int r = std::max(line - rows, 0); r <= std::min(line + rows, 180 * kCellsPerDegree); ++r) {
        for (int c = middle - columns; c <= middle + columns; ++c)
            m_cells.insert(cell(r, (c + kColumns) % kColumns));
    }
}

bool Corridor::holds(double latitude, double longitude) const
{
    return m_cells.contains(cell(row(latitude), column(longitude)));
}

} // namespace undermark
