// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_plan.h"

#include "app/cli/cli_logbook.h"
#include "engine/roads/climb.h"
#include "engine/tables/csv_reader.h"
#include "engine/tables/route_csv.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace undermark {

namespace {

const NumberRange kConfidence{0.5, 0.9999999, Sentence::just("a probability from 0.5 to below 1")};
const NumberRange kWait{0, 24 * 60, Sentence::just("minutes from 0 to a day's 1440")};
const NumberRange kEfficiency{1, 99, Sentence::just("per cent from 1 to 99")};
const NumberRange kRate{1e-9, 1e6, Sentence::just("L/100 km above 0, a million at most")};

void addTankFlags(CLI::App& command, PlanOptions& options)
{
    addNumber(command, "--capacity-l", options.capacity, kPositive, "usable litres when full");
    addNumber(command, "--start-l", options.start, kNotNegative, "usable litres at the start");
    addNumber(command, "--signal", options.signal, kAnyNumber, "the sender's reading at the start");
    addNumber(command, "--signal2", options.signal2, kAnyNumber,
              "and the second lobe's, of a saddle tank with two senders");
    addTankReadings(command, options.tanks);
    addNumber(command, "--odometer-km", options.odometerKm, kNotNegative,
              "the odometer at the start");
    addNumber(command, "--zero-at-l", options.zeroAt, kNotNegative,
              "usable litres at the gauge's zero mark, for the card's picture");
    addNumber(command, "--start-sd-l", options.startSd, kNotNegative,
              "standard deviation of that (the logbook's car: as after a full fill)");
    addNumber(command, "--floor-l", options.floor, kNotNegative, "never arrive with less");
    addNumber(command, "--end-l", options.end, kNotNegative, "litres wanted at the finish");
    addNumber(
        command, "--full-sd-l", options.fullSd, kNotNegative,
        "standard deviation of the level after a full fill (0.5 where anything is uncertain)");
    addNumber(command, "--rate", options.rate, kRate, "consumption, L/100 km, for every mode");
    addNumber(command, "--rate-sd", options.rateSd, kNotNegative,
              "its standard deviation, L/100 km, common to the trip");
    addNumber(command, "--leg-sd-per-sqrt-km", options.legSd, kNotNegative,
              "each leg's own noise, L per square root of km");
    addBurnsMore(command, options.burnsMore);
    addNumber(command, "--idle-l-per-h", options.idleRate, kNotNegative, "idling, for idle_min");
    addCount(command, "--cans", options.cans, kNotNegative, "full own cans on board");
    addCount(command, "--crew-cans", options.crewCans, kNotNegative,
             "full cans that the crew brings to the points with fuel 'crew', open while it waits there");
    addNumber(command, "--load-l-per-100km", options.load, kNotNegative,
              "what spares, tools and cans on board add to every mode's consumption, as you state it");
    addText(command, "--second-car", options.secondCar,
            "another vehicle of the logbook on the same way, planned with the crew's cans that the first one leaves", "NAME");
    addNumber(command, "--can-l", options.canLitres, kPositive, "litres in each");
}

void addRouteFlags(CLI::App& command, PlanOptions& options)
{
    required(addPath(command, "route", options.route, "route: CSV or GPX"));
    addText(command, "--fuel-waypoints", options.fuelWaypoints,
            "GPX: waypoints whose name holds this text are pumps");
    addText(command, "--track", options.track,
            "GPX with several tracks or routes: name or number of the one that is driven");
    addPath(command, "--pumps", options.pumps.extract,
            "GPX: the pumps along it come from this OpenStreetMap extract", "REGION.osm.pbf");
    addPumpFlags(command, options.pumps);
    addPath(command, "--heights", options.heights,
            "GPX: heights come from this folder of SRTM tiles (N47E009.hgt), not from the track itself", "FOLDER");
    addFlag(command, "--no-heights", options.noHeights,
            "leave out the heights that a track tells (with a stated --rate they are left out unless --heights is given)");
    addNumber(command, "--mass-kg", options.massKg, kPositive, "what climbs, with its load and who sits in it; not said: what the car's trips taught, or its sheet, or its tank suggests (with --rate 1500)");
    addNumber(command, "--mass-sd-kg", options.massSdKg, kNotNegative, "its standard deviation (200)");
    addNumber(command, "--efficiency", options.efficiency, kEfficiency,
              "of the fuel's energy at the wheels, per cent (25)");
    addNumber(command, "--efficiency-sd", options.efficiencySd, kNotNegative, "its standard deviation, per cent (4)");
    addNumber(command, "--from-km", options.fromKm, kNotNegative, "plan on from here");
    addTwoNumbers(command, "--odometer-check", options.check, kPositive,
                  "check section: official km and km shown; the route, and what is printed, is read "
                  "off the car's meter",
                  "KM KM");
}

void addWhatIfFlags(CLI::App& command, PlanOptions& options)
{
    addTexts(command, "--close", options.close, "what if this fuel point were closed", "NAME");
    addTexts(command, "--repeat", options.repeat,
             "what if the section from here were driven twice", "NAME");
    addNumber(command, "--rate-up", options.rateUp, kNotNegative,
              "what if it burnt so many per cent more");
    addFlag(command, "--any-one-closed", options.anyOneClosed,
            "the plan that survives the closure of any one of its stops, found out on arrival");
    addNumber(command, "--fill-less", options.fillLess, kPositive,
              "what if each fill ended so many litres earlier");
}

void addWishFlags(CLI::App& command, PlanOptions& options)
{
    addChoice(command, "--aim", options.aim, {"cost", "stops", "time", "weight"},
              "cost, stops, time or weight (cost where prices are known)");
    addNumber(command, "--confidence", options.confidence, kConfidence, "of each arrival (0.99)");
    addNumber(command, "--stage-confidence", options.stageConfidence, kConfidence,
              "of each arrival at the end of a timed section (a tenth of the risk of --confidence with the "
              "logbook's car, else as --confidence)");
    addNumber(command, "--trip-confidence", options.tripConfidence, kConfidence,
              "of the whole way");
    addNumber(command, "--stop-cost", options.stopCost, kNotNegative,
              "what each stop counts as (a litre's price with the logbook's car, else 0)");
    addNumber(command, "--least-stop-l", options.leastStop, kNotNegative,
              "no stop for less unless it must be (2 with the logbook's car, else 0)");
    addNumber(command, "--pump-l-per-min", options.pumpFlow, kPositive, "delivery of a pump (40)");
    addNumber(command, "--speed-kmh", options.speedKmh, kPositive, "for opening hours and detours");
    addTexts(command, "--mode-speed", options.modeSpeeds,
             "another speed in this mode, km/h; may be repeated", "MODE=SPEED");
    addText(command, "--date", options.date, kDateHelp);
    addNumber(command, "--most-wait-min", options.mostWaitMin, kWait,
              "wait so long at most for a place to open (60)");
    addText(command, "--depart", options.departure, "HH:MM, for opening hours, and on the day of --date for places with dates", "HH:MM");
    addNumber(command, "--kg-per-l", options.kgPerLitre, kPositive, "fuel density: also print kg");
    addNumber(command, "--autonomy-km", options.autonomyKm, kPositive,
              "the event demands this autonomy");
    addNumber(command, "--autonomy-safety", options.autonomySafety, kNotNegative,
              "per cent on top of it");
    addFlag(command, "--zones-only", options.zonesOnly, "fuel from refuel zones only");
    addFlag(command, "--no-cans", options.noCans, "own cans are forbidden");
    addFlag(command, "--zone-limits", options.zoneLimit, "every zone must state max_litres");
}

Result<double> needed(const char* flag, const std::optional<double>& value)
{
    if (value)
        return *value;
    return wrongUse(std::string(flag) + " is missing");
}

// Tank and rates from the logbook, for flags that were not given. The level is asked as
// `range` asks it.
Result<TankAndRate> tankFromLogbook(const PlanOptions& options, const CliContext& context)
{
    const Result<CarKnowledge> car = learnVehicle(context);
    if (!car)
        return fail(car.error());
    Question question;
    if (options.signal)
        question.signal = Signal::of(*options.signal);
    if (options.signal2)
        question.signal2 = Signal::of(*options.signal2);
    if (options.odometerKm)
        question.odometer = Distance::fromKm(*options.odometerKm);
    if (const auto told = ask(options.tanks, *car, question); !told)
        return fail(told.error());
    question.now.burnsMore = byWord(options.burnsMore);
    if (options.start)
        question.usable = {Volume::fromLitres(*options.start),
                           options.startSd ? Volume::fromLitres(*options.startSd) : fullFillSd(*car)};
    if (const auto asked = askFor(options.date, question); !asked)
        return fail(asked.error());
    Result<TankAndRate> both = tankFromCar(*car, question);
    if (both)
        for (const Sentence& warning : both->warnings)
            warn(warning);
    return both;
}

Result<void> checkLevelFlags(const PlanOptions& options)
{
    const bool asksCar = options.signal || options.odometerKm;
    if (int(options.signal.has_value()) + int(options.start.has_value()) +
            int(options.odometerKm.has_value()) > 1)
        return wrongUse("the level can be told in one way only",
                        "one of --signal, --start-l, --odometer-km");
    if (options.signal2 && !options.signal)
        return wrongUse("--signal2 goes with --signal and a saddle tank's calibration");
    if (const auto sound = checkBurnsMore(options.burnsMore); !sound)
        return sound;
    if (options.burnsMore.percent && options.rate)
        return wrongUse("--burns-more is against the log's rate", "no --rate");
    if (asksCar && (options.capacity || options.rate))
        return wrongUse("a reading and the odometer ask the car that the logbook knows",
                        "no --capacity-l and --rate");
    return {};
}

// From flags alone, where the tank and the rate are given there.
Result<TankAndRate> tankFromFlags(const PlanOptions& options, const CliContext& context)
{
    if (const auto sound = checkLevelFlags(options); !sound)
        return fail(sound.error());
    // A level alone is a new level for the car that the logbook knows.
    if (!options.capacity && !options.rate)
        return tankFromLogbook(options, context);
    for (const auto& [flag, value] :
         {std::pair("--capacity-l", options.capacity), std::pair("--start-l", options.start),
          std::pair("--rate", options.rate)}) {
        if (const auto given = needed(flag, value); !given)
            return fail(given.error());
    }
    TankAndRate both;
    both.tank.capacity = Volume::fromLitres(*options.capacity);
    both.tank.start = {Volume::fromLitres(*options.start),
                       Volume::fromLitres(options.startSd.value_or(0))};
    both.rates = RateModel::single({Consumption::fromLitresPer100Km(*options.rate),
                                    Consumption::fromLitresPer100Km(options.rateSd.value_or(0.0))});
    const bool uncertain = options.startSd.value_or(0) > 0 || options.rateSd.value_or(0) > 0 ||
                           options.legSd.value_or(0) > 0;
    both.tank.fullSd = uncertain ? kUsualClickSd : Volume();
    return both;
}

// The flags' numbers instead of the usual ones; of a car of the logbook only where a flag is given.
Result<void> setClimb(const PlanOptions& options, const TankAndRate& both, RateModel& rates)
{
    if (both.ofCar && !options.massKg && !options.massSdKg && !options.efficiency && !options.efficiencySd)
        return {};
    ClimbingCar car;
    car.fuel = both.fuel;
    car.massKg = options.massKg.value_or(car.massKg);
    car.massSdKg = options.massSdKg.value_or(car.massSdKg);
    if (options.efficiency)
        car.efficiency = *options.efficiency / 100;
    if (options.efficiencySd)
        car.efficiencySd = *options.efficiencySd / 100;
    const auto climb = litresPerHeight(car);
    if (!climb)
        return fail(climb.error());
    rates.climb = *climb;
    return {};
}

Result<void> applyTankFlags(const PlanOptions& options, TankAndRate& both)
{
    const auto set = [](Volume& target, const std::optional<double>& litres) {
        if (litres)
            target = Volume::fromLitres(*litres);
    };
    if (options.startSd && !options.start) { // of the level as the logbook has it now
        both.tank.start.sd = Volume::fromLitres(*options.startSd);
        both.tank.driven.clear();
    }
    set(both.tank.floor, options.floor);
    set(both.tank.end, options.end);
    set(both.tank.fullSd, options.fullSd);
    if (options.zeroAt)
        both.tank.zeroMark = Volume::fromLitres(*options.zeroAt);
    if (options.legSd)
        both.rates.legNoiseSd = *options.legSd;
    if (options.idleRate)
        both.rates.idling = FlowRate::fromLitresPerHour(*options.idleRate);
    return setClimb(options, both, both.rates);
}

std::optional<Aim> aimOf(const std::string& word)
{
    for (const auto& [name, aim] :
         {std::pair("cost", Aim::cost), std::pair("stops", Aim::stops),
          std::pair("time", Aim::time), std::pair("weight", Aim::weight)}) {
        if (word == name)
            return aim;
    }
    return std::nullopt;
}

Result<void> addTimes(const PlanOptions& options, PlanRequest& request)
{
    if (options.pumpFlow)
        request.pumpFlow = FlowRate::fromLitresPerHour(*options.pumpFlow * 60);
    if (!options.pumps.extract.empty() && !options.departure.empty())
        request.speed = Speed::fromKmPerHour(kUsualSpeedKmh);
    if (options.speedKmh)
        request.speed = Speed::fromKmPerHour(*options.speedKmh);
    for (const std::string& pair : options.modeSpeeds) {
        const auto halves = halvesOf(pair);
        const Result<double> speed = parseNumber(halves ? halves->second : std::string(), kPositive);
        if (!speed)
            return wrongUse("--mode-speed takes MODE=SPEED", "special-stage=90", pair);
        request.modeSpeeds.push_back({halves->first, Speed::fromKmPerHour(*speed)});
    }
    if (options.mostWaitMin)
        request.mostWait = Minutes(*options.mostWaitMin);
    if (options.departure.empty())
        return {};
    const Result<Minutes> clock = parseClock(options.departure);
    if (!clock)
        return fail(clock.error());
    request.departure = *clock;
    const Result<Instant> day = instantOr(options.date, now());
    if (!day)
        return fail(day.error());
    request.departureDay = std::chrono::floor<std::chrono::days>(*day);
    return {};
}

bool asksLogbook(const PlanOptions& options)
{
    return !options.capacity && !options.rate;
}

// With the pumps of the map. Of the logbook's car its fuel is asked for, unless one is named.
Result<RouteFile> withPumpsOfMap(const PlanOptions& options, RouteFile file, const CliContext& context)
{
    PumpFlags flags = options.pumps;
    if (asksLogbook(options)) {
        const Result<VehicleLog> log = readLog(context);
        if (!log)
            return fail(log.error());
        flags.own = valuesOf(log->pumps);
        if (flags.fuel.empty())
            flags.fuel = wordOf(log->vehicle.value.fuel);
    }
    PlanRequest way;
    way.route = file.route;
    if (const auto timed = addTimes(options, way); !timed)
        return fail(timed.error());
    const auto clock = clockOf(std::move(way), options.date, Distance::fromKm(options.fromKm.value_or(0)));
    if (!clock)
        return fail(clock.error());
    const auto found = pumpsAlong(flags, file);
    if (!found)
        return fail(found.error());
    RouteWithPumps with = withPumps(std::move(file), found->pumps, *clock);
    warn(found->notes);
    warn(with.notes);
    return std::move(with.file);
}

// What the sections climb: by the grid that is named, else by the track, unless the consumption is
// stated, which then is that of the way as it is.
Result<void> addHeights(const PlanOptions& options, RouteFile& file)
{
    if (options.noHeights && !options.heights.empty())
        return wrongUse("heights are either left out or read", "one of --heights, --no-heights");
    if (options.noHeights || (options.heights.empty() && !asksLogbook(options))) {
        for (RoutePoint& point : file.route.points)
            point.climb = {};
        return {};
    }
    if (!options.heights.empty() && file.line.size() < 2)
        return failInput(Sentence::of("heights are read along a track, and a table has no places"),
                         Sentence::of("a GPX file"));
    const Result<HeightProfile> profile = heightsAlong(file.line, options.heights);
    if (!profile)
        return fail(profile.error());
    if (profile->empty() && !options.heights.empty())
        warn("the grid knows no heights along the track");
    if (!profile->empty()) // else what the rows say stays
        addClimbs(file.route, *profile);
    return {};
}

Result<Route> readRoute(const PlanOptions& options, const CliContext& context)
{
    GpxOptions gpxOptions;
    gpxOptions.fuelWaypoints = options.fuelWaypoints;
    gpxOptions.which = options.track;
    Result<RouteFile> file = readRouteAndWarn(options.route, gpxOptions);
    if (file && !options.pumps.extract.empty())
        file = withPumpsOfMap(options, std::move(*file), context);
    if (!file)
        return fail(file.error());
    if (const auto added = addHeights(options, *file); !added)
        return fail(added.error());
    Route route = std::move(file->route);
    return options.fromKm ? routeFrom(route, Distance::fromKm(*options.fromKm)) : route;
}

// The route's km are the car's meter's, and so are those that the logbook learnt its rates by.
// What the flags state is per km of road, and the event's autonomy is official.
void countInMetersKm(const PlanOptions& options, PlanRequest& request)
{
    const double factor = officialPerShown(options);
    if (options.rate)
        request.rates = withRatesTimes(std::move(request.rates), factor);
    if (options.legSd)
        request.rates.legNoiseSd *= std::sqrt(factor);
    if (request.speed)
        request.speed = Speed::fromKmPerHour(request.speed->kmPerHour() / factor);
    for (ModeSpeed& own : request.modeSpeeds)
        own.speed = Speed::fromKmPerHour(own.speed.kmPerHour() / factor);
    if (request.rules.autonomy)
        request.rules.autonomy = *request.rules.autonomy * (1 / factor);
}

} // namespace

