// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/known_pumps.h"

#include "engine/tables/route_csv.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::size_t kMostFiles = 50;
constexpr std::size_t kMostPumps = 6;
constexpr std::uintmax_t kMostBytes = 100'000; // a longer one was not typed

struct Known {
    RoutePoint pump;
    int routes = 0;
};

// The newest first.
std::vector<std::filesystem::path> routeFiles(const std::filesystem::path& folder)
{
    using File = std::filesystem::directory_entry;
    std::vector<std::pair<std::filesystem::file_time_type, std::filesystem::path>> found;
    std::error_code failed;
    for (const File& file : std::filesystem::directory_iterator(folder, failed))
        if (file.path().extension() == ".csv" && file.file_size(failed) <= kMostBytes)
            found.emplace_back(file.last_write_time(failed), file.path());
    std::ranges::sort(found, std::greater{});
    std::vector<std::filesystem::path> files;
    for (const auto& [time, path] : found)
        if (files.size() < kMostFiles)
            files.push_back(path);
    return files;
}

} // namespace

std::vector<RoutePoint> knownPumpsOf(const std::filesystem::path& folder)
{
    std::vector<Known> all;
    for (const std::filesystem::path& path : routeFiles(folder)) {
        const auto file = readRouteCsv(path);
        if (!file)
            continue;
        for (const RoutePoint& point : file->route.points) {
            if (point.name.empty() ||
                (point.fuel != FuelSource::pump && point.fuel != FuelSource::zone))
                continue;
            auto known = std::ranges::find(all, point.name, [](const Known& k) { return k.pump.name; });
            if (known == all.end())
                known = all.insert(all.end(), {point, 0});
            ++known->routes;
        }
    }
    std::ranges::stable_sort(all, std::greater{}, &Known::routes);
    std::vector<RoutePoint> pumps;
    for (std::size_t i = 0; i < std::min(all.size(), kMostPumps); ++i)
        pumps.push_back(std::move(all[i].pump));
    return pumps;
}

} // namespace undermark
