// SPDX-License-Identifier: GPL-3.0-or-later
//
// A fuel station as a map has it.
#pragma once

#include "engine/tables/gpx_line.h"

#include <map>
#include <string>
#include <string_view>

namespace undermark {

struct MapPump {
    std::string id;   // of the map: "node 12", "way 34", "relation 56"
    std::string name; // `name`, else `operator` or `brand`, else the id; on one line
    GeoPosition position;            // of an area the middle of what it covers
    std::string hours;               // `opening_hours` as it stands, or empty
    std::map<std::string, bool> fuels; // `fuel:*` = yes or no, without the "fuel:"
};

enum class Offer { yes, no, unknown };

// Whether it sells this fuel: "petrol" is any fuel:octane_*, fuel:e5 or fuel:e10, "ethanol"
// fuel:e85; any other word ("diesel", "lpg") the tag of that name. No, only where the map says no; where it lists other
// fuels and not this one it may have been left out: unknown.
Offer offers(const MapPump& pump, std::string_view fuel);

} // namespace undermark
