// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli pumps: the fuel stations of a map along a track.
#include "app/cli/cli_pumps.h"
#include "app/cli/cli_logbook.h"
#include "app/cli/status_line.h"
#include "app/cli/terminal_words.h"
#include "engine/tables/route_csv_writer.h"
#include "engine/tables/route_file.h"
#include "engine/tables/route_gpx_writer.h"

#include <cstdio>

namespace undermark {

namespace {

const NumberRange kWithin{0.01, 50, Sentence::just("km from 0.01 to 50")};

struct PumpsOptions {
    PumpFlags flags;
    std::filesystem::path track, gpx, csv;
    std::string which, departure, date;
    std::optional<double> speedKmh;
};

std::string hoursText(const PumpAlong& pump)
{
    if (pump.pump.hours.empty())
        return "-";
    return pump.pump.hours + (pump.hours ? "" : " (not understood)");
}

const char* wordOfArrival(OnArrival state)
{
    return state == OnArrival::open ? "open" : state == OnArrival::closed ? "closed" : "unknown";
}

// What a clock adds: open or not when one passes, or with what chance.
Json arrivalJson(const PumpsAlong& found, const PumpAlong& pump, const DriveClock& clock)
{
    const OnArrival state = arrivalAt(pump, clock).state;
    return {{"passed_at_min", clock.passing(pump.at).count()},
            {"on_arrival", wordOfArrival(state)},
            {"open_chance", state == OnArrival::unknown ? chanceOfBeingOpen(found.pumps, clock, pump.at)
                                                        : (state == OnArrival::open ? 1.0 : 0.0)}};
}

Json pumpsJson(const PumpsAlong& found, const std::optional<DriveClock>& clock)
{
    Json list = Json::array();
    for (const PumpAlong& pump : found.pumps) {
        Json row{{"at_km", pump.at.km()},
                 {"name", pump.pump.name},
                 {"id", pump.pump.id},
                 {"lat", pump.pump.position.latitude},
                 {"lon", pump.pump.position.longitude},
                 {"off_km", pump.off.km()},
                 {"detour_km", pump.detour.km()},
                 {"detour_by", pump.byRoad ? "road" : "line"},
                 {"opening_hours", pump.pump.hours.empty() ? Json() : Json(pump.pump.hours)},
                 {"hours_understood", pump.hours.has_value()},
                 {"hours_name_holidays", pump.hours && pump.hours->namesHolidays()}, // which days: not known here
                 {"fuels", pump.pump.fuels},
                 {"own", pump.own},
                 {"price_per_l", pump.price ? Json(*pump.price) : Json()}};
        if (clock)
            row.update(arrivalJson(found, pump, *clock));
        list.push_back(std::move(row));
    }
    Json notes = Json::array();
    for (const Sentence& note : found.notes)
        notes.push_back(said(note));
    return {{"pumps", std::move(list)}, {"notes", std::move(notes)}};
}

void printPumps(const PumpsAlong& found, const std::optional<DriveClock>& clock)
{
    if (!found.pumps.empty())
        std::printf("%8s %7s %9s  %-26s %s%s\n", "km", "off km", "detour km", "pump", clock ? "on arrival  " : "",
                    "opening hours");
    for (const PumpAlong& pump : found.pumps) {
        std::printf("%8.1f %7.2f %8.1f%s  %-26s ", pump.at.km(), pump.off.km(), pump.detour.km(),
                    pump.byRoad ? " " : "*", pump.pump.name.c_str());
        if (clock)
            std::printf("%-11s ", wordOfArrival(arrivalAt(pump, *clock).state));
        std::printf("%s\n", hoursText(pump).c_str());
    }
    bool anyByLine = false;
    for (const PumpAlong& pump : found.pumps)
        anyByLine = anyByLine || !pump.byRoad;
    if (anyByLine)
        std::printf("* no road to it is known: %.1f times the straight line, an estimate.\n", kRoadPerStraight);
    for (const Sentence& note : found.notes)
        std::printf("note: %s\n", said(note).c_str());
    std::printf("The map may be old: whether a pump still is there, and is open, is known to who asks there.\n");
}

Result<void> runPumps(const PumpsOptions& options, const CliContext& context)
{
    GpxOptions gpx;
    gpx.which = options.which;
    const Result<RouteFile> file = readRouteAndWarn(options.track, gpx);
    if (!file)
        return fail(file.error());
    PlanRequest way;
    way.route = file->route;
    way.speed = Speed::fromKmPerHour(options.speedKmh.value_or(kUsualSpeedKmh));
    if (!options.departure.empty()) {
        const Result<Minutes> departure = parseClock(options.departure);
        if (!departure)
            return fail(departure.error());
        way.departure = *departure;
    }
    const auto clock = clockOf(std::move(way), options.date, {});
    if (!clock)
        return fail(clock.error());
    PumpFlags flags = options.flags;
    if (const auto log = readLog(context)) // else there is no list of one's own
        flags.own = valuesOf(log->pumps);
    const auto found = pumpsAlong(flags, *file);
    if (!found)
        return fail(found.error());
    if (!options.gpx.empty() || !options.csv.empty()) {
        const RouteWithPumps with = withPumps(*file, found->pumps, *clock);
        warn(with.notes);
        if (!options.gpx.empty())
            if (const auto written = writeRouteGpx(with.file, options.gpx); !written)
                return written;
        if (!options.csv.empty())
            if (const auto written = writeRouteCsv(with.file.route, options.csv); !written)
                return written;
    }
    if (context.json)
        print(pumpsJson(*found, *clock));
    else
        printPumps(*found, *clock);
    return {};
}

void addPumpsFlags(CLI::App& command, PumpsOptions& options)
{
    required(addPath(command, "extract", options.flags.extract, "OpenStreetMap extract (.osm.pbf)"));
    required(addPath(command, "--along", options.track, "GPX with the track", "TRACK.gpx"));
    addText(command, "--track", options.which,
            "GPX with several tracks or routes: name or number of the one that is driven");
    addPumpFlags(command, options.flags);
    addText(command, "--depart", options.departure, "HH:MM: says which are open when passed", "HH:MM");
    addText(command, "--date", options.date, "the day of the departure; default today");
    addNumber(command, "--speed-kmh", options.speedKmh, kPositive, "of the whole way, for the hours (60)");
    addPath(command, "--gpx", options.gpx, "also write the route with its pumps as GPX");
    addPath(command, "--csv", options.csv, "also write it as a route table");
}

} // namespace

void warn(const std::vector<Sentence>& notes)
{
    for (const Sentence& note : notes)
        warn(note);
}

Result<RouteFile> readRouteAndWarn(const std::filesystem::path& file, const GpxOptions& options)
{
    Result<RouteFile> route = readRouteFile(file, options);
    if (route)
        warn(route->warnings);
    return route;
}

void addPumpFlags(CLI::App& command, PumpFlags& flags)
{
    addNumber(command, "--within-km", flags.withinKm, kWithin, "pumps so far from the track, straight (2)");
    addText(command, "--fuel", flags.fuel, "leave out what the map says does not sell it: diesel, petrol, lpg ...");
    addTexts(command, "--leave-out", flags.leaveOut, "leave out this pump (name or id)", "NAME");
}

Result<PumpsAlong> pumpsAlong(const PumpFlags& flags, const RouteFile& file)
{
    if (file.line.size() < 2)
        return failInput(Sentence::of("pumps are found along a track, and a table has no places"),
                         Sentence::of("a GPX file"));
    PumpsQuestion question;
    question.within = Distance::fromKm(flags.withinKm.value_or(2));
    question.fuel = flags.fuel;
    question.leaveOut = flags.leaveOut;
    question.own = flags.own;
    StatusLine line;
    question.progress = [&line](double share) {
        line.say(format("reading the map %d %%", int(100 * share)));
        return true;
    };
    return findPumpsAlong(file.line, flags.extract, question);
}

Result<std::optional<DriveClock>> clockOf(PlanRequest way, const std::string& date, Distance from)
{
    if (!way.departure)
        return std::nullopt;
    const Result<Instant> when = instantOr(date, now());
    if (!when)
        return fail(when.error());
    return DriveClock(std::chrono::floor<std::chrono::days>(*when), std::move(way), from);
}

void addPumpsCommand(CLI::App& app, CliContext& context)
{
    addCommand<PumpsOptions>(app, context, "pumps", "fuel stations of a map along a track", addPumpsFlags, runPumps);
}

} // namespace undermark
