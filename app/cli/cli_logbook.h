// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the commands over a logbook share: opening it, finding the vehicle, the
// time, and the entries as JSON.
#pragma once

#include "app/car/car.h"
#include "app/cli/cli_command.h"
#include "engine/outlook/outlook.h"

#include <iostream>
#include <string>
#include <vector>

namespace undermark {

// The car that the command line means: the one named, or the only one. notFound where
// there is none of that name, badInput where there are several and none is named.
Result<Car> namedCar(const CliContext& context, OpenMode mode);

// What is in force of it, for commands that only read. Errors: as namedCar, Car::log.
Result<VehicleLog> readLog(const CliContext& context);

// What a car keeps of one kind: {KEY: [...]}, or a line each; `none` where there is nothing.
template <class T, class ToJson, class ToLine>
void printKept(const CliContext& context, const char* key, const std::vector<Entry<T>>& entries, ToJson toJson,
               ToLine toLine, const char* none)
{
    Json list = Json::array();
    for (const Entry<T>& entry : entries) {
        if (context.json)
            list.push_back(toJson(entry));
        else
            std::cout << toLine(entry) << '\n';
    }
    if (context.json)
        print({{key, std::move(list)}});
    else if (entries.empty())
        std::cout << none << '\n';
}

// Everything learnt from its entries, for commands that only ask.
Result<CarKnowledge> learnVehicle(const CliContext& context, const CorrectionOptions& corrections = {});

Instant now();

// --date, or now where it is empty. badInput for what is no date.
Result<Instant> instantOr(const std::string& date, Instant otherwise);
// The day that a question is asked for; today where --date is empty. Errors: as instantOr.
Result<void> askFor(const std::string& date, Question& question);
inline constexpr const char* kDateHelp =
    "the day that is meant, for the season and for what was driven since the last record; default now";
std::string dateText(Instant time);       // "2026-05-31 14:05", for people
Json dateJson(Instant time);              // "2026-05-31T14:05:00Z", ISO 8601

// One entry of the log with its flags, for `log` and for the echo of an `add`.
struct FlagLine {
    std::string cause;
    std::string text;
    std::optional<FillFlag> fill;   // of a fill: probability and what would mend it
};
std::vector<FlagLine> flagsOfFill(const CarKnowledge& car, std::size_t fill);
std::vector<FlagLine> flagsOfProof(const CarKnowledge& car, std::size_t proof);
// {"litres", "missing_l", "odometer_km", "trip_meter_km"}: what is proposed, null where
// nothing is.
Json proposalJson(const FillFlag& flag);
Json fillJson(const CarKnowledge& car, std::size_t fill);
Json tripJson(const CarKnowledge& car, std::size_t trip);
Json proofJson(const CarKnowledge& car, std::size_t proof);
Json levelJson(const Entry<LevelRecord>& level);
// The shortest beginning of an id that people type: its first eight characters.
std::string shortId(const EntryId& id);

// {"mean": …, "sd": …}
Json estimateJson(double mean, double sd);
// {"p99": …, "p90": …, "p50": …, "p10": …}, km
Json distancesJson(const Distances& distances);

} // namespace undermark
