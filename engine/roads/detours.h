// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much longer the way becomes by calling at a place beside it.
//
// The road graph's edges that the track follows are found first: both ends within kTrackWidth of
// it, and as far apart along it as along the road (an overpass is not). From a place, the
// shortest ways to and from followed nodes near it along the track (Dijkstra, Boost.Graph)
// compare with what the track itself covers meanwhile:
//
//   detour = min over a of (out(a) - (foot - a)) + min over b of (back(b) - (b - foot))
//
// where one leaves the track at km a and is on it again at km b. Neither half is ever shorter
// than the straight line between the place and the track.
#pragma once

#include "engine/roads/road_graph.h"

#include <memory>
#include <optional>

namespace undermark {

inline constexpr Distance kTrackWidth = Distance::fromMetres(30); // a receiver's error, a road's width

class Detours {
public:
    // `line` and `roads` have to outlive this. Cost: O(edges) look-ups along the line.
    Detours(const RoadGraph& roads, const GeoLine& line);
    ~Detours();

    // There and back; nothing where no road is known that leads from the track to the place and
    // back. `foot` is the place's nearest on the line. Cost: O(edges) to find the road it stands
    // at, and a search of what lies within kFarthest of it.
    std::optional<Distance> of(const GeoPosition& place, const GeoLine::Foot& foot) const;

private:
    struct Graph;
    std::unique_ptr<Graph> m_graph;
};

} // namespace undermark
