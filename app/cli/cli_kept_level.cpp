// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli level add|list|correct|remove: what was in a tank at a time. Answers count on
// from the newest since the last full fill (engine/outlook/kept_level.h).
#include "app/cli/cli_kept_level.h"

#include "app/cli/cli_logbook.h"
#include "app/cli/cli_record.h"
#include "app/cli/terminal_words.h"
#include "engine/base/record_words.h"

#include <algorithm>
#include <iostream>

namespace undermark {

namespace {

struct LevelOptions {
    RecordOptions<LevelRecord> columns;
    std::optional<double> litres, litresSd;
    std::string date;
};

struct CorrectedLevel : LevelOptions {
    std::string id;
};

bool givesLevel(const LevelOptions& o, const LevelRecord& columns) { return o.litres || columns.signal; }

// What was given, over what is known; another kind of telling takes the place of the one before.
Result<void> applyTo(const LevelOptions& o, const CarKnowledge& car, LevelRecord& level)
{
    if (o.litresSd && !o.litres)
        return wrongUse("--litres-sd goes with --litres");
    if (givesLevel(o, o.columns.record())) {
        level.signal = level.signal2 = level.signalSd = std::nullopt;
        level.usable = level.added = std::nullopt;
    }
    o.columns.applyTo(level);
    if (!level.signal && (level.signal2 || level.signalSd))
        return wrongUse("--signal2 and --signal-sd go with --signal");
    if (!o.date.empty()) {
        const auto time = instantOr(o.date, level.time);
        if (!time)
            return fail(time.error());
        level.time = *time;
    }
    if (o.litres) {
        const CarKnowledge* tank = level.tank ? car.tank(*level.tank) : &car;
        level.usable = {Volume::fromLitres(*o.litres),
                        o.litresSd ? Volume::fromLitres(*o.litresSd) : fullFillSd(tank ? *tank : car)};
    }
    return {};
}

// An odometer that runs backwards is stored, and said.
void warnOfOdometer(const LevelRecord& level, const CarKnowledge& car)
{
    const auto full = std::find_if(car.fills.rbegin(), car.fills.rend(), [&](const Fill& fill) {
        return fill.extent != FillExtent::partial && fill.time < level.time;
    });
    if (level.odometer && full != car.fills.rend() && full->odometer && *level.odometer < *full->odometer)
        warn("the odometer is lower than at the full fill before: it is not counted from");
}

// What follows from it: the answer of now, where that counts on from it.
void tellKept(const Entry<LevelRecord>& level, const CarKnowledge& car, const CliContext& context)
{
    warnOfOdometer(level.value, car);
    if (context.json)
        return print(levelJson(level));
    std::cout << "Kept: " << levelLine(level.value) << '\n';
    const Result<Outlook> now = outlook(car, {});
    if (now && now->asOf == level.value.time)
        std::cout << format("%.1f ± %.1f L usable now (estimate), counted on from it.\n", now->usable.mean.litres(),
                            now->usable.sd.litres());
    else
        warn("answers do not count on from it: there is a newer level or full fill, a tank whose level is not "
             "kept, or no calibration that this reading goes with");
}

Result<void> runLevelAdd(const LevelOptions& o, const CliContext& context)
{
    if (!givesLevel(o, o.columns.record()))
        return wrongUse("say what was read or known", "--signal or --litres");
    auto car = namedCar(context, OpenMode::readWrite);
    const auto before = car ? car->knowledge() : fail(car.error());
    if (!before)
        return fail(before.error());
    LevelRecord level;
    level.time = now();
    if (const auto applied = applyTo(o, **before, level); !applied)
        return applied;
    const auto id = car->record(level);
    const auto known = id ? car->knowledge() : fail(id.error());
    if (!known)
        return fail(known.error());
    tellKept({*id, {}, level}, **known, context);
    return {};
}

std::string entryLine(const Entry<LevelRecord>& level) { return shortId(level.id) + "  " + levelLine(level.value); }

Result<void> runLevelList(const CliContext& context)
{
    const auto log = readLog(context);
    if (!log)
        return fail(log.error());
    printKept(context, "levels", log->levels, levelJson, entryLine,
              "No level is kept yet: level add --signal READING.");
    return {};
}

Result<Entry<LevelRecord>> levelOf(const VehicleLog& log, const std::string& beginning)
{
    std::vector<Entry<LevelRecord>> meant;
    for (const Entry<LevelRecord>& level : log.levels)
        if (level.id.uuid.starts_with(beginning))
            meant.push_back(level);
    if (meant.size() == 1)
        return meant.front();
    if (!meant.empty())
        return wrongUse("several levels begin with this id", "more characters of it", beginning);
    return fail(ErrorCode::notFound, Sentence::just("there is no level of this id"), {.column = "ID"},
                Sentence::just("an id, or its beginning, as level list prints it"), beginning);
}

Result<void> runLevelCorrect(const CorrectedLevel& o, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    const auto before = car ? car->knowledge() : fail(car.error());
    auto entry = before ? levelOf((*before)->log, o.id) : fail(before.error());
    if (!entry)
        return fail(entry.error());
    const LevelRecord was = entry->value;
    if (const auto applied = applyTo(o, **before, entry->value); !applied)
        return applied;
    if (entry->value == was)
        return wrongUse("nothing of the level is corrected", "--signal, --litres, --odometer-km, --date, --note");
    if (const auto done = car->revise(entry->id, entry->value); !done)
        return done;
    const auto known = car->knowledge();
    if (!known)
        return fail(known.error());
    tellKept(*entry, **known, context);
    return {};
}

// All that was ever said of it.
Result<void> runLevelRemove(const std::string& beginning, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    const auto log = car ? car->log() : fail(car.error());
    const auto entry = log ? levelOf(*log, beginning) : fail(log.error());
    if (!entry)
        return fail(entry.error());
    const auto versions = car->history(entry->id, entry->value);
    if (!versions)
        return fail(versions.error());
    const auto standing = std::ranges::count(*versions, false, &LogVersion::withdrawn);
    if (const auto done = car->takeBackAll(std::vector(std::size_t(standing), entry->id)); !done)
        return done;
    if (context.json)
        print(levelJson(*entry));
    else
        std::cout << "Taken out: " << entryLine(*entry) << '\n';
    return {};
}

void addLevelOptions(CLI::App& command, LevelOptions& o)
{
    o.columns.addTo(command);
    addNumber(command, "--litres", o.litres, kNotNegative, "usable litres then, instead of a reading");
    addNumber(command, "--litres-sd", o.litresSd, kNotNegative, "their uncertainty (as after a full fill)");
    addText(command, "--date", o.date, "2026-05-31 or 2026-05-31T14:05, UTC; default now");
}

} // namespace

std::string levelLine(const LevelRecord& level)
{
    std::string line = format("%-17s", dateText(level.time).c_str());
    if (level.signal)
        line += format(" reading %.3f", level.signal->value());
    if (level.signal2)
        line += format(" and %.3f", level.signal2->value());
    if (level.usable)
        line += format(" %.1f ± %.1f L usable", level.usable->mean.litres(), level.usable->sd.litres());
    if (level.added)
        line += format(" %.1f ± %.1f L since drained", level.added->mean.litres(), level.added->sd.litres());
    if (level.odometer)
        line += ", " + fixed(level.odometer->km(), 0) + " km";
    if (level.tank)
        line += ", in " + *level.tank;
    if (level.origin == LevelOrigin::followed)
        line += ", followed live";
    return level.note ? line + ", " + *level.note : line;
}

void addLevelCommand(CLI::App& app, CliContext& context)
{
    CLI::App& level = addGroup(app, "level", "what was in a tank at a time: add, list, correct, remove");
    addCommand<LevelOptions>(level, context, "add", "keep a level, from which answers count on", addLevelOptions,
                             runLevelAdd);
    CLI::App& list = addSubcommand(level, "list", "the levels kept");
    addJson(list, context);
    onRun(list, context, [&context] { return runLevelList(context); });
    addCommand<CorrectedLevel>(
        level, context, "correct", "change what was kept of one",
        [](CLI::App& correct, CorrectedLevel& o) {
            required(addText(correct, "id", o.id, "its id, or the beginning of it", "ID"));
            addLevelOptions(correct, o);
        },
        runLevelCorrect);
    addCommand<std::string>(level, context, "remove", "take one back",
                            [](CLI::App& remove, std::string& id) {
                                required(addText(remove, "id", id, "its id, or the beginning of it", "ID"));
                            },
                            runLevelRemove);
}

} // namespace undermark
