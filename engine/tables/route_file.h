// SPDX-License-Identifier: GPL-3.0-or-later
//
// A route from whichever file it is in.
#pragma once

#include "engine/tables/route_csv.h"
#include "engine/tables/route_gpx.h"

namespace undermark {

// GPX where the name ends in .gpx (in any case), else CSV; `options` are of GPX.
// Errors: those of readRouteCsv and readRouteGpx.
Result<RouteFile> readRouteFile(const std::filesystem::path& file, const GpxOptions& options = {});

} // namespace undermark
