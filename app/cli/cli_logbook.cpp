// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_logbook.h"

#include "app/cli/cli_record.h"
#include "app/cli/terminal_words.h"
#include "engine/base/instant_text.h"
#include "engine/tables/date_text.h"

#include <algorithm>

namespace undermark {

Result<Car> namedCar(const CliContext& context, OpenMode mode)
{
    auto car = Car::open(context.logbook, mode);
    if (!car)
        return car;
    if (const auto newer = car->newerSchema(); newer && *newer)
        warn("a newer Undermark wrote this logbook (schema " + std::to_string(**newer)
             + "): this one can read it, but not write");
    const auto vehicles = car->cars();
    if (!vehicles)
        return fail(vehicles.error());
    std::string names;
    for (const auto& entry : *vehicles)
        names += (names.empty() ? "" : ", ") + entry.value.name;
    if (vehicles->empty())
        return fail(ErrorCode::notFound,
                    Sentence::just("the logbook has no vehicle yet: vehicle add makes one"));
    if (context.vehicle.empty() && vehicles->size() == 1)
        return car;
    if (context.vehicle.empty())
        return wrongUse("the logbook has several vehicles", "--vehicle with one of " + names);
    const auto found = std::find_if(vehicles->begin(), vehicles->end(), [&](const auto& entry) {
        return entry.value.name == context.vehicle;
    });
    if (found == vehicles->end())
        return fail(ErrorCode::notFound, Sentence::just("there is no vehicle of this name"), {},
                    Sentence::just(names), context.vehicle);
    if (const auto shown = car->showCar(found->id.uuid); !shown)
        return fail(shown.error());
    return car;
}

Result<VehicleLog> readLog(const CliContext& context)
{
    const auto car = namedCar(context, OpenMode::readOnly);
    return car ? car->log() : fail(car.error());
}

Result<CarKnowledge> learnVehicle(const CliContext& context, const CorrectionOptions& corrections)
{
    const auto car = namedCar(context, OpenMode::readOnly);
    return car ? car->learnWith(corrections) : fail(car.error());
}

Instant now() { return systemTime(); }

Result<Instant> instantOr(const std::string& date, Instant otherwise)
{
    if (date.empty())
        return otherwise;
    Result<Instant> time = parseInstant(date);
    if (!time) {
        Error error = time.error();
        error.where.column = "--date";
        return fail(error);
    }
    return time;
}

Result<void> askFor(const std::string& date, Question& question)
{
    if (date.empty())
        return {};
    const Result<Instant> day = instantOr(date, now());
    if (!day)
        return fail(day.error());
    question.now.begin = *day;
    return {};
}

std::string dateText(Instant time)
{
    std::string text = instantText(time);
    text[text.find('T')] = ' ';
    return text.substr(0, text.rfind(':'));
}

Json dateJson(Instant time) { return instantText(time) + "Z"; }

std::vector<FlagLine> flagsOfFill(const CarKnowledge& car, std::size_t fill)
{
    std::vector<FlagLine> flags;
    for (const FillFlag& flag : car.consumption.flags)
        if (flag.fill == fill)
            flags.push_back({causeName(flag.cause), said(flag.text), flag});
    return flags;
}

std::vector<FlagLine> flagsOfProof(const CarKnowledge& car, std::size_t proof)
{
    std::vector<FlagLine> flags;
    for (const ProofFlag& flag : car.proofFlags)
        if (flag.proof == proof)
            flags.push_back({"proof", said(flag.text), std::nullopt});
    return flags;
}

namespace {

Json flagsJson(const std::vector<FlagLine>& flags)
{
    Json json = Json::array();
    for (const FlagLine& flag : flags) {
        Json line{{"cause", flag.cause}, {"text", flag.text}};
        if (flag.fill) {
            line["probability"] = flag.fill->probability;
            line["proposed"] = proposalJson(*flag.fill);
        }
        json.push_back(std::move(line));
    }
    return json;
}

template <class T>
Json entryJson(const Entry<T>& entry, const std::vector<FlagLine>& flags)
{
    Json json{{"id", entry.id.uuid}};
    json.update(recordJson(entry.value));
    json["flags"] = flagsJson(flags);
    return json;
}

// A number in the unit that `unit` takes out of a quantity, or null.
template <class Q, class Unit>
Json orNull(const std::optional<Q>& quantity, Unit unit)
{
    return quantity ? Json(std::invoke(unit, *quantity)) : Json();
}

} // namespace

Json proposalJson(const FillFlag& flag)
{
    return {{"litres", orNull(flag.volume, &Volume::litres)},
            {"missing_l", orNull(flag.missing, &Volume::litres)},
            {"odometer_km", orNull(flag.odometer, &Distance::km)},
            {"trip_meter_km", orNull(flag.distance, &Distance::km)}};
}

std::string shortId(const EntryId& id) { return id.uuid.substr(0, 8); }

Json fillJson(const CarKnowledge& car, std::size_t index)
{
    return entryJson(car.log.fills[index], flagsOfFill(car, index));
}

Json tripJson(const CarKnowledge& car, std::size_t index)
{
    return entryJson(car.log.trips[index], {});
}

Json proofJson(const CarKnowledge& car, std::size_t index)
{
    return entryJson(car.log.proofs[index], flagsOfProof(car, index));
}

Json levelJson(const Entry<LevelRecord>& level) { return entryJson(level, {}); }

Json estimateJson(double mean, double sd) { return {{"mean", mean}, {"sd", sd}}; }

Json distancesJson(const Distances& distances)
{
    return {{"p99", distances.p99.km()},
            {"p90", distances.p90.km()},
            {"p50", distances.p50.km()},
            {"p10", distances.p10.km()}};
}

} // namespace undermark
