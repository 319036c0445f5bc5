// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli fill add, trip add, proof add: entries of the log. Impossible
// input is refused before anything is written; implausible input is stored and
// flagged with its likely cause.
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_pumps.h"
#include "app/cli/cli_record.h"
#include "app/cli/cli_tank.h"
#include "engine/roads/climb.h"
#include "engine/tables/route_file.h"
#include "engine/tank/reserve_prior.h"

#include <algorithm>
#include <iostream>

namespace undermark {

namespace {

// What every entry can be asked for.
struct Common {
    std::string date;
};

void addCommon(CLI::App& command, Common& common)
{
    addText(command, "--date", common.date, "2026-05-31 or 2026-05-31T14:05, UTC; default now");
}

std::optional<Volume> litres(const std::optional<double>& v)
{
    return v ? std::optional(Volume::fromLitres(*v)) : std::nullopt;
}

std::optional<Distance> km(const std::optional<double>& v)
{
    return v ? std::optional(Distance::fromKm(*v)) : std::nullopt;
}

void warnAbout(const std::vector<FlagLine>& flags)
{
    for (const FlagLine& flag : flags)
        warn(flag.cause + ": " + flag.text);
}

// An entry just stored.
struct Stored {
    EntryId id;
    Knowledge known; // since
};

template <class T>
Result<Stored> store(const T& value, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    if (!car)
        return fail(car.error());
    const auto id = car->record(value);
    if (!id)
        return fail(id.error());
    const auto known = car->knowledge();
    return known ? Result<Stored>({*id, *known}) : fail(known.error());
}

template <class T>
std::size_t indexOf(const std::vector<Entry<T>>& entries, const EntryId& id)
{
    const auto found = std::find_if(entries.begin(), entries.end(),
                                    [&](const auto& entry) { return entry.id == id; });
    return static_cast<std::size_t>(found - entries.begin());
}

struct FillOptions : Common {
    RecordOptions<Fill> columns;
    bool full = false, partial = false, neck = false;
};

Result<Fill> fillFrom(const FillOptions& o)
{
    if (int(o.full) + int(o.partial) + int(o.neck) != 1)
        return wrongUse("say how far the tank was filled", "one of --full, --partial, --neck");
    Fill fill = o.columns.record();
    // A further tank is filled at the halt of the vehicle's own, which says it.
    if (!fill.odometer && !fill.sinceLast && !fill.tank)
        return wrongUse("say how far the car had driven", "--odometer-km or --trip-meter-km");
    const auto time = instantOr(o.date, now());
    if (!time)
        return fail(time.error());
    fill.time = *time;
    fill.extent = o.full ? FillExtent::full : o.neck ? FillExtent::neck : FillExtent::partial;
    return fill;
}

Result<void> runFill(const FillOptions& options, const CliContext& context)
{
    const Result<Fill> fill = fillFrom(options);
    if (!fill)
        return fail(fill.error());
    const auto stored = store(*fill, context);
    if (!stored)
        return fail(stored.error());
    const CarKnowledge& car = *stored->known;
    const std::size_t index = indexOf(car.log.fills, stored->id);
    warnAbout(flagsOfFill(car, index));
    if (context.json) {
        print(fillJson(car, index));
        return {};
    }
    const RateForecast rate = car.consumption.model.forecast();
    std::cout << "Logged " << fixed(fill->volume.litres(), 2) << " L.\n"
              << format("The usual mix now burns %.2f ± %.2f L/100 km (estimate).\n",
                        rate.rate.mean.litresPer100Km(), rate.rate.sd.litresPer100Km());
    return {};
}

struct TripOptions : Common {
    RecordOptions<Trip> columns;
    std::filesystem::path track, heights;
};

// Its length and its climb, where neither is told.
Result<void> addTrack(const TripOptions& o, Trip& trip)
{
    const Result<RouteFile> track = readRouteAndWarn(o.track, {});
    if (!track)
        return fail(track.error());
    if (track->line.size() < 2)
        return failInput(Sentence::of("a drive's track is needed, and a table has no places"), Sentence::of("a GPX file"));
    const Result<HeightProfile> heights = heightsAlong(track->line, o.heights);
    if (!heights)
        return fail(heights.error());
    if (trip.distance == Distance())
        trip.distance = track->route.points.back().at;
    if (heights->empty())
        warn("no heights are known along the track");
    else if (!trip.climb)
        trip.climb = netClimb(*heights);
    return {};
}

Result<void> runTrip(const TripOptions& o, const CliContext& context)
{
    const auto time = instantOr(o.date, now());
    if (!time)
        return fail(time.error());
    Trip trip = o.columns.record();
    trip.time = *time;
    if (o.track.empty() && !o.heights.empty())
        return wrongUse("heights are read along a track", "--track FILE.gpx");
    if (!o.track.empty())
        if (const auto added = addTrack(o, trip); !added)
            return fail(added.error());
    if (trip.distance == Distance() && !trip.idle)
        return wrongUse("say how far was driven", "--km or --track");
    const auto stored = store(trip, context);
    if (!stored)
        return fail(stored.error());
    if (context.json)
        print(tripJson(*stored->known, indexOf(stored->known->log.trips, stored->id)));
    else
        std::cout << "Logged " << fixed(trip.distance.km()) << " km of " << trip.mode << ".\n";
    return {};
}

struct ProofOptions : Common {
    std::optional<double> litres, litresSd, leftBehind, leftBehindSd, signal, distance, distanceSd;
    std::string mode, tank;
};

Result<void> runProof(ProofKind kind, const ProofOptions& o, const CliContext& context)
{
    const auto time = instantOr(o.date, now());
    if (!time)
        return fail(time.error());
    Proof proof;
    proof.time = *time;
    proof.kind = kind;
    if (o.litres)
        proof.volume = Estimate<Volume>{*litres(o.litres), litres(o.litresSd).value_or(kJugSd)};
    if (o.leftBehind)
        proof.leftBehind = Estimate<Volume>{*litres(o.leftBehind), litres(o.leftBehindSd).value_or(kJugSd)};
    if (o.signal)
        proof.signal = Signal::of(*o.signal);
    if (o.distance)
        proof.distance = Estimate<Distance>{*km(o.distance), km(o.distanceSd).value_or(kTripMeterSd)};
    if (!o.mode.empty())
        proof.mode = o.mode;
    proof.tank = tankName(o.tank);
    if (kind == ProofKind::drained && !proof.volume && !proof.leftBehind)
        return wrongUse("say what was measured", "--litres drained, or --left-behind-l, or both");
    const auto stored = store(proof, context);
    if (!stored)
        return fail(stored.error());
    const CarKnowledge& car = *stored->known;
    const std::size_t index = indexOf(car.log.proofs, stored->id);
    warnAbout(flagsOfProof(car, index));
    const Estimate<Volume> reserve = car.hiddenReserve();
    if (context.json)
        print(proofJson(car, index));
    else
        std::cout << format("Noted. The hidden reserve is now %.2f ± %.2f L (estimate).\n",
                            reserve.mean.litres(), reserve.sd.litres());
    return {};
}

void addDrainedOrBase(CLI::App& command, ProofOptions& o, ProofKind kind)
{
    CLI::Option& amount = addNumber(command, "--litres", o.litres, kNotNegative, "litres measured");
    addNumber(command, "--litres-sd", o.litresSd, kNotNegative, "their uncertainty, default 0.2");
    if (kind == ProofKind::base) {
        required(amount);
    } else {
        addNumber(command, "--left-behind-l", o.leftBehind, kNotNegative,
                  "litres found behind with the tank open");
        addNumber(command, "--left-behind-sd-l", o.leftBehindSd, kNotNegative,
                  "their uncertainty, default 0.2");
        addNumber(command, "--signal", o.signal, kAnyNumber,
                  "the reading it was drained from, default the zero mark");
    }
}

void addDriven(CLI::App& command, ProofOptions& o)
{
    required(addNumber(command, "--km", o.distance, kNotNegative, "km past the zero mark"));
    addNumber(command, "--km-sd", o.distanceSd, kNotNegative, "their uncertainty, default 0.5");
    addText(command, "--mode", o.mode, "kind of driving; default the usual mix");
}

void addProof(CLI::App& proof, CliContext& context, ProofKind kind, const char* help)
{
    addCommand<ProofOptions>(
        proof, context, wordOf(kind), help,
        [kind](CLI::App& command, ProofOptions& o) {
            if (kind == ProofKind::drained || kind == ProofKind::base)
                addDrainedOrBase(command, o, kind);
            else
                addDriven(command, o);
            addTankOption(command, o.tank, "the tank that it is of");
            addCommon(command, o);
        },
        [kind](const ProofOptions& o, const CliContext& asked) { return runProof(kind, o, asked); });
}

void addFillOptions(CLI::App& command, FillOptions& o)
{
    o.columns.addTo(command);
    addFlag(command, "--full", o.full, "to the first click");
    addFlag(command, "--partial", o.partial, "short of full");
    addFlag(command, "--neck", o.neck, "past the click, to the neck");
    addCommon(command, o);
}

void addTripOptions(CLI::App& command, TripOptions& o)
{
    o.columns.addTo(command);
    notRequired(command, "--km", "km driven; not said: those of --track");
    addPath(command, "--track", o.track, "GPX track of that drive: its km, and the climb that its heights tell", "FILE.gpx");
    addPath(command, "--heights", o.heights, "they come from this folder of SRTM tiles, not from the track itself", "FOLDER");
    addCommon(command, o);
}

} // namespace

void addFillCommand(CLI::App& app, CliContext& context)
{
    CLI::App& fill = addGroup(app, "fill", "fuel put in: add, rule");
    addFillRule(fill, context);
    addCommand<FillOptions>(fill, context, "add", "log a fill", addFillOptions, runFill);
}

void addTripCommand(CLI::App& app, CliContext& context)
{
    CLI::App& trip = addGroup(app, "trip", "distance driven in one mode: add");
    addCommand<TripOptions>(trip, context, "add", "log a trip", addTripOptions, runTrip);
}

void addProofCommand(CLI::App& app, CliContext& context)
{
    CLI::App& proof = addGroup(app, "proof", "evidence about the hidden reserve: add");
    CLI::App& add = addGroup(proof, "add", "log a proof");
    addFooter(add,
              "Never test the reserve on a public road. Draining and pouring: engine cold and off, "
              "no ignition source, ventilated, earthed, approved containers on the ground, "
              "extinguisher in reach; by a qualified person, under local and event rules.");
    addProof(add, context, ProofKind::drained, "the tank was drained and measured");
    addProof(add, context, ProofKind::base, "a base was poured anew and zero read there");
    addProof(add, context, ProofKind::stalled,
             "the engine starved past the zero mark (it happened)");
    addProof(add, context, ProofKind::pastZero,
             "driven past the zero mark and still running (it happened)");
}

} // namespace undermark