void addPlanFlags(CLI::App& command, PlanOptions& options)
{
    addRouteFlags(command, options);
    addTankFlags(command, options);
    addWishFlags(command, options);
    addWhatIfFlags(command, options);
    addColumns(command, "ROUTE.csv", kRouteColumns, "one of at_km and leg_km");
}

namespace {

std::vector<WhatIfQuestion> whatIfsAsked(const PlanOptions& options)
{
    std::vector<WhatIfQuestion> asked;
    for (const std::string& name : options.close)
        asked.emplace_back([&name](const PlanRequest& of) { return whatIfClosed(of, name); });
    for (const std::string& name : options.repeat)
        asked.emplace_back([&name](const PlanRequest& of) { return whatIfRepeated(of, name); });
    if (options.rateUp)
        asked.emplace_back([by = Fraction::fromPercent(*options.rateUp)](const PlanRequest& of) {
            return whatIfRateUp(of, by);
        });
    if (options.fillLess)
        asked.emplace_back([by = Volume::fromLitres(*options.fillLess)](const PlanRequest& of) {
            return whatIfFillsLess(of, by);
        });
    return asked;
}

} // namespace

Result<std::vector<WhatIf>> whatIfsFrom(const PlanOptions& options, const PlanRequest& request)
{
    std::vector<WhatIf> whatIfs;
    for (const WhatIfQuestion& ask : whatIfsAsked(options)) {
        Result<WhatIf> answer = ask(request);
        if (!answer)
            return fail(answer.error());
        whatIfs.push_back(std::move(*answer));
    }
    return whatIfs;
}

