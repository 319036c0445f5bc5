// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_sources.h"

#include "app/car/car_tanks.h"
#include "app/cli/cli_logbook.h"

#include <csignal>

namespace undermark {

namespace {

volatile std::sig_atomic_t g_stopAsked = 0;

void askToStop(int) { g_stopAsked = 1; }

} // namespace

void addSourceFlags(CLI::App& command, SourceFlags& options)
{
    addTexts(command, "--source", options.sources,
             "where values come from: can:IFACE, slcan:DEV[@KBIT], candump:FILE, asc:FILE (each with "
             ",obd ,j1939 or ,dbc=FILE behind it), nmea:FILE|DEV[@BAUD], lines:FILE|DEV[@BAUD]; may be repeated; "
             "else those of vehicle source add",
             "SOURCE");
    addTexts(command, "--tank-source", options.tankSources,
             "where the reading of a further tank comes from, in the same words; may be repeated", "NAME=SOURCE");
    addPath(command, "--map", options.map, "which signal of a DBC file or frame is what", "MAP.json");
}

Result<LiveSources> openSources(SourceFlags options, const CliContext& context)
{
    const bool named = !options.sources.empty() || !options.tankSources.empty();
    for (const std::string& pair : options.tankSources) {
        const auto halves = halvesOf(pair);
        if (!halves || halves->first.empty())
            return wrongUse("--tank-source takes NAME=SOURCE", "aux=lines:/dev/ttyUSB1", pair);
        options.ofTanks.push_back(*halves);
    }
    if (!named && !options.map.empty())
        return wrongUse("a map, and no source is named", "--source SOURCE beside --map");
    const Result<VehicleLog> log = readLog(context);
    if (log) {
        options.fuel = log->vehicle.value.fuel;
        options.kept = valuesOf(log->sources);
        options.tanks = furtherNames(*log);
    }
    if (!named && !log && log.error().code == ErrorCode::badInput) // (which of several cars)
        return fail(log.error());
    if (!named && options.kept.empty())
        return wrongUse("no source is named, and none is kept with a car",
                        "--source SOURCE, or vehicle source add SOURCE before");
    return LiveSources::open(options);
}

bool stopAsked() { return g_stopAsked != 0; }

void catchStop()
{
    std::signal(SIGINT, askToStop);
    std::signal(SIGTERM, askToStop);
}

Json sourceJson(const LiveSources::Told& told)
{
    return {{"source", told.source},
            {"frames", told.counts.heard},
            {"values", told.counts.values},
            {"refused", told.counts.garbled},
            {"first_refused", told.counts.garbled > 0 ? Json(told.counts.firstGarbled) : Json()},
            {"lost", told.lost},
            {"there", told.there}};
}

std::string sourceLine(const LiveSources::Told& told)
{
    std::string line = format("%s: %ld frames or lines, %ld values", told.source.c_str(), told.counts.heard,
                              told.counts.values);
    if (told.counts.garbled > 0)
        line += format("; %ld not understood, the first '%s'", told.counts.garbled, told.counts.firstGarbled.c_str());
    if (told.lost > 0)
        line += format("; lost %d times", told.lost);
    return line + (told.there ? "" : "; not there now");
}

} // namespace undermark
