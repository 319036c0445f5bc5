// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli check: the health of the logbook. Whether the file is sound and backed
// up, what looks wrong in the log of one vehicle, with its likely cause, what would mend
// it and how to rule on it, and whether the sender still says what it did. Findings are
// an answer: exit code 0. With --salvage, what can be read of a damaged logbook.
#include "app/cli/cli_logbook.h"
#include "app/cli/terminal_words.h"
#include "engine/consumption/odometer_gaps.h"
#include "engine/logbook/backup.h"
#include "engine/logbook/photo_store.h"
#include "engine/logbook/salvage.h"
#include "engine/outlook/outlook.h"
#include "engine/outlook/sender_health.h"

#include <iostream>

namespace undermark {

namespace {

std::vector<OdometerGap> gapsOf(const CarKnowledge& car)
{
    return odometerGaps(valuesOf(car.log.fills), car.consumption.intervals);
}

Json suspectJson(const CarKnowledge& car, const FillFlag& flag)
{
    const Entry<Fill>& entry = car.log.fills[flag.fill];
    return {{"id", entry.id.uuid},
            {"date", dateJson(entry.value.time)},
            {"cause", causeName(flag.cause)},
            {"text", said(flag.text)},
            {"probability", flag.probability},
            {"proposed", proposalJson(flag)}};
}

Json gapJson(const CarKnowledge& car, const OdometerGap& gap)
{
    const Entry<Fill>& entry = car.log.fills[gap.fill];
    return {{"id", entry.id.uuid},
            {"date", dateJson(entry.value.time)},
            {"kind", gapName(gap.kind)},
            {"unexplained_km", gap.unexplained ? Json(gap.unexplained->km()) : Json()},
            {"text", said(gap.text)}};
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
            {{"id", car.log.proofs[flag.proof].id.uuid}, {"text", said(flag.text)}});
    const auto teach = whatWouldTeach(car);
    json["would_teach"] = teach ? Json(said(*teach)) : Json();
    return json;
}

void printSuspects(const CarKnowledge& car)
{
    const auto& flags = car.consumption.flags;
    std::cout << (flags.empty() ? "No fill looks wrong.\n"
                                : numberOf(flags.size(), "fill") + (flags.size() == 1 ? " looks" : " look")
                                    + " wrong, held for a slip or a change of the car until you rule:\n");
    for (const FillFlag& flag : flags) {
        const Entry<Fill>& entry = car.log.fills[flag.fill];
        std::cout << format("  %s  %s  %.2f L  %s: ", shortId(entry.id).c_str(),
                            dateText(entry.value.time).c_str(), entry.value.volume.litres(),
                            causeName(flag.cause))
                  << said(flag.text) << '\n';
    }
    if (!flags.empty())
        std::cout << "  To rule: fill rule ID accept | correct | leave-out\n";
}

void printGaps(const CarKnowledge& car)
{
    const std::vector<OdometerGap> gaps = gapsOf(car);
    std::cout << (gaps.empty() ? "The kilometres join up.\n"
                               : numberOf(gaps.size(), "gap") + " in the kilometres:\n");
    for (const OdometerGap& gap : gaps) {
        const Entry<Fill>& entry = car.log.fills[gap.fill];
        std::cout << format("  %s  %s  ", shortId(entry.id).c_str(),
                            dateText(entry.value.time).c_str())
                  << said(gap.text) << '\n';
    }
}

Json senderJson(const SenderHealth& health)
{
    Json json{{"calibration_age_days",
               health.calibrationAge ? Json(health.calibrationAge->count()) : Json()},
              {"drift", Json()},
              {"findings", Json::array()}};
    if (const auto& drift = health.drift)
        json["drift"] = {{"fills", drift->fills},
                         {"shift_l", estimateJson(drift->shift.mean.litres(), drift->shift.sd.litres())},
                         {"scatter_l", drift->scatter.litres()},
                         {"l_per_year", drift->perYear ? Json(drift->perYear->litres()) : Json()},
                         {"p", drift->pValue ? Json(*drift->pValue) : Json()}};
    for (const Finding& finding : health.findings)
        json["findings"].push_back({{"code", finding.code},
                                    {"severity", wordOf(finding.severity)},
                                    {"text", said(finding.text)}});
    return json;
}

void printSender(const SenderHealth& health)
{
    if (health.calibrationAge)
        std::cout << "Calibrated " << numberOf(std::size_t(health.calibrationAge->count()), "day") << " ago.\n";
    if (const auto& drift = health.drift)
        std::cout << format("The sender at %s: %+.2f ± %.2f L against the calibration (estimate).\n",
                            numberOf(drift->fills, "full fill").c_str(), drift->shift.mean.litres(), drift->shift.sd.litres());
    for (const Finding& finding : health.findings)
        std::cout << "  " << wordOf(finding.severity) << ": " << said(finding.text) << '\n';
}

Result<void> checkFile(const CliContext& context)
{
    const auto logbook = Logbook::open(context.logbook, OpenMode::readOnly);
    return logbook ? logbook->checkIntegrity() : fail(logbook.error());
}

Result<void> runCheck(const CliContext& context)
{
    if (const auto sound = checkFile(context); !sound)
        return sound;
    const Result<CarKnowledge> car = learnVehicle(context);
    if (!car)
        return fail(car.error());
    const SenderHealth sender = senderHealth(*car, now());
    const auto backups = backupsOf(context.logbook);
    if (context.json) {
        Json json = checkJson(*car);
        json["integrity"] = "ok";
        json["latest_backup"] = backups.empty() ? Json() : Json(backups.front().string());
        json["sender"] = senderJson(sender);
        print(json);
        return {};
    }
    std::cout << "The file is sound; "
              << (backups.empty() ? "there is no backup beside it (backup makes one)"
                                  : "latest backup " + backups.front().filename().string())
              << ".\n";
    printSuspects(*car);
    printGaps(*car);
    for (const ProofFlag& flag : car->proofFlags)
        std::cout << format("Proof of %s: ",
                            dateText(car->log.proofs[flag.proof].value.time).c_str())
                  << said(flag.text) << '\n';
    if (const auto teach = whatWouldTeach(*car))
        std::cout << said(*teach) << ".\n";
    printSender(sender);
    return {};
}

Result<void> runSalvage(const std::string& fresh, const CliContext& context)
{
    const auto report = salvage(context.logbook, fresh, now());
    if (!report)
        return fail(report.error());
    if (const auto photos = takePhotos(context.logbook, fresh); !photos)
        return fail(photos.error());
    if (report->gaps)
        warn("pages of the logbook cannot be read: there may be more that was lost");
    if (report->standIns > 0)
        warn(numberOf(report->standIns, "stand-in") + " for lost vehicles or modes: vehicle set and "
             "mode add put that right");
    if (context.json)
        print({{"salvaged", fresh}, {"taken", report->taken}, {"lost", report->lost},
               {"gaps", report->gaps}, {"stand_ins", report->standIns}});
    else
        std::cout << "Took " << numberOf(report->taken, "record") << " into " << fresh << "; "
                  << report->lost << (report->lost == 1 ? " was" : " were") << " lost. The damaged logbook is as it was. If all is well, restore " << fresh
                  << " puts it in place.\n";
    return {};
}

} // namespace

void addCheckCommand(CLI::App& app, CliContext& context)
{
    addCommand<std::string>(
        app, context, "check", "what looks wrong in the logbook, and how to mend it",
        [](CLI::App& check, std::string& fresh) {
            addText(check, "--salvage", fresh,
                    "take what can be read of a damaged logbook into a new file", "NEWFILE");
        },
        [](const std::string& fresh, const CliContext& asked) {
            return fresh.empty() ? runCheck(asked) : runSalvage(fresh, asked);
        });
}

} // namespace undermark
