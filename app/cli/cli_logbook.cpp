// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_logbook.h"

#include "app/cli/terminal_words.h"
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

std::string dateText(Instant time)
{
    const auto day = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date(day);
    const std::chrono::hh_mm_ss clock(time - day);
    return format("%04d-%02u-%02u %02ld:%02ld", int(date.year()), unsigned(date.month()),
                  unsigned(date.day()), long(clock.hours().count()), long(clock.minutes().count()));
}

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

Json rulingJson(const Fill& fill)
{
    return fill.counted ? Json(*fill.counted ? "counts" : "left out") : Json();
}

std::string shortId(const EntryId& id) { return id.uuid.substr(0, 8); }

Json fillJson(const CarKnowledge& car, std::size_t index)
{
    const Entry<Fill>& entry = car.log.fills[index];
    const Fill& fill = entry.value;
    return {{"id", entry.id.uuid},
            {"date", dateText(fill.time)},
            {"litres", fill.volume.litres()},
            {"extent", wordOf(fill.extent)},
            {"odometer_km", orNull(fill.odometer, &Distance::km)},
            {"trip_meter_km", orNull(fill.sinceLast, &Distance::km)},
            {"odometer_reset", fill.odometerReset},
            {"price_per_l", fill.pricePerLitre ? Json(*fill.pricePerLitre) : Json()},
            {"signal", orNull(fill.signalBefore, &Signal::value)},
            {"blend", fill.blend ? Json(*fill.blend) : Json()},
            {"temperature_c", orNull(fill.temperature, &Temperature::celsius)},
            {"displayed_l_per_100km", orNull(fill.displayed, &Consumption::litresPer100Km)},
            {"ruling", rulingJson(fill)},
            {"flags", flagsJson(flagsOfFill(car, index))}};
}

Json tripJson(const CarKnowledge& car, std::size_t index)
{
    const Entry<Trip>& entry = car.log.trips[index];
    const Trip& trip = entry.value;
    return {{"id", entry.id.uuid},
            {"date", dateText(trip.time)},
            {"km", trip.distance.km()},
            {"mode", trip.mode},
            {"idle_min", trip.idle ? Json(trip.idle->count()) : Json()},
            {"starts", trip.starts ? Json(*trip.starts) : Json()},
            {"flags", Json::array()}};
}

Json proofJson(const CarKnowledge& car, std::size_t index)
{
    const Entry<Proof>& entry = car.log.proofs[index];
    const Proof& proof = entry.value;
    const auto pair = [](const auto& estimate, auto unit) {
        return estimate ? estimateJson(std::invoke(unit, estimate->mean), std::invoke(unit, estimate->sd))
                        : Json();
    };
    return {{"id", entry.id.uuid},
            {"date", dateText(proof.time)},
            {"kind", wordOf(proof.kind)},
            {"litres", pair(proof.volume, &Volume::litres)},
            {"left_behind_l", pair(proof.leftBehind, &Volume::litres)},
            {"signal", orNull(proof.signal, &Signal::value)},
            {"km", pair(proof.distance, &Distance::km)},
            {"mode", proof.mode ? Json(*proof.mode) : Json()},
            {"flags", flagsJson(flagsOfProof(car, index))}};
}

Json estimateJson(double mean, double sd) { return {{"mean", mean}, {"sd", sd}}; }

Json distancesJson(const Distances& distances)
{
    return {{"p99", distances.p99.km()},
            {"p90", distances.p90.km()},
            {"p50", distances.p50.km()},
            {"p10", distances.p10.km()}};
}

} // namespace undermark
