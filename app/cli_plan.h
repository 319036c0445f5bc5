// SPDX-License-Identifier: GPL-3.0-or-later
//
// What `plan` and `card` share: the flags, and the request made from them.
#pragma once

#include "app/cli_command.h"
#include "engine/planning/plan.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

struct PlanOptions {
    std::filesystem::path route;
    std::optional<double> capacity, start, startSd, floor, end, fullSd;        // L
    std::optional<double> rate, rateSd;                                        // L/100 km
    std::optional<double> legSd;                                               // L per sqrt(km)
    std::optional<double> idleRate;                                            // L/h
    std::optional<double> stopCost, confidence, tripConfidence, canLitres;
    std::optional<int> cans;
    std::optional<double> fromKm, speedKmh, pumpFlow, kgPerLitre;
    std::optional<double> autonomyKm, autonomySafety;
    std::optional<std::vector<double>> check;                                  // official, shown
    std::string aim, departure, fuelWaypoints;
    bool zonesOnly = false, noCans = false, zoneLimit = false;
    std::vector<std::string> close, repeat;
    std::optional<double> rateUp, fillLess;
};

// The tank as it is now and the rates, as the planner takes them.
struct TankAndRate {
    Tank tank;
    RateModel rates;
};

// Tank and rates from the logbook, for flags that were not given.
Result<TankAndRate> tankFromLogbook(const CliContext& context);

void addPlanFlags(CLI::App& command, PlanOptions& options);

// Reads the route file and gathers the request; warnings go to stderr.
Result<PlanRequest> requestFrom(const PlanOptions& options, const CliContext& context);

} // namespace undermark
