// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli sheet: the car's calibration on one page, for whoever drives it next.
#include "app/cli/cli_calibrate.h"
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_tank.h"
#include "app/paper/hand_over_sheet.h"

#include <cstdio>

namespace undermark {

namespace {

struct SheetOptions {
    std::filesystem::path out;
    std::string verify, note, tank;
    bool handedOver = false;
};

Result<void> noteHandOver(const SheetOptions& options, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    if (!car)
        return fail(car.error());
    HandOverRecord record{car->time(), {}};
    if (!options.note.empty())
        record.note = options.note;
    const auto id = car->record(record);
    return id ? Result<void>() : fail(id.error());
}

Result<void> runSheet(const SheetOptions& options, const CliContext& context)
{
    if (!options.note.empty() && !options.handedOver)
        return wrongUse("a note goes with the hand-over", "--handed-over");
    const Result<CarKnowledge> all = learnVehicle(context);
    const Result<CarKnowledge> car = all ? carOfTank(*all, options.tank) : fail(all.error());
    if (!car)
        return fail(car.error());
    std::optional<VerificationRecord> verified;
    if (!options.verify.empty()) {
        auto tried = verifyLevels(car->gauge, options.verify);
        if (!tried)
            return fail(tried.error());
        verified = recordOf(*tried, now());
    }
    SheetPhotos photos = sheetPhotos(car->log, context.logbook);
    for (const Error& missing : photos.missing)
        warn(sentenceOf(missing));
    const HandOver what{*car, now(), verified, std::move(photos.there)};
    if (const auto written = writeHandOverSheet(what, options.out); !written)
        return written;
    if (options.handedOver)
        if (const auto noted = noteHandOver(options, context); !noted)
            return noted;
    if (context.json)
        print({{"file", options.out.string()}, {"verified", verified ? Json(verified->passed) : Json()}});
    else
        std::printf("%s: the hand-over sheet of %s\n", options.out.c_str(), car->vehicle().name.c_str());
    return {};
}

} // namespace

void addSheetCommand(CLI::App& app, CliContext& context)
{
    addCommand<SheetOptions>(app, context, "sheet", "the hand-over sheet: calibration and reserve on one page (PDF)",
                             [](CLI::App& command, SheetOptions& options) {
                                 required(addPath(command, "file", options.out, "PDF file to write"));
                                 addText(command, "--verify", options.verify, kVerifyHelp, "LEVELS.csv");
                                 addTankOption(command, options.tank, "the tank whose sheet it is");
                                 addFlag(command, "--handed-over", options.handedOver,
                                         "note in the logbook that the car was handed over today");
                                 addText(command, "--note", options.note, "with --handed-over: to whom, what was said");
                             },
                             runSheet);
}

} // namespace undermark
