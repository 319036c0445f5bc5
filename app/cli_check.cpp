// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli check: the health of the logbook. What looks wrong in the log of
// one vehicle, with its likely cause, what would mend it and how to rule on it.
// Findings are an answer: exit code 0.
#include "app/cli_logbook.h"
#include "engine/consumption/odometer_gaps.h"

#include <iostream>

namespace undermark {

namespace {

std::vector<OdometerGap> gapsOf(const CarKnowledge& car)
{
    std::vector<Fill> fills;
    for (const Entry<Fill>& entry : car.log.fills)
        fills.push_back(entry.value);
    return odometerGaps(fills, car.consumption.intervals);
}

Json suspectJson(const CarKnowledge& car, const FillFlag& flag)
{
    const Entry<Fill>& entry = car.log.fills[flag.fill];
    return {{"id", entry.id.uuid},
            {"date", dateText(entry.value.time)},
            {"cause", causeName(flag.cause)},
            {"text", flag.text},
            {"probability", flag.probability},
            {"proposed", proposalJson(flag)}};
}

Json gapJson(const CarKnowledge& car, const OdometerGap& gap)
{
    const Entry<Fill>& entry = car.log.fills[gap.fill];
    return {{"id", entry.id.uuid},
            {"date", dateText(entry.value.time)},
            {"kind", gapName(gap.kind)},
            {"unexplained_km", gap.unexplained ? Json(gap.unexplained->km()) : Json()},
            {"text", gap.text}};
}

Json checkJson(const CarKnowledge& car)
{
    Json json{{"vehicle", car.vehicle().name},
              {"suspect_fills", Json::array()},
              {"odometer_gaps", Json::array()},
              {"suspect_proofs", Json::array()}};
    for (const FillFlag& flag : car.consumption.flags)
        json["suspect_fills"].push_back(suspectJson(car, flag));
    for (const OdometerGap& gap : gapsOf(car))
        json["odometer_gaps"].push_back(gapJson(car, gap));
    for (const ProofFlag& flag : car.proofFlags)
        json["suspect_proofs"].push_back(
            {{"id", car.log.proofs[flag.proof].id.uuid}, {"text", flag.text}});
    return json;
}

void printSuspects(const CarKnowledge& car)
{
    const auto& flags = car.consumption.flags;
    std::cout << (flags.empty() ? "No fill looks wrong.\n"
                                : "Fills that look wrong, kept out of what is learnt until you rule:\n");
    for (const FillFlag& flag : flags) {
        const Entry<Fill>& entry = car.log.fills[flag.fill];
        std::cout << format("  %s  %s  %.2f L  %s: ", shortId(entry.id).c_str(),
                            dateText(entry.value.time).c_str(), entry.value.volume.litres(),
                            causeName(flag.cause))
                  << flag.text << '\n';
    }
    if (!flags.empty())
        std::cout << "  To rule: fill rule ID accept | correct | leave-out\n";
}

void printGaps(const CarKnowledge& car)
{
    const std::vector<OdometerGap> gaps = gapsOf(car);
    std::cout << (gaps.empty() ? "The kilometres join up.\n" : "Gaps in the kilometres:\n");
    for (const OdometerGap& gap : gaps) {
        const Entry<Fill>& entry = car.log.fills[gap.fill];
        std::cout << format("  %s  %s  ", shortId(entry.id).c_str(), dateText(entry.value.time).c_str())
                  << gap.text << '\n';
    }
}

Result<void> run(const CliContext& context)
{
    const Result<CarKnowledge> car = learnVehicle(context);
    if (!car)
        return fail(car.error());
    if (context.json) {
        print(checkJson(*car));
        return {};
    }
    printSuspects(*car);
    printGaps(*car);
    for (const ProofFlag& flag : car->proofFlags)
        std::cout << format("Proof of %s: ", dateText(car->log.proofs[flag.proof].value.time).c_str())
                  << flag.text << '\n';
    return {};
}

} // namespace

void addCheckCommand(CLI::App& app, CliContext& context)
{
    CLI::App* check = app.add_subcommand("check", "what looks wrong in the logbook, and how to mend it");
    addJson(*check, context);
    onRun(*check, context, [&context] { return run(context); });
}

} // namespace undermark
