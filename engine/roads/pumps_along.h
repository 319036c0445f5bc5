// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fuel stations of a map along a track, in the order they are passed.
#pragma once

#include "engine/base/records.h"
#include "engine/roads/map_extract.h"
#include "engine/roads/opening_hours.h"

#include <optional>
#include <string>
#include <vector>

namespace undermark {

// So near a pump of the map and one of the driver's list are the same.
inline constexpr Distance kSamePump = Distance::fromMetres(100);

// Where no road is known: there and back so many times the straight line. Common practice, no
// source (roads are some 1.2 to 1.6 times as long as the straight line).
inline constexpr double kRoadPerStraight = 1.5;

struct PumpAlong {
    MapPump pump;
    Distance at;        // along the track, where it passes nearest
    Distance off;       // straight from the track to the pump
    Distance detour;    // there and back, at least twice `off`
    bool byRoad = true; // else `off` times 2 kRoadPerStraight
    Offer offer = Offer::unknown; // of the fuel asked for
    std::optional<OpeningHours> hours; // nothing: not told, or not understood
    std::optional<double> price;  // per litre, as the driver noted it
    bool own = false;             // the driver's list has it
};

struct PumpsAlong {
    std::vector<PumpAlong> pumps; // by `at`; a station that is passed twice stands at the nearest
    std::vector<Sentence> notes;  // parts of the track outside the extract, roads left out, ...
};

struct PumpsQuestion {
    Distance within = Distance::fromKm(2); // straight from the track, above 0, 50 km at most
    std::string fuel;                      // as in offers(); empty: whichever
    std::vector<std::string> leaveOut;     // names or ids
    std::vector<OwnPump> own;              // the driver's: they stand above what the map says
    std::function<bool(double)> progress;  // as in ExtractOptions
};

// What the map denies to sell the fuel is left out, and what the driver's list says is closed for
// good or sells another fuel. Errors: those of readMapExtract; notFound for
// a name in leaveOut that no station bears.
Result<PumpsAlong> findPumpsAlong(const GeoLine& line, const std::filesystem::path& extract,
                                  const PumpsQuestion& question);

} // namespace undermark
