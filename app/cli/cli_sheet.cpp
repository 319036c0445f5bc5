// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli sheet: the car's calibration on one page, for whoever drives it next.
#include "app/cli/cli_calibrate.h"
#include "app/cli/cli_logbook.h"
#include "app/paper/hand_over_sheet.h"

#include <cstdio>

namespace undermark {

namespace {

struct SheetOptions {
    std::filesystem::path out;
    std::string verify;
};

Result<void> runSheet(const SheetOptions& options, const CliContext& context)
{
    const Result<CarKnowledge> car = learnVehicle(context);
    if (!car)
        return fail(car.error());
    std::optional<Verification> verified;
    if (!options.verify.empty()) {
        auto tried = verifyLevels(car->gauge, options.verify);
        if (!tried)
            return fail(tried.error());
        verified = std::move(*tried);
    }
    if (const auto written = writeHandOverSheet({*car, now(), verified ? &*verified : nullptr}, options.out); !written)
        return written;
    if (context.json)
        print({{"file", options.out.string()}, {"verified", verified ? Json(verified->passed()) : Json()}});
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
                             },
                             runSheet);
}

} // namespace undermark
