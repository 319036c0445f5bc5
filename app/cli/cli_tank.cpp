// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli vehicle tank add|set|list|remove: tanks beside the vehicle's own.
#include "app/cli/cli_tank.h"

#include "app/cli/cli_logbook.h"
#include "app/cli/terminal_words.h"
#include "engine/base/record_words.h"

#include <iostream>

namespace undermark {

void addTankFlags(CLI::App& command, TankFlags& o, bool isNew)
{
    CLI::Option& capacity =
        addNumber(command, "--capacity-l", o.capacity, kPositive, "litres to the first click");
    if (isNew)
        required(capacity);
    addNumber(command, "--zero-at-l", o.zero, kNotNegative,
              "litres at the zero mark: usable ones, or since drained where there is a calibration");
    addText(command, "--zero-since", o.zeroSince,
            "when that zero mark came in force, where it was another before; proofs of then do not count against it", "DATE");
    addNumber(command, "--left-behind-l", o.leftBehind, kNotNegative,
              "litres still there when the pump spits");
    addNumber(command, "--left-behind-sd-l", o.leftBehindSd, kNotNegative, "their uncertainty");
    addNumber(command, "--unusable-l", o.unusable, kNotNegative,
              "litres still there when the engine starves");
    addNumber(command, "--unusable-sd-l", o.unusableSd, kNotNegative, "their uncertainty");
    addWordOf<CircuitKind>(command, "--circuit", o.circuit,
                           "direct, resistive, ratiometric, percent or counts");
    addNumber(command, "--supply-v", o.supply, kPositive, "supply of the sender, V");
    addNumber(command, "--pull-up-ohm", o.pullUp, kPositive, "pull-up of the sender, ohm");
    addText(command, "--signal-unit", o.signalUnit, "unit of the readings: V, ohm, %, counts");
    addNumber(command, "--resolution", o.resolution, kPositive, "one step of the reading");
}

Result<std::optional<Instant>> zeroSince(const TankFlags& flags)
{
    if (flags.zeroSince.empty())
        return std::nullopt;
    auto since = instantOr(flags.zeroSince, {});
    if (since)
        return *since;
    since.error().where.column = "--zero-since";
    return fail(since.error());
}

void setEstimate(std::optional<Estimate<Volume>>& target, const std::optional<double>& mean,
                 const std::optional<double>& sd)
{
    constexpr double kUsualSdL = 0.7;
    if (mean)
        target = Estimate<Volume>{Volume::fromLitres(*mean), Volume::fromLitres(sd.value_or(kUsualSdL))};
    else if (sd && target)
        target->sd = Volume::fromLitres(*sd);
}

void setSender(const TankFlags& flags, Sender& sender)
{
    if (!flags.circuit.empty())
        sender.circuit = *fromWord<CircuitKind>(flags.circuit);
    if (flags.supply)
        sender.supplyVolts = *flags.supply;
    if (flags.pullUp)
        sender.pullUpOhms = *flags.pullUp;
    if (!flags.signalUnit.empty())
        sender.unit = flags.signalUnit;
    if (flags.resolution)
        sender.resolution = Signal::of(*flags.resolution);
}

void addTankOption(CLI::App& command, std::string& tank, const std::string& help)
{
    addText(command, "--tank", tank, help + "; default the vehicle's own", "NAME");
}

void addTankReadings(CLI::App& command, TankReadings& readings)
{
    addTexts(command, "--tank-signal", readings.signals,
             "what the sender of a further tank says now; may be repeated", "NAME=READING");
    addTexts(command, "--tank-litres", readings.litres,
             "usable litres in a further tank now; may be repeated", "NAME=LITRES");
}

namespace {

struct NumberOfTank {
    std::string tank;
    double number = 0;
};

Result<NumberOfTank> numberOfTank(const std::string& pair, const char* flag, const NumberRange& range)
{
    const auto halves = halvesOf(pair);
    if (!halves || halves->first.empty())
        return wrongUse(std::string(flag) + " takes NAME=NUMBER", "aux=12.5", pair);
    const auto number = parseNumber(halves->second, range);
    return number ? Result<NumberOfTank>({halves->first, *number}) : fail(number.error());
}

} // namespace

Result<void> ask(const TankReadings& readings, const CarKnowledge& car, Question& question)
{
    for (const std::string& pair : readings.signals) {
        const auto signal = numberOfTank(pair, "--tank-signal", kAnyNumber);
        if (!signal)
            return fail(signal.error());
        question.tanks[signal->tank].signal = Signal::of(signal->number);
    }
    for (const std::string& pair : readings.litres) {
        const auto litres = numberOfTank(pair, "--tank-litres", kNotNegative);
        if (!litres)
            return fail(litres.error());
        const CarKnowledge* tank = car.tank(litres->tank);
        question.tanks[litres->tank].usable = {Volume::fromLitres(litres->number), fullFillSd(tank ? *tank : car)};
    }
    return {};
}

namespace {

struct FurtherTankOptions {
    std::string name, feed;
    std::optional<double> transfer;
    TankFlags tank;
};

Result<void> applyTo(const FurtherTankOptions& o, ExtraTank& tank)
{
    if (const auto applied = applyTankFlags(o.tank, tank); !applied)
        return applied;
    if (!o.feed.empty())
        tank.feed = *fromWord<TankFeed>(o.feed);
    if (o.transfer)
        tank.transfer = FlowRate::fromLitresPerHour(*o.transfer * 60);
    return {};
}

Result<Entry<ExtraTank>> tankEntry(const Car& car, const std::string& name)
{
    const auto log = car.log();
    return log ? furtherTank(*log, name) : fail(log.error());
}

Json furtherJson(const Entry<ExtraTank>& tank)
{
    Json json = tankJson(tank.value);
    json["id"] = tank.id.uuid;
    json["feed"] = wordOf(tank.value.feed);
    json["transfer_l_per_min"] = tank.value.transfer ? Json(tank.value.transfer->litresPerHour() / 60) : Json();
    json["circuit"] = wordOf(tank.value.sender.circuit);
    return json;
}

Result<void> runTankAdd(const FurtherTankOptions& o, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    if (!car)
        return fail(car.error());
    ExtraTank tank;
    tank.name = o.name;
    if (const auto applied = applyTo(o, tank); !applied)
        return applied;
    const auto id = car->record(tank);
    if (!id)
        return fail(id.error());
    if (context.json)
        print(furtherJson({*id, {}, tank}));
    else
        std::cout << "Added the tank " << tank.name << ", " << fixed(tank.capacity.litres())
                  << " L to the first click, " << wordOf(tank.feed) << ".\n"
                  << "Next: calibrate POINTS.csv --tank " << tank.name << " --save; log what goes into it with fill add --tank "
                  << tank.name << ". It counts from its first fill on.\n";
    return {};
}

Result<void> runTankSet(const FurtherTankOptions& o, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    const auto entry = car ? tankEntry(*car, o.name) : fail(car.error());
    if (!entry)
        return fail(entry.error());
    ExtraTank tank = entry->value;
    if (const auto applied = applyTo(o, tank); !applied)
        return applied;
    if (const auto done = car->revise(entry->id, tank); !done)
        return done;
    if (context.json)
        print(furtherJson({entry->id, {}, tank}));
    else
        std::cout << "Noted for the tank " << tank.name << ".\n";
    return {};
}

Result<void> runTankList(const CliContext& context)
{
    const auto log = readLog(context);
    if (!log)
        return fail(log.error());
    printKept(context, "tanks", log->tanks, furtherJson, [&](const Entry<ExtraTank>& tank) { return furtherTankLine(tank.value, *log); },
              "No tank beside the vehicle's own: vehicle tank add --name NAME --capacity-l LITRES --feed shared.");
    return {};
}

// All that was ever said of it; what names it has to go first.
Result<void> runTankRemove(const std::string& name, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    auto entry = car ? tankEntry(*car, name) : fail(car.error());
    if (!entry)
        return fail(entry.error());
    for (; entry; entry = tankEntry(*car, name))
        if (const auto done = car->takeBack(entry->id); !done)
            return done;
    if (context.json)
        print({{"removed", name}});
    else
        std::cout << "Removed the tank " << name << ".\n";
    return {};
}

void addFurther(CLI::App& command, FurtherTankOptions& o, bool isNew)
{
    if (isNew)
        required(addText(command, "--name", o.name, "its name"));
    else
        required(addText(command, "tank", o.name, "its name", "NAME"));
    CLI::Option& feed = addWordOf<TankFeed>(command, "--feed", o.feed,
                        "how it feeds: shared (its level stands with the vehicle's own), chosen (by a tap) or "
                        "pumped-over (into the vehicle's own)");
    if (isNew)
        required(feed);
    addNumber(command, "--transfer-l-per-min", o.transfer, kPositive, "pumped over: how fast");
    addTankFlags(command, o.tank, isNew);
}

} // namespace

std::string furtherTankLine(const ExtraTank& tank, const VehicleLog& log)
{
    const auto* calibration = log.latestCalibration(tank.name);
    return format("%-24s %6.1f L  %-11s  %s", tank.name.c_str(), tank.capacity.litres(), wordOf(tank.feed),
                  calibration ? ("calibrated " + dateText(calibration->value.time).substr(0, 10)).c_str()
                              : "not calibrated");
}

void addTankCommands(CLI::App& vehicle, CliContext& context)
{
    CLI::App& tank = addGroup(vehicle, "tank", "tanks beside the vehicle's own: add, set, list, remove");
    addCommand<FurtherTankOptions>(
        tank, context, "add", "a further tank, with a zero mark and a hidden reserve of its own",
        [](CLI::App& add, FurtherTankOptions& options) { addFurther(add, options, true); }, runTankAdd);
    addCommand<FurtherTankOptions>(
        tank, context, "set", "change what is known of a further tank",
        [](CLI::App& set, FurtherTankOptions& options) { addFurther(set, options, false); }, runTankSet);
    CLI::App& list = addSubcommand(tank, "list", "the further tanks");
    addJson(list, context);
    onRun(list, context, [&context] { return runTankList(context); });
    addCommand<std::string>(tank, context, "remove", "take back a further tank that no entry names",
                            [](CLI::App& remove, std::string& name) {
                                required(addText(remove, "tank", name, "its name", "NAME"));
                            },
                            runTankRemove);
}

} // namespace undermark
