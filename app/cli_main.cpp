// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli: parses the command line, runs the one command named on it and
// turns its result into an exit code: 0 done, 1 failed, 2 bad input.
#include "app/cli_command.h"

#include <cstdlib>
#include <iostream>

namespace undermark {

// $XDG_DATA_HOME/undermark/logbook.sqlite, as the XDG base directory
// specification has it.
static std::filesystem::path defaultLogbook()
{
    const char* data = std::getenv("XDG_DATA_HOME");
    const char* home = std::getenv("HOME");
    const std::filesystem::path folder = data && *data == '/' ? std::filesystem::path(data)
        : std::filesystem::path(home ? home : ".") / ".local" / "share";
    return folder / "undermark" / "logbook.sqlite";
}

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
    // Each command adds itself here.
    addReplayCommand(app, context);
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
        std::cerr << "undermark-cli: " << describe(result.error()) << '\n';
        return exitCode(result.error());
    }
    return 0;
}

} // namespace undermark

int main(int argc, char** argv)
{
    try {
        return undermark::runCommandLine(argc, argv);
    } catch (const std::exception& error) {
        std::cerr << "undermark-cli: unexpected failure: " << error.what() << '\n';
        return 1;
    }
}
