// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli log and rates: what was recorded, and what it taught.
#include "app/cli_logbook.h"
#include "engine/consumption/rate_report.h"

#include <iostream>
#include <memory>

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
    for (std::size_t i = 0; i < car.log.fills.size(); ++i) {
        const Fill& fill = car.log.fills[i].value;
        std::cout << format("%-17s %8.2f %-8s %10s %9s %8s\n", dateText(fill.time).c_str(),
                            fill.volume.litres(), wordOf(fill.extent),
                            fill.odometer ? (fixed(fill.odometer->km(), 0) + " km").c_str() : "-",
                            fill.sinceLast ? (fixed(fill.sinceLast->km()) + " km").c_str() : "-",
                            fill.pricePerLitre ? fixed(*fill.pricePerLitre, 3).c_str() : "-");
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

Result<void> runLog(const CliContext& context)
{
    const Result<CarKnowledge> car = learnVehicle(context);
    if (!car)
        return fail(car.error());
    if (!context.json) {
        printFills(*car);
        printTrips(*car);
        printProofs(*car);
        return {};
    }
    Json json{{"vehicle", car->vehicle().name},
              {"fills", Json::array()},
              {"trips", Json::array()},
              {"proofs", Json::array()}};
    for (std::size_t i = 0; i < car->log.fills.size(); ++i)
        json["fills"].push_back(fillJson(*car, i));
    for (std::size_t i = 0; i < car->log.trips.size(); ++i)
        json["trips"].push_back(tripJson(*car, i));
    for (std::size_t i = 0; i < car->log.proofs.size(); ++i)
        json["proofs"].push_back(proofJson(*car, i));
    print(json);
    return {};
}

Json lineJson(const RateLine& line)
{
    return {{"mode", line.mode.empty() ? Json() : Json(line.mode)},
            {"rate_l_per_100km",
             estimateJson(line.rate.mean.litresPer100Km(), line.rate.sd.litresPer100Km())},
            {"low90", line.low90.litresPer100Km()},
            {"high90", line.high90.litresPer100Km()},
            {"share", line.share ? Json(line.share->ratio()) : Json()},
            {"tanks_to_narrow", line.tanksToNarrow ? Json(*line.tanksToNarrow) : Json()}};
}

void printLine(const RateLine& line)
{
    const std::string share = line.share ? fixed(line.share->percent(), 0) + " %" : "";
    const std::string tanks = line.tanksToNarrow ? std::to_string(*line.tanksToNarrow) : "over 200";
    std::cout << format("%-16s %8.2f   %6.2f to %-6.2f %7s   %s\n",
                        line.mode.empty() ? "usual mix" : line.mode.c_str(),
                        line.rate.mean.litresPer100Km(), line.low90.litresPer100Km(),
                        line.high90.litresPer100Km(), share.c_str(), tanks.c_str());
}

Result<void> runRates(double widthLitresPer100Km, const CliContext& context)
{
    const Result<CarKnowledge> car = learnVehicle(context);
    if (!car)
        return fail(car.error());
    RateReportOptions options;
    options.wantedWidth = Consumption::fromLitresPer100Km(widthLitresPer100Km);
    options.now.begin = now();
    const Screened& known = car->consumption;
    const RateReport report = reportRates(known.intervals, known.learnt,
                                          ConsumptionModel(known.model.setup()), options);
    if (context.json) {
        Json json{{"usual", lineJson(report.usual)}, {"modes", Json::array()}};
        for (const RateLine& line : report.modes)
            json["modes"].push_back(lineJson(line));
        json["idle_l_per_h"] = estimateJson(report.idle.mean.litresPerHour(), report.idle.sd.litresPerHour());
        json["cold_start_l"] = estimateJson(report.coldStart.mean.litres(), report.coldStart.sd.litres());
        json["trend"] = report.trend.ratio();
        json["lessons"] = Json::array();
        for (const Lesson& lesson : report.lessons)
            json["lessons"].push_back({{"expected_l", lesson.expected.litres()},
                                       {"burnt_l", lesson.burnt.litres()},
                                       {"usual_before", lesson.usualBefore.litresPer100Km()},
                                       {"usual_after", lesson.usualAfter.litresPer100Km()},
                                       {"learnt", lesson.learnt}});
        print(json);
        return {};
    }
    std::cout << format("%-16s %8s   %-16s %7s   tanks to narrow to %.1f\n", "L/100 km", "rate",
                        "90 % interval", "share", widthLitresPer100Km);
    printLine(report.usual);
    for (const RateLine& line : report.modes)
        printLine(line);
    std::cout << format("\nidling %.2f ± %.2f L/h, a cold start %.2f ± %.2f L; just now %+.0f %% of the "
                        "long run\n",
                        report.idle.mean.litresPerHour(), report.idle.sd.litresPerHour(),
                        report.coldStart.mean.litres(), report.coldStart.sd.litres(),
                        report.trend.percent());
    for (const Lesson& lesson : report.lessons)
        std::cout << format("a tank of %.1f L, expected %.1f L: usual mix %.2f -> %.2f L/100 km%s\n",
                            lesson.burnt.litres(), lesson.expected.litres(),
                            lesson.usualBefore.litresPer100Km(), lesson.usualAfter.litresPer100Km(),
                            lesson.learnt ? "" : " (flagged, not counted)");
    return {};
}

} // namespace

void addLogCommand(CLI::App& app, CliContext& context)
{
    CLI::App* log = app.add_subcommand("log", "fills, trips and proofs, with what looks wrong");
    addJson(*log, context);
    onRun(*log, context, [&context] { return runLog(context); });
}

void addRatesCommand(CLI::App& app, CliContext& context)
{
    CLI::App* rates = app.add_subcommand("rates", "consumption by driving mode, and what the last fills taught");
    auto width = std::make_shared<std::optional<double>>();
    addNumber(*rates, "--width", *width, kPositive, "wanted width of the 90 % interval, L/100 km; default 1");
    addJson(*rates, context);
    onRun(*rates, context, [width, &context] { return runRates(width->value_or(1.0), context); });
}

} // namespace undermark
