// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a plan needs of an OpenStreetMap extract on disk (.osm.pbf): the fuel stations and the
// drivable roads near a track. The extract is read four times from front to back (relations,
// ways, nodes, roads), so that only what is near is ever held.
//
// Fuel stations: every node, way or relation with amenity=fuel, each once. Roads: `highway` of
// the classes cars drive on, without access=no|private and motor_vehicle=no; `oneway`, and what
// is one-way without saying so (motorways, roundabouts).
#pragma once

#include "engine/base/error.h"
#include "engine/roads/map_pump.h"
#include "engine/roads/road_graph.h"

#include <filesystem>
#include <functional>
#include <vector>

namespace undermark {

struct ExtractOptions {
    Distance reach = Distance::fromKm(2);     // of the stations, straight from the track
    Distance roadReach = Distance::fromKm(4); // of the roads
    // Told the share that is read, 0 to 1; false stops it (ErrorCode::badInput, "stopped").
    std::function<bool(double)> progress;
};

struct MapExtract {
    std::vector<MapPump> pumps; // roughly within reach (engine/roads/corridor.h)
    RoadGraph roads;
    bool roadsLeftOut = false; // more than kMostRoadNodes within reach: none is held
    Distance outside;          // of the track, where the extract's own box does not reach
};

inline constexpr std::size_t kMostRoadNodes = 5'000'000; // 80 MB while it is read

// Errors: fileAccess; badInput for what is no extract, is cut short or damaged.
// Cost: four times the time of unpacking; memory by what is near, at most some 250 MiB.
Result<MapExtract> readMapExtract(const std::filesystem::path& file, const GeoLine& line,
                                  const ExtractOptions& options = {});

} // namespace undermark
