// SPDX-License-Identifier: GPL-3.0-or-later
//
// What every command of undermark-cli shares. A command lives in one file,
// app/cli/cli_NAME.cpp, and adds itself with one function:
//
//     void addNameOptions(CLI::App& command, NameOptions& options)
//     {
//         addNumber(command, "--litres", options.litres, kNotNegative, "litres in the tank");
//     }
//     void addNameCommand(CLI::App& app, CliContext& context)
//     {
//         addCommand<NameOptions>(app, context, "name", "what it does", addNameOptions, runName);
//     }
//
// runName(options, context) returns Result<void>: an Error becomes one line on stderr and exit code
// 2 (bad input) or 1 (anything else). Answers go to stdout, as text for people
// or, with --json, as one JSON object with unrounded numbers. Warnings go to
// stderr, a line each, and do not change the exit code.
#pragma once

#include "app/cli/cli_options.h"
#include "engine/base/error.h"
#include "engine/base/format.h"
#include "engine/calibration/calibrate.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <functional>
#include <memory>
#include <string>

namespace undermark {

using Json = nlohmann::ordered_json;

struct CliContext {
    std::filesystem::path logbook;           // --logbook, or the default place
    std::string vehicle;                     // --vehicle, or empty
    bool json = false;                       // --json
    std::function<Result<void>()> run;       // set by the command that was named
};

// A command under `parent` with --json and options of its own, which addOptions(command,
// options) adds; run(options, context) answers.
template <class Options>
void addCommand(CLI::App& parent, CliContext& context, const std::string& name,
                const std::string& help, const auto& addOptions, const auto& run)
{
    auto options = std::make_shared<Options>();
    CLI::App& command = addSubcommand(parent, name, help);
    addOptions(command, *options);
    addJson(command, context);
    onRun(command, context, [options, run, &context] { return run(*options, context); });
}

const char* wordOf(LevelBound bound);    // exact, at-most, at-least
const char* wordOf(Severity severity);   // info, warning, error

// One line on stderr: "warning: TEXT".
void warn(const std::string& text);
void warn(const Sentence& sentence);

// badInput of the command line itself, which speaks English only.
tl::unexpected<Error> wrongUse(std::string detail, std::string expected = {},
                               std::string found = {});

// Prints a JSON object to stdout, unrounded; beside a number whose name lacks its unit the same
// under the name that has it (json_names.h).
void print(const Json& json);

// "1 fill", "2 fills".
std::string numberOf(std::size_t count, const std::string& thing);

// "12.3", rounded for reading.
std::string fixed(double value, int decimals = 1);
// "46.83 EUR"; without a currency "46.83".
std::string moneyText(double amount, int decimals, const std::string& currency);

// The commands, each in app/cli/cli_NAME.cpp.
void addCalibrateCommand(CLI::App& app, CliContext& context);
void addVehicleCommand(CLI::App& app, CliContext& context);
void addSourceCommands(CLI::App& vehicle, CliContext& context);   // under `vehicle`
void addModeCommand(CLI::App& app, CliContext& context);
void addFillCommand(CLI::App& app, CliContext& context);
void addFillRule(CLI::App& fill, CliContext& context);   // under `fill`
void addTripCommand(CLI::App& app, CliContext& context);
void addProofCommand(CLI::App& app, CliContext& context);
void addLevelCommand(CLI::App& app, CliContext& context);
void addLogCommand(CLI::App& app, CliContext& context);
void addCheckCommand(CLI::App& app, CliContext& context);
void addImportCommand(CLI::App& app, CliContext& context);
void addExportCommand(CLI::App& app, CliContext& context);
void addBackupCommand(CLI::App& app, CliContext& context);
void addRestoreCommand(CLI::App& app, CliContext& context);
void addMergeCommand(CLI::App& app, CliContext& context);
void addRangeCommand(CLI::App& app, CliContext& context);
void addReserveCommand(CLI::App& app, CliContext& context);
void addRatesCommand(CLI::App& app, CliContext& context);
void addDemoCommand(CLI::App& app, CliContext& context);
void addBacktestCommand(CLI::App& app, CliContext& context);
void addPlanCommand(CLI::App& app, CliContext& context);
void addPumpsCommand(CLI::App& app, CliContext& context);
void addCardCommand(CLI::App& app, CliContext& context);
void addSheetCommand(CLI::App& app, CliContext& context);
void addPhotoCommand(CLI::App& app, CliContext& context);
void addOwnPumpCommand(CLI::App& app, CliContext& context);
void addReplayCommand(CLI::App& app, CliContext& context);
void addWatchCommand(CLI::App& app, CliContext& context);

} // namespace undermark
