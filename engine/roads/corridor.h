// SPDX-License-Identifier: GPL-3.0-or-later
//
// What lies roughly within reach of a line: cells of a hundredth of a degree (1.1 km from south
// to north), so that each of a map's millions of nodes is asked in constant time.
#pragma once

#include "engine/tables/gpx_line.h"

#include <cstdint>
#include <unordered_set>

namespace undermark {

class Corridor {
public:
    // Everything not further off than `reach` (above 0) is held, and what is beside it in its
    // cells. Cost: cells within reach; the poles themselves are not served.
    Corridor(const GeoLine& line, Distance reach);

    // Degrees as in GeoPosition.
    bool holds(double latitude, double longitude) const;

private:
    void include(const GeoPosition& position, double degrees);

    std::unordered_set<std::uint32_t> m_cells, m_served; // m_served: those of the line itself
};

} // namespace undermark
