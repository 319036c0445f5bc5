// SPDX-License-Identifier: GPL-3.0-or-later
//
// A route from a CSV file: at_km (or leg_km, the distance since the row before),
// name, mode, fuel, and what may follow.
#pragma once

#include "engine/planning/route.h"
#include "engine/tables/csv_reader.h"
#include "engine/tables/gpx_line.h"

#include <array>
#include <filesystem>
#include <string>
#include <vector>

namespace undermark {

struct RouteFile {
    Route route;
    std::vector<GeoPosition> positions; // of every point, or empty where the file has none
    GeoLine line;                       // the way over the ground, where the file has it
    std::vector<Sentence> warnings;     // unknown columns, gaps in a track
};

// A mode that is none: road driven in the car's usual mix, whatever the row above says.
inline constexpr const char* kUsualMixWord = "usual-mix";

inline constexpr std::array<CsvColumn, 21> kRouteColumns{{
    {"at_km", false},
    {"leg_km", false},
    {"name", false},
    {"mode", false},
    {"fuel", true},
    {"price_per_l", false},
    {"min_litres", false},
    {"max_litres", false},
    {"stop_min", false},
    {"detour_km", false},
    {"opens", false},
    {"closes", false},
    {"timed", false},
    {"idle_min", false},
    {"floor_l", false},
    {"rest_min", false},
    {"due", false},
    {"climb_m", false},
    {"climb_back_m", false},
    {"from_date", false},
    {"until_date", false},
}};

// Of climb_m and climb_back_m, wherever a row is read.
inline const NumberRange kClimbRange{-1e5, 1e5, Sentence::of("metres of height, -100000 to 100000")};

// at_km or leg_km, and fuel (none, pump, zone, can, crew) are required; name,
// mode (kept from the row above where empty; or kUsualMixWord), price_per_l, min_litres,
// max_litres, stop_min, detour_km, opens, closes (HH:MM), timed (0 or 1),
// idle_min, floor_l, rest_min, due (HH:MM), climb_m, climb_back_m (SectionClimb), from_date, until_date (YYYY-MM-DD) may be there. Errors: badInput with line and column, also for more
// than kMostRoutePointsInFile rows and for what checkRoute refuses.
Result<RouteFile> readRouteCsv(const std::filesystem::path& file);

// "HH:MM", 00:00 to 24:00, as minutes since midnight.
Result<Minutes> parseClock(std::string_view text);
// "hh:mm", to the whole minute: what parseClock reads.
std::string clockText(Minutes clock);

// "YYYY-MM-DD", both ways.
Result<std::chrono::sys_days> parseDay(std::string_view text);
std::string dayText(std::chrono::sys_days day);

} // namespace undermark
