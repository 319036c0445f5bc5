// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fuel stations of a map along a track: what `pumps` and `plan --pumps` share.
#pragma once

#include "app/cli/cli_command.h"
#include "engine/roads/route_with_pumps.h"
#include "engine/tables/route_gpx.h"

namespace undermark {

inline constexpr double kUsualSpeedKmh = 60; // of the whole way, where none is stated

struct PumpFlags {
    std::filesystem::path extract;
    std::optional<double> withinKm;
    std::string fuel;
    std::vector<std::string> leaveOut;
    std::vector<OwnPump> own; // of the logbook's car, where there is one
};

// A route whose warnings went to stderr. Errors: as readRouteFile.
Result<RouteFile> readRouteAndWarn(const std::filesystem::path& file, const GpxOptions& options);
void warn(const std::vector<Sentence>& notes);

// --within-km, --fuel and --leave-out; each command has a flag of its own for the extract.
void addPumpFlags(CLI::App& command, PumpFlags& flags);

// Those along the file's track, and on a terminal how far the map is read. badInput where the
// file has no track: a table has no places.
Result<PumpsAlong> pumpsAlong(const PumpFlags& flags, const RouteFile& file);

// Of the day `date` (empty: today); nothing where no departure is told. Errors: as instantOr.
Result<std::optional<DriveClock>> clockOf(PlanRequest way, const std::string& date, Distance from);

} // namespace undermark
