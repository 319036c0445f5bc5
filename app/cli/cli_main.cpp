// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli: parses the command line, runs the one command named on it and
// turns its result into an exit code: 0 done, 1 failed, 2 bad input.
#include "app/car/logbook_place.h"
#include "app/cli/cli_command.h"
#include "app/cli/terminal_words.h"

#include <iostream>
#include <sys/stat.h>

namespace undermark {

static int exitCode(const Error& error)
{
    const bool bad = error.code == ErrorCode::badInput || error.code == ErrorCode::notFound;
    return bad ? 2 : 1;
}

static int runCommandLine(int argc, char** argv)
{
    CliContext context;
    context.logbook = defaultLogbook();
    CLI::App app("How far the fuel goes: to the zero mark, and past it to dry.", "undermark-cli");
    app.set_version_flag("--version", "undermark-cli " UNDERMARK_VERSION);
    app.add_option("--logbook", context.logbook, "logbook file")->type_name("FILE");
    app.add_option("--vehicle", context.vehicle, "vehicle by name, where the logbook has several");
    app.require_subcommand(1);
    app.fallthrough();   // --logbook and --vehicle may stand behind the command as well
    for (const auto add : {addDemoCommand, addVehicleCommand, addModeCommand, addCalibrateCommand,
                           addFillCommand, addTripCommand, addProofCommand, addLogCommand,
                           addRangeCommand, addReserveCommand, addRatesCommand, addPlanCommand,
                           addCardCommand, addBacktestCommand, addReplayCommand, addCheckCommand,
                           addImportCommand, addExportCommand, addBackupCommand, addRestoreCommand,
                           addMergeCommand})
        add(app, context);
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& help) {   // --help, --version
        return app.exit(help);
    } catch (const CLI::ParseError& error) {
        std::cerr << "undermark-cli: " << error.what() << '\n';
        return 2;
    }
    const Result<void> result = context.run();
    if (!result) {
        std::cerr << "undermark-cli: " << said(result.error()) << '\n';
        return exitCode(result.error());
    }
    return 0;
}

} // namespace undermark

int main(int argc, char** argv)
{
    ::umask(0077);   // where somebody drives is for the owner's eyes, whichever library writes it
    try {
        return undermark::runCommandLine(argc, argv);
    } catch (const std::exception& error) {
        std::cerr << "undermark-cli: unexpected failure: " << error.what() << '\n';
        return 1;
    }
}
