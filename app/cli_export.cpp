// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli export: the logbook as tables for a spreadsheet, or as a bundle for
// another device.
#include "app/cli_logbook.h"
#include "engine/files/export_csv.h"

#include <iostream>
#include <memory>

namespace undermark {

namespace {

struct Options {
    std::string folder, bundle;
};

Result<void> run(const Options& options, const CliContext& context)
{
    if (options.folder.empty() == options.bundle.empty())
        return failInput("say what to make of the logbook", "one of --csv FOLDER and --bundle FILE");
    const auto logbook = Logbook::open(context.logbook, OpenMode::readOnly);
    if (!logbook)
        return fail(logbook.error());
    if (!options.bundle.empty()) {
        if (const auto copied = logbook->copyTo(options.bundle); !copied)
            return copied;
    } else {
        const auto vehicles = logbook->vehicles();
        if (!vehicles)
            return fail(vehicles.error());
        std::vector<VehicleLog> logs;
        for (const auto& vehicle : *vehicles) {
            auto log = logbook->load(vehicle.id);
            if (!log)
                return fail(log.error());
            logs.push_back(std::move(*log));
        }
        if (const auto written = exportCsv(logs, options.folder); !written)
            return written;
    }
    const std::string& made = options.bundle.empty() ? options.folder : options.bundle;
    if (context.json)
        print({{"written", made}});
    else
        std::cout << "Written: " << made << '\n';
    return {};
}

} // namespace

void addExportCommand(CLI::App& app, CliContext& context)
{
    auto options = std::make_shared<Options>();
    CLI::App* command = app.add_subcommand("export", "tables for a spreadsheet, or a bundle for another device");
    command->add_option("--csv", options->folder, "one CSV a table, into a new folder")->type_name("FOLDER");
    command->add_option("--bundle", options->bundle, "the whole logbook as one new file")->type_name("FILE");
    addJson(*command, context);
    onRun(*command, context, [options, &context] { return run(*options, context); });
}

} // namespace undermark
