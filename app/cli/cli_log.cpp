// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli log: what was recorded, and what looks wrong of it.
#include "app/cli/cli_kept_level.h"
#include "app/cli/cli_logbook.h"

#include <iostream>

namespace undermark {

namespace {

void printFlags(const std::vector<FlagLine>& flags, const EntryId& id)
{
    for (const FlagLine& flag : flags)
        std::cout << "    ! " << shortId(id) << ", " << flag.cause << ": " << flag.text << '\n';
}

void printFills(const CarKnowledge& car)
{
    std::cout << format("%-17s %8s %-8s %10s %9s %8s\n", "fills", "litres", "", "odometer", "trip",
                        "price/L");
    const std::string usual = car.vehicle().currency.value_or(std::string());
    for (std::size_t i = 0; i < car.log.fills.size(); ++i) {
        const Fill& fill = car.log.fills[i].value;
        std::cout << format("%-17s %8.2f %-8s %10s %9s %8s%s\n", dateText(fill.time).c_str(),
                            fill.volume.litres(), wordOf(fill.extent),
                            fill.odometer ? (fixed(fill.odometer->km(), 0) + " km").c_str() : "-",
                            fill.sinceLast ? (fixed(fill.sinceLast->km()) + " km").c_str() : "-",
                            fill.pricePerLitre
                                ? moneyText(*fill.pricePerLitre, 3, fill.currency.value_or(usual)).c_str() : "-",
                            fill.tank ? ("  into " + *fill.tank).c_str() : "");
        printFlags(flagsOfFill(car, i), car.log.fills[i].id);
        if (fill.counted)
            std::cout << (*fill.counted ? "    ruled: counts\n" : "    ruled: left out\n");
    }
}

void printTrips(const CarKnowledge& car)
{
    if (!car.log.trips.empty())
        std::cout << format("\n%-17s %8s  %-16s %8s\n", "trips", "km", "mode", "idle min");
    for (const Entry<Trip>& entry : car.log.trips) {
        const Trip& trip = entry.value;
        std::cout << format("%-17s %8.1f  %-16s %8s\n", dateText(trip.time).c_str(), trip.distance.km(),
                            trip.mode.c_str(), trip.idle ? fixed(trip.idle->count(), 0).c_str() : "-");
    }
}

void printProofs(const CarKnowledge& car)
{
    if (!car.log.proofs.empty())
        std::cout << "\nproofs\n";
    for (std::size_t i = 0; i < car.log.proofs.size(); ++i) {
        const Proof& proof = car.log.proofs[i].value;
        std::cout << format("%-17s %-10s", dateText(proof.time).c_str(), wordOf(proof.kind));
        if (proof.volume)
            std::cout << ' ' << fixed(proof.volume->mean.litres(), 2) << " L";
        if (proof.leftBehind)
            std::cout << ' ' << fixed(proof.leftBehind->mean.litres(), 2) << " L left behind";
        if (proof.distance)
            std::cout << ' ' << fixed(proof.distance->mean.km()) << " km";
        std::cout << '\n';
        printFlags(flagsOfProof(car, i), car.log.proofs[i].id);
    }
}

void printLevels(const CarKnowledge& car)
{
    if (!car.log.levels.empty())
        std::cout << "\nlevels\n";
    for (const Entry<LevelRecord>& entry : car.log.levels)
        std::cout << levelLine(entry.value) << '\n';
}

Result<void> runLog(const CliContext& context)
{
    const Result<CarKnowledge> car = learnVehicle(context);
    if (!car)
        return fail(car.error());
    if (!context.json) {
        printFills(*car);
        printTrips(*car);
        printProofs(*car);
        printLevels(*car);
        return {};
    }
    Json json{{"vehicle", car->vehicle().name},
              {"fills", Json::array()},
              {"trips", Json::array()},
              {"proofs", Json::array()},
              {"levels", Json::array()}};
    for (std::size_t i = 0; i < car->log.fills.size(); ++i)
        json["fills"].push_back(fillJson(*car, i));
    for (std::size_t i = 0; i < car->log.trips.size(); ++i)
        json["trips"].push_back(tripJson(*car, i));
    for (std::size_t i = 0; i < car->log.proofs.size(); ++i)
        json["proofs"].push_back(proofJson(*car, i));
    for (const Entry<LevelRecord>& level : car->log.levels)
        json["levels"].push_back(levelJson(level));
    print(json);
    return {};
}

} // namespace

void addLogCommand(CLI::App& app, CliContext& context)
{
    CLI::App& log = addSubcommand(app, "log", "fills, trips, proofs and levels, with what looks wrong");
    addJson(log, context);
    onRun(log, context, [&context] { return runLog(context); });
}

} // namespace undermark
