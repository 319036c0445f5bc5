// SPDX-License-Identifier: GPL-3.0-or-later
//
// The roads a car may take, near a track.
#pragma once

#include "engine/tables/gpx_line.h"

#include <cstdint>
#include <vector>

namespace undermark {

struct RoadEdge {
    std::uint32_t from = 0; // indices of `nodes`
    std::uint32_t to = 0;
    bool twoWay = true;
    friend auto operator<=>(const RoadEdge&, const RoadEdge&) = default;
};

struct RoadGraph {
    std::vector<GeoPosition> nodes;
    std::vector<RoadEdge> edges;
};

} // namespace undermark
