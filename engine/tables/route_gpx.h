// SPDX-License-Identifier: GPL-3.0-or-later
//
// A route from a GPX 1.1 file: its rte, or else its trk. Of several the one that is asked for,
// by name or by number from 1: another road would be another risk. Distances are WGS84 geodesics (GeographicLib; Karney 2013, error below 15 nm).
//
//  * rte: every rtept is a point of the route;
//  * trk: the start, the finish, and what is taken from waypoints; a new trkseg
//    is a gap: it is reported and adds no distance;
//  * waypoints within `reach` of the line become points where they are marked as
//    ours, or fuel pumps where their name holds `fuelWaypoints`. A line that
//    passes a waypoint twice gets it at the nearest passage only.
//
// Ours is what stands in `extensions` under kGpxNamespace (engine/tables/gpx_fields.h):
// the columns of the CSV, and in a rtept at_km, the distance along the road, which
// all rtepts state or none. Other namespaces are not looked at.
#pragma once

#include "engine/tables/gpx_fields.h"
#include "engine/tables/route_csv.h"

namespace undermark {

struct GpxOptions {
    std::string fuelWaypoints; // part of a name; empty: none
    std::string which;         // name or number of the rte or trk; empty: there is one only
    Distance reach = Distance::fromMetres(300);
};

// Errors: fileAccess; badInput for what is not XML, not GPX, carries a document
// type (no GPX needs one; entities are never expanded), has a coordinate outside
// the globe, an unknown fuel word, a name that is not plain UTF-8, no rte or trk or
// several of them, or no finish.
// Cost: O(points x waypoints / 64) at most; the file is held in memory, 256 MiB at most.
Result<RouteFile> readRouteGpx(const std::filesystem::path& file, const GpxOptions& options = {});

} // namespace undermark
