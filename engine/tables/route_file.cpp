// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/route_file.h"

#include <algorithm>
#include <cctype>

namespace undermark {

Result<RouteFile> readRouteFile(const std::filesystem::path& file, const GpxOptions& options)
{
    std::string ending = file.extension().string();
    std::ranges::transform(ending, ending.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return ending == ".gpx" ? readRouteGpx(file, options) : readRouteCsv(file);
}

} // namespace undermark
