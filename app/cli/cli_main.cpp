// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli: parses the command line, runs the one command named on it and
// turns its result into an exit code: 0 done, 1 failed, 2 bad input.
#include "app/car/logbook_place.h"
#include "app/cli/cli_command.h"
#include "app/cli/cli_completion.h"
#include "app/cli/nearest_word.h"
#include "app/cli/terminal_words.h"
#include "app/version.h"

#include <CLI/CLI.hpp>

#include <iostream>
#include <sys/stat.h>

namespace undermark {

namespace {

int exitCode(const Error& error)
{
    const bool bad = error.code == ErrorCode::badInput || error.code == ErrorCode::notFound;
    return bad ? 2 : 1;
}

void addCommands(CLI::App& app, CliContext& context)
{
    app.set_version_flag("--version", versionText("undermark-cli"));
    addPath(app, "--logbook", context.logbook, "logbook file");
    addText(app, "--vehicle", context.vehicle, "vehicle by name, where the logbook has several");
    app.require_subcommand(1);
    app.fallthrough();   // --logbook and --vehicle may stand behind the command as well
    for (const auto add : {addDemoCommand, addVehicleCommand, addModeCommand, addCalibrateCommand,
                           addFillCommand, addTripCommand, addProofCommand, addLevelCommand, addLogCommand,
                           addRangeCommand, addReserveCommand, addRatesCommand, addPlanCommand, addPumpsCommand,
                           addCardCommand, addSheetCommand, addPhotoCommand, addOwnPumpCommand, addBacktestCommand, addReplayCommand, addWatchCommand,
                           addCheckCommand,
                           addImportCommand, addExportCommand, addBackupCommand, addRestoreCommand,
                           addMergeCommand})
        add(app, context);
}

// The command that was named, as far as it was understood.
const CLI::App& namedCommand(const CLI::App& app)
{
    const std::vector<CLI::App*> below = app.get_subcommands();
    return below.empty() ? app : namedCommand(*below.front());
}

// As it is typed: "undermark-cli fill add".
std::string typedName(const CLI::App& command)
{
    const CLI::App* parent = command.get_parent();
    return (parent ? typedName(*parent) + " " : "") + command.get_name();
}

std::string noSuch(const std::string& thing, const std::string& typed,
                   const std::vector<std::string>& known)
{
    const std::string meant = nearestWord(typed, known);
    return "no " + thing + " '" + typed + "'" + (meant.empty() ? "" : ": did you mean '" + meant + "'?");
}

// What is wrong with the command line. A word that nothing is called tells more than what is
// missing because of it.
std::string wrongWith(const CLI::App& app, const CLI::ParseError& error)
{
    const CLI::App& command = namedCommand(app);
    const std::vector<std::string> commands = commandsBelow(command);
    const std::vector<std::string> left = app.remaining(true);
    const bool missing = dynamic_cast<const CLI::RequiredError*>(&error) != nullptr;
    if (!left.empty() && (missing || dynamic_cast<const CLI::ExtrasError*>(&error) != nullptr)) {
        if (left.front().starts_with('-'))
            return noSuch("option", left.front().substr(0, left.front().find('=')), flagsOf(command));
        if (!commands.empty())
            return noSuch("command", left.front(), commands);
        return "'" + left.front() + "' was not expected";
    }
    if (!missing || commands.empty())
        return error.what();
    std::string which;
    for (const std::string& name : commands)
        which += (which.empty() ? "" : ", ") + name;
    return "a command is missing, one of " + which;
}

// `undermark-cli complete -- WORDS…`, which the shell asks and --help does not tell.
bool isCompletion(int argc, char** argv)
{
    return argc > 3 && std::string_view(argv[1]) == "complete" && std::string_view(argv[2]) == "--";
}

void printCompletions(const CLI::App& app, int argc, char** argv, const CliContext& context)
{
    const std::vector<std::string> words(argv + 3, argv + argc);
    for (const std::string& word : completions(app, words, context.logbook))
        std::cout << word << '\n';
}

int runCommandLine(int argc, char** argv)
{
    CliContext context;
    context.logbook = defaultLogbook();
    CLI::App app("How far the fuel goes: to the zero mark, and past it to dry.", "undermark-cli");
    addCommands(app, context);
    if (argc <= 1) {
        std::cout << app.help();
        return 0;
    }
    if (isCompletion(argc, argv)) {
        printCompletions(app, argc, argv, context);
        return 0;
    }
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& help) {   // --help, --version
        return app.exit(help);
    } catch (const CLI::ParseError& error) {
        std::cerr << "undermark-cli: " << wrongWith(app, error) << " (see "
                  << typedName(namedCommand(app)) << " --help)\n";
        return 2;
    }
    const Result<void> result = context.run();
    if (!result) {
        std::cerr << "undermark-cli: " << said(result.error()) << '\n';
        return exitCode(result.error());
    }
    return 0;
}

} // namespace

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
