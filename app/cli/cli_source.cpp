// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli vehicle source add|list|remove|test: where a car's values come from; of test
// some seconds of what comes, and what was not understood.
#include "app/car/kept_source.h"
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_sources.h"
#include "app/cli/cli_tank.h"

#include <algorithm>
#include <iostream>

namespace undermark {

namespace {

struct NewSource {
    std::string spec, tank;
    std::filesystem::path map;
};

Json keptJson(const Entry<LiveSource>& source)
{
    return {{"id", source.id.uuid},
            {"source", source.value.spec},
            {"tank", source.value.tank ? Json(*source.value.tank) : Json()},
            {"map", source.value.reading ? Json(*source.value.reading) : Json()},
            {"dbc_bytes", source.value.dbc ? Json(source.value.dbc->size()) : Json()}};
}

std::string keptLine(const Entry<LiveSource>& source)
{
    return shortId(source.id) + "  " + source.value.spec + (source.value.reading ? "  with a map" : "")
        + (source.value.tank ? "  of " + *source.value.tank : "");
}

// The source of these words, or whose id begins so.
const Entry<LiveSource>* keptIn(const VehicleLog& log, const std::string& text)
{
    const auto meant = [&](const Entry<LiveSource>& source) {
        return source.value.spec == text || (!text.empty() && source.id.uuid.starts_with(text));
    };
    const auto found = std::ranges::find_if(log.sources, meant);
    return found == log.sources.end() ? nullptr : &*found;
}

Result<void> runSourceAdd(const NewSource& asked, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    const auto log = car ? car->log() : fail(car.error());
    if (!log)
        return fail(log.error());
    Result<LiveSource> source = sourceToKeep(asked.spec, asked.map, log->vehicle.value.fuel);
    if (!source)
        return fail(source.error());
    source->tank = tankName(asked.tank);
    if (const auto heard = placeOfTank(furtherNames(*log), source->tank); !heard)
        return fail(heard.error());
    if (keptIn(*log, source->spec) != nullptr)
        return fail(ErrorCode::badInput, Sentence::just("this source is kept already"), {},
                    Sentence::just("another one, or vehicle source remove before"), source->spec);
    const auto id = car->record(*source);
    if (!id)
        return fail(id.error());
    const Entry<LiveSource> kept{*id, {}, *source};
    if (context.json)
        print(keptJson(kept));
    else
        std::cout << "Kept with " << log->vehicle.value.name << ": " << keptLine(kept) << '\n';
    return {};
}

Result<void> runSourceList(const CliContext& context)
{
    const auto log = readLog(context);
    if (!log)
        return fail(log.error());
    printKept(context, "sources", log->sources, keptJson, keptLine,
              "No source yet: vehicle source add SOURCE.");
    return {};
}

Result<void> runSourceRemove(const std::string& text, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    const auto log = car ? car->log() : fail(car.error());
    if (!log)
        return fail(log.error());
    const Entry<LiveSource>* kept = keptIn(*log, text);
    if (kept == nullptr)
        return fail(ErrorCode::notFound, Sentence::just("there is no such source"), {},
                    Sentence::just("a source as vehicle source list shows it, or its id"), text);
    if (const auto done = car->takeBack(kept->id); !done)
        return done;
    if (context.json)
        print(keptJson(*kept));
    else
        std::cout << "No longer kept: " << keptLine(*kept) << '\n';
    return {};
}

void addNewSourceOptions(CLI::App& command, NewSource& asked)
{
    required(addText(command, "source", asked.spec, "the source, in the words of watch --source", "SOURCE"));
    addPath(command, "--map", asked.map, "which signal of a DBC file or frame is what", "MAP.json");
    addTankOption(command, asked.tank, "the tank whose reading it tells");
}

struct SourceTestOptions {
    SourceFlags sources;
    std::optional<double> seconds;
};

void printFound(const LiveSources& sources, const Sample& newest, double seconds, bool json)
{
    Json all{{"seconds", seconds}, {"sources", Json::array()}};
    for (const LiveSources::Told& told : sources.told()) {
        if (json)
            all["sources"].push_back(sourceJson(told));
        else
            std::cout << sourceLine(told) << format(" (%.1f a second)\n", double(told.counts.values) / seconds);
    }
    for (const Channel channel : kChannels) {
        const auto value = newest.get(channel);
        const std::string name(nameOf(channel));
        const long others = sources.joiner().leftOut(channel);
        if (indexOf(channel) >= kOwnChannels && !value) // most cars have no such tank
            continue;
        all[name] = value ? Json(*value) : Json();
        all["left_out"][name] = others;
        if (!json)
            std::cout << format("%-14s %s%s\n", name.c_str(), value ? format("%.10g", *value).c_str() : "nothing",
                                others > 0 ? format("; %ld values of other senders left out", others).c_str() : "");
    }
    if (json)
        print(all);
}

Result<void> runSourceTest(const SourceTestOptions& options, const CliContext& context)
{
    SourceFlags asked = options.sources;
    asked.heardWhole = true; // whether a bus is alive at all
    Result<LiveSources> sources = openSources(asked, context);
    if (!sources)
        return fail(sources.error());
    constexpr double kUsualSeconds = 5.0;
    const Seconds until(options.seconds.value_or(kUsualSeconds));
    const auto begin = std::chrono::steady_clock::now();
    Sample newest;
    Seconds now{};
    catchStop();
    while (now < until && !sources->ended() && !stopAsked()) {
        now = std::chrono::steady_clock::now() - begin;
        sources->take(std::min(now, until));
        while (const auto sample = sources->next()) {
            for (const Channel channel : kChannels) {
                if (const auto value = sample->get(channel))
                    newest.set(channel, *value);
            }
        }
        sources->wait(std::chrono::milliseconds(50));
    }
    printFound(*sources, newest, std::max(now, Seconds(0.1)).count(), context.json);
    return {};
}

void addSourceTestOptions(CLI::App& command, SourceTestOptions& options)
{
    addSourceFlags(command, options.sources);
    addNumber(command, "--for", options.seconds, kPositive, "seconds to listen (5)");
}

} // namespace

void addSourceCommands(CLI::App& vehicle, CliContext& context)
{
    CLI::App& source = addGroup(vehicle, "source", "where its values come from: add, list, remove, test");
    addCommand<NewSource>(source, context, "add", "keep a source with the vehicle: watch and the screen listen to it",
                          addNewSourceOptions, runSourceAdd);
    CLI::App& list = addSubcommand(source, "list", "the sources kept with it");
    addJson(list, context);
    onRun(list, context, [&context] { return runSourceList(context); });
    addCommand<std::string>(source, context, "remove", "keep a source no longer",
                            [](CLI::App& remove, std::string& text) {
                                required(addText(remove, "source", text, "the source, or its id", "SOURCE"));
                            },
                            runSourceRemove);
    addCommand<SourceTestOptions>(source, context, "test", "what comes from a source, and what is not understood",
                                  addSourceTestOptions, runSourceTest);
}

} // namespace undermark
