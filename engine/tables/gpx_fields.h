// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a route point carries in a GPX file's `extensions`, under our namespace:
// the columns of the route CSV by the same names. Read and written from one list.
#pragma once

#include "engine/planning/route.h"

#include <string>
#include <utility>
#include <vector>

namespace undermark {

inline constexpr const char* kGpxNamespace = "urn:undermark:route:1";

// Sets the field called `name`: fuel, mode, price_per_l, min_litres, max_litres,
// stop_min, detour_km, opens, closes, timed, idle_min, floor_l, rest_min, due,
// climb_m, climb_back_m, from_date, until_date. Unknown names are not an
// error. badInput, with the name as column, for a text that is no such value.
Result<void> setGpxField(RoutePoint& point, std::string_view name, std::string_view text);

// Every field that is not at its default, with its text, numbers unrounded.
std::vector<std::pair<std::string, std::string>> gpxFields(const RoutePoint& point);

// The shortest text without an exponent (GPX has none) that reads back as the same
// number.
std::string unrounded(double value);

} // namespace undermark
