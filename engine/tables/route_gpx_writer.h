// SPDX-License-Identifier: GPL-3.0-or-later
//
// Writes a route as GPX 1.1, one rtept a point; everything that GPX has no word
// for stands in `extensions` under our own namespace, the distance as well
// (at_km: the road is longer than the geodesics between its points). Children
// stand in the schema's order. readRouteGpx gives back the same route.
#pragma once

#include "engine/tables/route_gpx.h"

namespace undermark {

// Errors: badInput where the route's places are not known (it came from a table,
// not from a map): GPX cannot hold a point without its place. fileAccess where
// the file cannot be written.
Result<void> writeRouteGpx(const RouteFile& route, const std::filesystem::path& file);

} // namespace undermark
