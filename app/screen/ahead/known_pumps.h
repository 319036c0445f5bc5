// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/planning/route.h"

#include <filesystem>
#include <vector>

namespace undermark {

// The pumps and refuel zones of the route files (CSV) in `folder`, for other routes: at most
// six, those of the most routes first, each as it stands in the newest. Files that cannot
// be read are passed over. Cost: reading the fifty newest.
std::vector<RoutePoint> knownPumpsOf(const std::filesystem::path& folder);

} // namespace undermark
