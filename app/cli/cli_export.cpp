// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli export: the logbook as tables for a spreadsheet, or as a bundle for
// another device; a route as GPX. Nothing that is there already is written over.
#include "app/car/logbook_transfer.h"
#include "app/cli/cli_logbook.h"
#include "engine/tables/route_file.h"
#include "engine/tables/route_gpx_writer.h"

#include <iostream>

namespace undermark {

namespace {

struct ExportOptions {
    std::string folder, bundle, gpx, route;
};

Result<void> exportFolder(const std::string& folder, const CliContext& context)
{
    const auto logbook = Logbook::open(context.logbook, OpenMode::readOnly);
    return logbook ? exportTables(*logbook, folder) : fail(logbook.error());
}

Result<void> exportWhole(const std::string& file, const CliContext& context)
{
    const auto logbook = Logbook::open(context.logbook, OpenMode::readOnly);
    return logbook ? exportBundle(*logbook, file) : fail(logbook.error());
}

Result<void> exportRoute(const ExportOptions& options)
{
    if (options.route.empty())
        return wrongUse("say which route", "--route ROUTE.gpx, a route whose places are known");
    if (std::filesystem::exists(options.gpx))
        return fail(ErrorCode::fileAccess, Sentence::just("the file is there already"),
                    {options.gpx});
    const auto route = readRouteFile(options.route);
    if (!route)
        return fail(route.error());
    for (const Sentence& warning : route->warnings)
        warn(warning);
    return writeRouteGpx(*route, options.gpx);
}

Result<void> runExport(const ExportOptions& options, const CliContext& context)
{
    if (int(!options.folder.empty()) + int(!options.bundle.empty()) + int(!options.gpx.empty()) != 1)
        return wrongUse("say what to make", "one of --csv FOLDER, --bundle FILE and --gpx FILE");
    const auto done = !options.folder.empty() ? exportFolder(options.folder, context)
                      : !options.bundle.empty() ? exportWhole(options.bundle, context)
                                                : exportRoute(options);
    if (!done)
        return done;
    const std::string made = options.folder + options.bundle + options.gpx;   // two are empty
    if (context.json)
        print({{"written", made}});
    else
        std::cout << "Written: " << made << '\n';
    return {};
}

void addExportOptions(CLI::App& command, ExportOptions& options)
{
    addText(command, "--csv", options.folder, "one CSV a table, into a new folder", "FOLDER");
    addText(command, "--bundle", options.bundle, "the whole logbook as one new file", "FILE");
    addText(command, "--gpx", options.gpx, "the route of --route as a new GPX file", "FILE.gpx");
    addText(command, "--route", options.route, "for --gpx", "ROUTE");
}

} // namespace

void addExportCommand(CLI::App& app, CliContext& context)
{
    addCommand<ExportOptions>(app, context, "export",
                              "tables for a spreadsheet, or a bundle for another device",
                              addExportOptions, runExport);
}

} // namespace undermark
