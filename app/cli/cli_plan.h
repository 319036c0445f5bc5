// SPDX-License-Identifier: GPL-3.0-or-later
//
// What `plan` and `card` share: the flags, and the request made from them.
#pragma once

#include "app/car/plan_request.h"
#include "app/cli/cli_burns_more.h"
#include "app/cli/cli_command.h"
#include "app/cli/cli_pumps.h"
#include "app/cli/cli_tank.h"
#include "engine/planning/any_closure.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace undermark {

struct PlanOptions {
    std::filesystem::path route;
    std::optional<double> capacity, start, startSd, floor, end, fullSd, zeroAt; // L
    std::optional<double> signal, signal2, odometerKm;                          // of the level
    std::optional<double> rate, rateSd;                                         // L/100 km
    std::optional<double> legSd;                                                // L per sqrt(km)
    TankReadings tanks;                                                         // of the level
    BurnsMore burnsMore;
    std::optional<double> idleRate;                                             // L/h
    std::optional<double> stopCost, leastStop, confidence, stageConfidence, tripConfidence,
        canLitres;
    std::optional<int> cans, crewCans;
    std::optional<double> load; // L/100 km more
    std::string secondCar;
    std::optional<double> fromKm, speedKmh, pumpFlow, kgPerLitre, mostWaitMin;
    std::optional<double> autonomyKm, autonomySafety;
    std::optional<std::pair<double, double>> check; // official, shown
    std::string aim, date, departure, fuelWaypoints, track;
    bool zonesOnly = false, noCans = false, zoneLimit = false, anyOneClosed = false;
    PumpFlags pumps; // of the map along the track
    std::filesystem::path heights; // a folder of .hgt tiles; empty: the track's own
    bool noHeights = false;
    std::optional<double> massKg, massSdKg, efficiency, efficiencySd; // per cent
    std::vector<std::string> close, repeat, modeSpeeds;
    std::optional<double> rateUp, fillLess;
};

void addPlanFlags(CLI::App& command, PlanOptions& options);

// What a command plans: the best plan for the request, or the one that survives any one closure.
Result<ForAnyClosure> planAsAsked(const PlanOptions& options, const PlanRequest& request,
                                  const GoOn& goOn = {});

// Reads the route file and gathers the request; warnings go to stderr.
Result<PlanRequest> requestFrom(const PlanOptions& options, const CliContext& context);

// Road km for one km of the car's own meter: 1 where no check section was driven.
double officialPerShown(const PlanOptions& options);

// The what-ifs that the flags ask for, each planned by itself.
Result<std::vector<WhatIf>> whatIfsFrom(const PlanOptions& options, const PlanRequest& request);

// All of them together; nothing where no flag asks for any.
Result<std::optional<WhatIf>> whatIfsTogether(const PlanOptions& options, const PlanRequest& request);

// A feasible plan as text, a row per point (app/cli/cli_plan.cpp).
void printPlan(const PlanRequest& request, const Plan& plan,
               std::optional<double> kgPerLitre = std::nullopt);

// One JSON object with everything a plan says (app/cli/cli_plan_json.cpp).
Json planJson(const PlanRequest& request, const Plan& plan, std::optional<double> kgPerLitre);
Json curesJson(const std::vector<Cure>& cures);
Json closedStopsJson(const std::vector<ClosedStop>& closed);
Json whatIfsJson(const Plan& base, const std::vector<WhatIf>& whatIfs);

} // namespace undermark