Result<std::optional<WhatIf>> whatIfsTogether(const PlanOptions& options, const PlanRequest& request)
{
    const std::vector<WhatIfQuestion> asked = whatIfsAsked(options);
    if (asked.empty())
        return std::optional<WhatIf>();
    return whatIfTogether(request, asked);
}

Result<ForAnyClosure> planAsAsked(const PlanOptions& options, const PlanRequest& request,
                                  const GoOn& goOn)
{
    if (options.anyOneClosed)
        return planForAnyClosure(request, goOn);
    Result<Plan> answer = plan(request, goOn);
    if (!answer)
        return fail(answer.error());
    return ForAnyClosure{std::move(*answer), {}, {}};
}

double officialPerShown(const PlanOptions& options)
{
    if (!options.check)
        return 1.0;
    const auto [official, shown] = *options.check;
    return *tripMeterFactor(Distance::fromKm(official), Distance::fromKm(shown)); // both above 0
}

Result<PlanRequest> requestFrom(const PlanOptions& options, const CliContext& context)
{
    Result<Route> route = readRoute(options, context);
    if (!route)
        return fail(route.error());
    Result<TankAndRate> both = tankFromFlags(options, context);
    if (!both)
        return fail(both.error());
    if (const auto applied = applyTankFlags(options, *both); !applied)
        return fail(applied.error());
    PlanRequest request = planRequest(std::move(*route), *both);
    if (options.aim.empty() && !options.pumps.extract.empty() && !pricesAreKnown(request.route)) {
        warn("only some pumps have a price: planned for the fewest stops");
        request.aim = Aim::stops;
    }
    if (const auto aim = aimOf(options.aim)) {
        if (*aim == Aim::cost && request.aim != Aim::cost)
            warn("no point states a price: only stop costs count");
        request.aim = *aim;
    }
    if (options.confidence)
        setConfidence(request, Probability::of(*options.confidence));
    if (options.stageConfidence)
        request.stageConfidence = Probability::of(*options.stageConfidence);
    if (options.tripConfidence)
        request.tripConfidence = Probability::of(*options.tripConfidence);
    request.stopCost = options.stopCost.value_or(request.stopCost);
    if (options.leastStop)
        request.leastStop = Volume::fromLitres(*options.leastStop);
    if (options.load)
        request.rates = withRatesPlus(std::move(request.rates), Consumption::fromLitresPer100Km(*options.load));
    request.cans = options.cans.value_or(0);
    request.crewCans = options.crewCans.value_or(0);
    if (request.cans + request.crewCans > 0 && !options.canLitres)
        return wrongUse("cans need the litres in each", "--can-l");
    const auto hasPlace = [&](FuelSource where) {
        return std::ranges::find(request.route.points, where, &RoutePoint::fuel) != request.route.points.end();
    };
    if (request.cans > 0 && !hasPlace(FuelSource::can))
        warn("no point of the route has fuel 'can': the cans are not used");
    if (request.crewCans > 0 && !hasPlace(FuelSource::crew))
        warn("no point of the route has fuel 'crew': the crew's cans are not used");
    request.canVolume = Volume::fromLitres(options.canLitres.value_or(0.0));
    if (options.autonomyKm)
        request.rules.autonomy = Distance::fromKm(*options.autonomyKm);
    request.rules.autonomySafety = options.autonomySafety.value_or(0.0) / 100.0;
    request.rules.zonesOnly = options.zonesOnly;
    request.rules.cansForbidden = options.noCans;
    request.rules.zoneLimitDemanded = options.zoneLimit;
    if (const auto timed = addTimes(options, request); !timed)
        return fail(timed.error());
    countInMetersKm(options, request);
    return request;
}

} // namespace undermark
