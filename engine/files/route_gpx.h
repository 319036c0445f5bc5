// SPDX-License-Identifier: GPL-3.0-or-later
//
// A route from a GPX 1.1 file: the first rte, or else the first trk. Distances
// are WGS84 geodesics (GeographicLib; Karney 2013, error below 15 nm).
//
//  * rte: every rtept is a point of the route;
//  * trk: the start, the finish, and what is taken from waypoints; a new trkseg
//    is a gap: it is reported and adds no distance;
//  * waypoints within `reach` of the line become points where they are marked as
//    ours, or fuel pumps where their name holds `fuelWaypoints`. A line that
//    passes a waypoint twice gets it at the nearest passage only.
//
// Ours is what stands in `extensions` under kGpxNamespace: fuel, mode,
// price_per_l, min_litres, max_litres, stop_min, detour_km, timed, idle_min, with
// the meaning of the CSV columns. Other namespaces are not looked at.
#pragma once

#include "engine/files/route_csv.h"

namespace undermark {

inline constexpr const char* kGpxNamespace = "urn:undermark:route:1";

struct GpxOptions {
    std::string fuelWaypoints; // part of a name; empty: none
    Distance reach = Distance::fromMetres(300);
};

// Errors: fileAccess; badInput for what is not XML, not GPX, carries a document
// type (no GPX needs one; entities are never expanded), has a coordinate outside
// the globe, an unknown fuel word, no rte or trk, or no finish.
// Cost: O(points x waypoints); the file is held in memory, 256 MiB at most.
Result<RouteFile> readRouteGpx(const std::filesystem::path& file, const GpxOptions& options = {});

// Length of the WGS84 geodesic between two places given in degrees.
Distance geodesicLength(double lat1, double lon1, double lat2, double lon2);

} // namespace undermark
