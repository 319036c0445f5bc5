// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli vehicle add|set|rename|list|show: tank and sender; source and tank are
// files of their own.
#include "app/car/car_file.h"
#include "app/car/kept_source.h"
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_tank.h"
#include "app/cli/terminal_words.h"

#include <iostream>
#include <map>

namespace undermark {

namespace {

struct VehicleOptions {
    std::string name, fuel, currency;
    std::vector<std::string> surge, sources;
    std::filesystem::path map; // of the sources
    std::optional<double> lamp, massKg;
    TankFlags tank;
};

// A new vehicle must state its capacity and its fuel.
void addVehicleFlags(CLI::App& command, VehicleOptions& o, bool isNew)
{
    addTankFlags(command, o.tank, isNew);
    CLI::Option& fuel =
        addWordOf<FuelKind>(command, "--fuel", o.fuel, "petrol, diesel, lpg or ethanol");
    if (isNew)
        required(fuel);
    addTexts(command, "--surge-margin-l", o.surge,
             "MODE=LITRES that surge makes unusable; may be repeated", "MODE=LITRES");
    addNumber(command, "--lamp-l", o.lamp, kNotNegative, "usable litres at which the lamp lights");
    addNumber(command, "--mass-kg", o.massKg, kPositive,
              "as it is driven, with who sits in it: what a climb takes before trips with heights have taught it");
    addText(command, "--currency", o.currency, "of prices that state none, by its three letters (ISO 4217)");
}

Result<void> setSurge(const std::vector<std::string>& surge, const std::vector<Entry<Mode>>& modes,
                      Vehicle& vehicle)
{
    for (const std::string& pair : surge) {
        const auto halves = halvesOf(pair);
        if (!halves)
            return wrongUse("--surge-margin-l takes MODE=LITRES", "special-stage=2", pair);
        const auto& [mode, margin] = *halves;
        std::string known;
        bool found = false;
        for (const auto& entry : modes) {
            known += (known.empty() ? "" : ", ") + entry.value.name;
            found = found || entry.value.name == mode;
        }
        if (!found)
            return fail(ErrorCode::notFound,
                        Sentence::just("there is no driving mode of this name"),
                        {.column = "--surge-margin-l"}, Sentence::just(known), mode);
        const Result<double> litres = parseNumber(margin, kNotNegative);
        if (!litres)
            return fail(litres.error());
        vehicle.surgeMargin[mode] = Volume::fromLitres(*litres);
    }
    return {};
}

Result<void> apply(const VehicleOptions& o, Vehicle& vehicle)
{
    if (!o.fuel.empty())
        vehicle.fuel = *fromWord<FuelKind>(o.fuel);
    if (o.lamp)
        vehicle.lamp = Volume::fromLitres(*o.lamp);
    if (o.massKg)
        vehicle.massKg = o.massKg;
    if (!o.currency.empty())
        vehicle.currency = o.currency;
    return applyTankFlags(o.tank, vehicle);
}

std::vector<Entry<Mode>> standardModes()
{
    std::vector<Entry<Mode>> modes;
    for (const char* name : kStandardModes)
        modes.push_back({{}, {}, Mode{name, std::nullopt}});
    return modes;
}

Result<void> runAdd(const VehicleOptions& o, const CliContext& context)
{
    Vehicle vehicle;
    vehicle.name = o.name;
    if (const auto set = apply(o, vehicle).and_then([&] { return setSurge(o.surge, standardModes(), vehicle); }); !set)
        return set;
    auto car = Car::open(context.logbook, OpenMode::createIfMissing);
    const auto id = car ? car->setUp(vehicle) : fail(car.error());
    if (!id)
        return fail(id.error());
    if (context.json)
        print({{"id", id->uuid}, {"name", vehicle.name}});
    else
        std::cout << "Added " << vehicle.name << ", " << fixed(vehicle.capacity.litres())
                  << " L to the first click.\n"
                  << "Next: log each fill (fill add --litres …), the first one full; and where the "
                     "sender was read while pouring, calibrate POINTS.csv --save.\n";
    return {};
}

// Those named that are not kept yet.
Result<std::vector<LiveSource>> newSources(const VehicleOptions& o, const VehicleLog& log, FuelKind fuel)
{
    if (o.sources.empty() && !o.map.empty())
        return wrongUse("a map, and no source is named", "--source SOURCE beside --map");
    std::vector<LiveSource> kept = valuesOf(log.sources), fresh;
    for (const std::string& spec : o.sources) {
        const Result<LiveSource> source = sourceToKeep(spec, o.map, fuel);
        if (!source)
            return fail(source.error());
        if (std::ranges::find(kept, source->spec, &LiveSource::spec) != kept.end())
            continue;
        kept.push_back(*source);
        fresh.push_back(*source);
    }
    return fresh;
}

Result<void> runSet(const VehicleOptions& o, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    const auto log = car ? car->log() : fail(car.error());
    if (!log)
        return fail(log.error());
    Vehicle vehicle = log->vehicle.value;
    if (const auto set = apply(o, vehicle).and_then([&] { return setSurge(o.surge, log->modes, vehicle); }); !set)
        return set;
    const auto sources = newSources(o, *log, vehicle.fuel);
    if (!sources)
        return fail(sources.error());
    // With a calibration the zero mark is a point of its curve.
    if (o.tank.zero && log->calibration) {
        if (const auto done = restateZero(*car, *log->calibration, *vehicle.zeroMark, *zeroSince(o.tank)); !done)
            return done;
        vehicle.zeroMark = log->vehicle.value.zeroMark;
        vehicle.zeroSince = log->vehicle.value.zeroSince;
    }
    if (!(vehicle == log->vehicle.value))
        if (const auto done = car->revise(log->vehicle.id, vehicle); !done)
            return fail(done.error());
    for (const LiveSource& source : *sources)
        if (const auto done = car->record(source); !done)
            return fail(done.error());
    if (context.json)
        print({{"id", log->vehicle.id.uuid}, {"name", vehicle.name}});
    else
        std::cout << "Noted for " << vehicle.name << ".\n";
    return {};
}

struct NewName {
    std::string before, after;
};

Result<void> runRename(const NewName& name, const CliContext& context)
{
    CliContext renamed = context;
    renamed.vehicle = name.before;
    auto car = namedCar(renamed, OpenMode::readWrite);
    const auto entry = car ? car->vehicle() : fail(car.error());
    if (!entry)
        return fail(entry.error());
    Vehicle vehicle = entry->value;
    vehicle.name = name.after;
    if (vehicle.name != name.before)
        if (const auto done = car->revise(entry->id, vehicle); !done)
            return done;
    if (context.json)
        print({{"id", entry->id.uuid}, {"name", vehicle.name}});
    else
        std::cout << name.before << " is called " << vehicle.name << " now.\n";
    return {};
}

void addRenameOptions(CLI::App& command, NewName& name)
{
    required(addText(command, "vehicle", name.before, "its name until now", "OLD"));
    required(addText(command, "name", name.after, "its new name", "NEW"));
}

Json vehicleJson(const Vehicle& v)
{
    const auto litres = [](const auto& volume) { return volume ? Json(volume->litres()) : Json(); };
    const auto pair = [](const std::optional<Estimate<Volume>>& e) {
        return e ? estimateJson(e->mean.litres(), e->sd.litres()) : Json();
    };
    Json surge = Json::object();
    for (const auto& [mode, margin] : v.surgeMargin)
        surge[mode] = margin.litres();
    return {{"name", v.name},
            {"capacity_l", v.capacity.litres()},
            {"fuel", wordOf(v.fuel)},
            {"zero_at_l", litres(v.zeroMark)},
            {"zero_since", v.zeroSince ? dateJson(*v.zeroSince) : Json()},
            {"left_behind_l", pair(v.leftBehind)},
            {"unusable_l", pair(v.unusable)},
            {"surge_margin_l", surge},
            {"lamp_l", litres(v.lamp)},
            {"mass_kg", v.massKg ? Json(*v.massKg) : Json()},
            {"circuit", wordOf(v.sender.circuit)},
            {"supply_v", v.sender.supplyVolts ? Json(*v.sender.supplyVolts) : Json()},
            {"pull_up_ohm", v.sender.pullUpOhms ? Json(*v.sender.pullUpOhms) : Json()},
            {"signal_unit", v.sender.unit},
            {"currency", v.currency ? Json(*v.currency) : Json()}};
}

Json carFileJson(const CarFile& file)
{
    const auto day = [](const std::optional<Instant>& time) { return time ? dateJson(*time) : Json(); };
    Json json = vehicleJson(file.vehicle.value);
    json["calibrated"] = day(file.calibrated);
    json["verified"] = day(file.verified);
    json["handed_over"] = day(file.handedOver);
    json["due"] = Json::array();
    for (const Sentence& each : file.due)
        json["due"].push_back(said(each));
    return json;
}

void printCarFile(const CarFile& file, bool withDue)
{
    const Vehicle& vehicle = file.vehicle.value;
    std::cout << format("%-24s %6.1f L  %s", vehicle.name.c_str(), vehicle.capacity.litres(), wordOf(vehicle.fuel));
    const auto day = [](const char* what, const std::optional<Instant>& time) {
        if (time)
            std::cout << "  " << what << ' ' << dateText(*time).substr(0, 10);
    };
    day("calibrated", file.calibrated);
    day("verified", file.verified);
    day("handed over", file.handedOver);
    std::cout << '\n';
    if (withDue)
        for (const Sentence& each : file.due)
            std::cout << "  " << said(each) << '\n';
}

Result<void> runList(const CarWish& wish, const CliContext& context)
{
    const auto car = Car::open(context.logbook, OpenMode::readOnly);
    const auto logs = car ? car->logs() : fail(car.error());
    if (!logs)
        return fail(logs.error());
    Json list = Json::array();
    for (const VehicleLog& log : *logs) {
        const CarFile file = carFileOf(log, now());
        if (!isWanted(file, wish, now()))
            continue;
        if (context.json)
            list.push_back(carFileJson(file));
        else
            printCarFile(file, wish.due);
    }
    if (context.json)
        print({{"vehicles", list}});
    return {};
}

void addListOptions(CLI::App& command, CarWish& wish)
{
    addText(command, "--name", wish.name, "only those whose name holds this");
    addCount(command, "--older-than-months", wish.months, {1, 1200, "1 to 1200 months"},
             "only those whose calibration is that old or older");
    addFlag(command, "--due", wish.due, "only those of which something is due, and what");
}

Result<void> runShow(const CliContext& context)
{
    const auto log = readLog(context);
    if (!log)
        return fail(log.error());
    const Vehicle& v = log->vehicle.value;
    if (context.json) {
        Json json = vehicleJson(v);
        json["modes"] = Json::array();
        for (const auto& mode : log->modes)
            json["modes"].push_back(mode.value.name);
        json["sources"] = Json::array();
        for (const auto& source : log->sources)
            json["sources"].push_back(source.value.spec);
        json["tanks"] = Json::array();
        for (const auto& tank : log->tanks)
            json["tanks"].push_back(tank.value.name);
        json["calibration_zero_at_l"] =
            log->calibration ? Json(log->calibration->value.zeroMark.litres()) : Json();
        print(json);
        return {};
    }
    const auto line = [](const char* what, const std::string& value) {
        std::cout << format("%-22s %s\n", what, value.c_str());
    };
    const auto spread = [](const std::optional<Estimate<Volume>>& e) {
        return e ? fixed(e->mean.litres()) + " ± " + fixed(e->sd.litres()) + " L"
                 : std::string("not stated");
    };
    line("vehicle", v.name);
    line("fuel", wordOf(v.fuel));
    line("first click", fixed(v.capacity.litres()) + " L");
    line("left behind", spread(v.leftBehind));
    line("unusable", spread(v.unusable));
    line("sender", std::string(wordOf(v.sender.circuit)) + ", " + v.sender.unit);
    line("calibration", log->calibration
             ? std::to_string(log->calibration->value.points.size()) + " points, zero mark at "
                 + fixed(log->calibration->value.zeroMark.litres()) + " L since drained"
             : std::string("none yet"));
    for (const auto& [mode, margin] : v.surgeMargin)
        line("surge margin", fixed(margin.litres()) + " L on " + mode);
    for (const auto& tank : log->tanks)
        line("further tank", furtherTankLine(tank.value, *log));
    for (const auto& mode : log->modes)
        line("driving mode", mode.value.name);
    for (const auto& source : log->sources)
        line("source", source.value.spec + (source.value.tank ? "  of " + *source.value.tank : ""));
    return {};
}

} // namespace

void addVehicleCommand(CLI::App& app, CliContext& context)
{
    CLI::App& vehicle = addGroup(app, "vehicle", "tank and sender: add, set, rename, list, show, tank, source");
    addCommand<VehicleOptions>(
        vehicle, context, "add", "a new vehicle",
        [](CLI::App& add, VehicleOptions& options) {
            required(addText(add, "--name", options.name, "its name"));
            addVehicleFlags(add, options, true);
        },
        runAdd);
    addCommand<VehicleOptions>(
        vehicle, context, "set", "change what is known of a vehicle",
        [](CLI::App& set, VehicleOptions& options) {
            addVehicleFlags(set, options, false);
            addTexts(set, "--source", options.sources, "a source to keep with it, as source add does; may be repeated",
                     "SOURCE");
            addPath(set, "--map", options.map, "of the sources: which signal of a DBC file or frame is what", "MAP.json");
        },
        runSet);
    addCommand<NewName>(vehicle, context, "rename", "call a vehicle by another name", addRenameOptions,
                        runRename);
    addCommand<CarWish>(vehicle, context, "list", "all vehicles, and what is due of them", addListOptions, runList);
    CLI::App& show = addSubcommand(vehicle, "show", "one vehicle");
    addJson(show, context);
    onRun(show, context, [&context] { return runShow(context); });
    addTankCommands(vehicle, context);
    addSourceCommands(vehicle, context);
}

} // namespace undermark
