// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli own-pump add|list|remove: pumps that no map has, and what a map has wrong.
#include "app/cli/cli_logbook.h"
#include "engine/base/record_words.h"

#include <iostream>

namespace undermark {

namespace {

struct OwnPumpOptions {
    std::string name, hours, fuel, note;
    std::optional<double> latitude, longitude, price;
    bool closed = false;
};

Json ownPumpJson(const Entry<OwnPump>& pump)
{
    const auto orNull = [](const auto& value) { return value ? Json(*value) : Json(); };
    return {{"id", pump.id.uuid},
            {"name", pump.value.name},
            {"lat", pump.value.latitude},
            {"lon", pump.value.longitude},
            {"opening_hours", orNull(pump.value.hours)},
            {"fuel", pump.value.fuel ? Json(wordOf(*pump.value.fuel)) : Json()},
            {"price_per_l", orNull(pump.value.pricePerLitre)},
            {"note", orNull(pump.value.note)}};
}

std::string ownPumpLine(const Entry<OwnPump>& pump)
{
    const OwnPump& value = pump.value;
    std::string line = format("%s  %9.5f %10.5f  %s", shortId(pump.id).c_str(), value.latitude, value.longitude,
                              value.name.c_str());
    if (value.hours == "off")
        line += ", closed for good";
    else if (value.hours)
        line += ", " + *value.hours;
    if (value.fuel)
        line += std::string(", ") + wordOf(*value.fuel);
    if (value.pricePerLitre)
        line += format(", %.3f a litre", *value.pricePerLitre);
    return value.note ? line + ", " + *value.note : line;
}

// The one that is meant: by its name, or how its id begins.
Result<Entry<OwnPump>> ownPumpNamed(const VehicleLog& log, const std::string& word)
{
    std::vector<Entry<OwnPump>> meant;
    for (const Entry<OwnPump>& pump : log.pumps)
        if (pump.value.name == word || (!word.empty() && pump.id.uuid.starts_with(word)))
            meant.push_back(pump);
    if (meant.size() == 1)
        return meant.front();
    return fail(ErrorCode::notFound,
                meant.empty() ? Sentence::just("there is no such pump of your own")
                              : Sentence::just("several pumps of your own are called this"),
                {}, Sentence::just("a name or an id of own-pump list"), word);
}

Result<void> runOwnPumpAdd(const OwnPumpOptions& options, const CliContext& context)
{
    if (options.closed && !options.hours.empty())
        return wrongUse("a pump is closed for good or has hours", "one of --hours, --closed");
    OwnPump pump{options.name, *options.latitude, *options.longitude, {}, {}, {}, options.price};
    if (!options.hours.empty())
        pump.hours = options.hours;
    if (options.closed)
        pump.hours = "off";
    if (!options.fuel.empty())
        pump.fuel = fromWord<FuelKind>(options.fuel);
    if (!options.note.empty())
        pump.note = options.note;
    auto car = namedCar(context, OpenMode::readWrite);
    const auto id = car ? car->record(pump) : fail(car.error());
    if (!id)
        return fail(id.error());
    const Entry<OwnPump> entry{*id, car->time(), pump};
    if (context.json)
        print(ownPumpJson(entry));
    else
        std::cout << "Kept " << ownPumpLine(entry) << '\n';
    return {};
}

Result<void> runOwnPumpList(const CliContext& context)
{
    const auto log = readLog(context);
    if (!log)
        return fail(log.error());
    printKept(context, "pumps", log->pumps, ownPumpJson, ownPumpLine,
              "No pump of your own yet: own-pump add NAME --lat DEGREES --lon DEGREES.");
    return {};
}

Result<void> runOwnPumpRemove(const std::string& word, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    const auto log = car ? car->log() : fail(car.error());
    const auto pump = log ? ownPumpNamed(*log, word) : fail(log.error());
    if (!pump)
        return fail(pump.error());
    if (const auto done = car->takeBack(pump->id); !done)
        return done;
    if (context.json)
        print(ownPumpJson(*pump));
    else
        std::cout << "Taken off the list: " << ownPumpLine(*pump) << '\n';
    return {};
}

void addOwnPumpOptions(CLI::App& command, OwnPumpOptions& options)
{
    static const NumberRange latitudes{-90, 90, Sentence::just("degrees from -90 to 90")};
    static const NumberRange longitudes{-180, 180, Sentence::just("degrees from -180 to 180")};
    required(addText(command, "name", options.name, "what it is called", "NAME"));
    required(addNumber(command, "--lat", options.latitude, latitudes, "degrees north, WGS 84"));
    required(addNumber(command, "--lon", options.longitude, longitudes, "degrees east"));
    addText(command, "--hours", options.hours, "when it is open, as OpenStreetMap writes it", "HOURS");
    addFlag(command, "--closed", options.closed, "closed for good: left out wherever a map has it");
    addWordOf<FuelKind>(command, "--fuel", options.fuel, "what it sells: petrol, diesel, lpg or ethanol");
    addNumber(command, "--price-per-l", options.price, kNotNegative, "price per litre");
    addText(command, "--note", options.note, "what is to be minded there");
}

} // namespace

void addOwnPumpCommand(CLI::App& app, CliContext& context)
{
    CLI::App& pump = addGroup(app, "own-pump", "pumps that no map has, or has wrong: add, list, remove");
    addCommand<OwnPumpOptions>(pump, context, "add",
                               "keep a pump; within 100 m of one of the map's it corrects that", addOwnPumpOptions,
                               runOwnPumpAdd);
    CLI::App& list = addSubcommand(pump, "list", "the pumps of your own");
    addJson(list, context);
    onRun(list, context, [&context] { return runOwnPumpList(context); });
    addCommand<std::string>(pump, context, "remove", "take one off the list",
                            [](CLI::App& remove, std::string& word) {
                                required(addText(remove, "pump", word, "its name, or how its id begins", "NAME"));
                            },
                            runOwnPumpRemove);
}

} // namespace undermark
