// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli range: how far to the zero mark, and to dry.
#include "app/cli/cli_range.h"

#include "app/cli/cli_burns_more.h"
#include "app/cli/cli_corrections.h"
#include "app/cli/cli_shape.h"
#include "app/cli/cli_tank.h"
#include "app/cli/terminal_words.h"

#include <cmath>
#include <iostream>
#include <memory>

namespace undermark {

namespace {

struct RangeOptions {
    std::optional<double> signal, signal2, signalSd, litres, litresSd, odometer, rate, rateSd, zero, legSd;
    std::optional<double> lobe1, lobe2;
    TankReadings tanks;
    BurnsMore burnsMore;
    ShapeFlags shape;
    std::string mode, date;
    bool moving = false;
    CorrectionOptions corrections;
};

// What `range` answers, from a logbook or from flags alone.
struct RangeAnswer {
    Estimate<Volume> usable, reserve;
    Estimate<Consumption> rate;
    Distances toZero, toDry;
    std::string why;
    const Outlook* outlook = nullptr;
    bool prior = false;             // the level is the tank's shape, not a calibration
    Json corrections;               // null unless one is switched on
};

const char* wordOf(LevelSource source)
{
    return source == LevelSource::signal ? "signal" : source == LevelSource::given ? "given" : "log";
}

void addDetails(const Outlook& now, Json& json)
{
    json["above_zero_l"] = estimateJson(now.aboveZero.mean.litres(), now.aboveZero.sd.litres());
    json["mode"] = now.mode.empty() ? Json() : Json(now.mode);
    json["level_source"] = wordOf(now.source);
    json["level_as_of"] = now.asOf ? dateJson(*now.asOf) : Json();
    json["level_bound"] = wordOf(now.bound);
    json["bound_l"] = now.boundAt ? Json(now.boundAt->litres()) : Json();
    json["unlogged_days"] = now.unlogged ? now.unlogged->silence.count() : 0;
    const auto road = now.unlogged ? now.unlogged->road : std::nullopt;
    json["unlogged_km"] = road ? estimateJson(road->mean.km(), road->sd.km()) : Json();
    json["tanks"] = Json::array();
    for (const TankLevel& tank : now.tanks)
        json["tanks"].push_back({{"tank", tank.tank.empty() ? Json() : Json(tank.tank)},
                                 {"usable_l", estimateJson(tank.usable.mean.litres(), tank.usable.sd.litres())}});
    json["warnings"] = Json::array();
    for (const Sentence& warning : now.warnings)
        json["warnings"].push_back(said(warning));
}

Json rangeJson(const RangeAnswer& a)
{
    Json json{{"usable_l", estimateJson(a.usable.mean.litres(), a.usable.sd.litres())},
              {"reserve_l", estimateJson(a.reserve.mean.litres(), a.reserve.sd.litres())},
              {"rate_l_per_100km",
               estimateJson(a.rate.mean.litresPer100Km(), a.rate.sd.litresPer100Km())},
              {"to_zero_km", distancesJson(a.toZero)},
              {"to_dry_km", distancesJson(a.toDry)},
              {"sure_is_negative", {{"zero", a.toZero.sureIsNegative}, {"dry", a.toDry.sureIsNegative}}}};
    if (a.outlook)
        addDetails(*a.outlook, json);
    json["prior"] = a.prior;
    json["why"] = a.why;
    if (!a.corrections.is_null())
        json["corrections"] = a.corrections;
    return json;
}

void printDistances(const char* where, const Distances& d)
{
    std::cout << format("%-18s %8s km %8s km %8s km\n", where, kmDown(d.p99).c_str(),
                        kmDown(d.p50).c_str(), kmDown(d.p10).c_str());
    if (d.sureIsNegative)
        std::cout << "  (not even the start is sure: it may be passed already)\n";
}

} // namespace

std::string kmDown(Distance d) { return fixed(std::floor(d.km()), 0); }

void printRange(const Distances& toZero, const Distances& toDry)
{
    std::cout << format("%-18s %11s %11s %11s\n", "", "sure 99 %", "even 50 %", "hopeful 10 %");
    printDistances("to the zero mark", toZero);
    printDistances("to dry", toDry);
}

namespace {

void printRange(const RangeAnswer& a)
{
    printRange(a.toZero, a.toDry);
    std::cout << format("\n%.1f ± %.1f L usable, of them %.1f ± %.1f L hidden below the zero mark; "
                        "%.2f ± %.2f L/100 km\n",
                        a.usable.mean.litres(), a.usable.sd.litres(), a.reserve.mean.litres(),
                        a.reserve.sd.litres(), a.rate.mean.litresPer100Km(), a.rate.sd.litresPer100Km());
    std::cout << "why: " << a.why << ". An estimate: keep a margin.\n";
    if (a.prior)
        std::cout << kPriorText << '\n';
}

void answer(const RangeAnswer& a, const CliContext& context)
{
    if (context.json)
        print(rangeJson(a));
    else
        printRange(a);
}

Result<Estimate<Volume>> usableByShape(const RangeOptions& o, const Vehicle& vehicle)
{
    const Result<LevelCurve> curve = priorCurveFrom(o.shape);
    if (!curve)
        return fail(curve.error());
    return usableByShape(*curve, Signal::of(*o.signal), unusableOf(vehicle));
}

Estimate<Consumption> statedRate(const RangeOptions& o)
{
    return {Consumption::fromLitresPer100Km(*o.rate),
            Consumption::fromLitresPer100Km(o.rateSd.value_or(0))};
}

// Without a logbook: litres, rate and zero mark are all on the command line.
Result<void> rangeFromFlags(const RangeOptions& o, const CliContext& context)
{
    if (!o.litres && !o.shape.given())
        return wrongUse("without a logbook the level must be given", "--litres with --rate");
    const auto volume = [](const std::optional<double>& v) { return Volume::fromLitres(v.value_or(0)); };
    RangeAnswer a;
    a.usable = {volume(o.litres), volume(o.litresSd)};
    a.prior = o.shape.given();
    if (a.prior) {
        const auto usable = usableByShape(o, Vehicle{});
        if (!usable)
            return fail(usable.error());
        a.usable = *usable;
    }
    a.reserve = {volume(o.zero), Volume()};
    a.rate = statedRate(o);
    const auto dry = RangeLaw::make({a.usable, RateModel::single(a.rate, o.legSd.value_or(0))});
    if (!dry)
        return fail(dry.error());
    a.toDry = distances(*dry);
    a.toZero = distances(dry->withFuel({a.usable.mean - a.reserve.mean, a.usable.sd}));
    a.why = a.prior ? "level by the tank's shape (prior), rate as given" : "litres and rate as given";
    answer(a, context);
    return {};
}

// The even distance to dry, and the rate, without the corrections and with them.
Json correctionEffect(const Outlook& without, const Outlook& with)
{
    const auto pair = [](double before, double after) {
        return Json{{"without", before}, {"with", after}};
    };
    return {{"rate_l_per_100km", pair(without.rate.mean.litresPer100Km(), with.rate.mean.litresPer100Km())},
            {"to_dry_p50_km", pair(distances(without.toDry).p50.km(), distances(with.toDry).p50.km())}};
}

// What the rate rests on, where that is less than a log.
std::string rateWords(const CarKnowledge& car, const RangeOptions& o)
{
    if (o.rate)
        return "; the rate as given";
    const std::size_t tanks = car.consumption.model.observed();
    std::string words;
    if (tanks == 0)
        words = "; the rate is only a guess from the tank's size: no full-to-full stretch is known yet";
    else if (tanks == 1)
        words = "; the rate rests on one stretch";
    if (o.burnsMore.percent)
        words += format("; burns %+.0f %% by your word", *o.burnsMore.percent);
    return words;
}

Result<void> rangeFromLog(const RangeOptions& o, const CliContext& context)
{
    const Result<CarKnowledge> car = learnVehicle(context, o.corrections);
    if (!car)
        return fail(car.error());
    Question question;
    if (o.signal && !o.shape.given())
        question.signal = Signal::of(*o.signal);
    if (o.signal2)
        question.signal2 = Signal::of(*o.signal2);
    if (o.signalSd)
        question.signalSd = Signal::of(*o.signalSd);
    question.motion = o.moving ? Motion::moving : Motion::atRest;
    const Result<Volume> spread = seriesSpreadFrom(o.lobe1, o.lobe2);
    if (!spread)
        return fail(spread.error());
    question.seriesSpread = *spread;
    if (o.shape.given()) {
        const auto usable = usableByShape(o, car->vehicle());
        if (!usable)
            return fail(usable.error());
        question.usable = *usable;
    }
    if (o.litres)
        question.usable = {Volume::fromLitres(*o.litres),
                           o.litresSd ? Volume::fromLitres(*o.litresSd) : fullFillSd(*car)};
    if (o.odometer)
        question.odometer = Distance::fromKm(*o.odometer);
    if (o.signal && o.odometer && car->further.empty())
        return wrongUse("the level can be told in one way only",
                        "one of --signal, --litres, --odometer-km");
    if (const auto told = ask(o.tanks, *car, question); !told)
        return told;
    question.mode = o.mode;
    if (const auto asked = askFor(o.date, question); !asked)
        return asked;
    if (o.rate)
        question.rate = statedRate(o);
    question.now.burnsMore = byWord(o.burnsMore);
    const Result<Outlook> now = outlook(*car, question);
    if (!now)
        return fail(now.error());
    for (const Sentence& warning : now->warnings)
        warn(warning);
    const std::string mode = o.mode.empty() ? "the usual mix" : o.mode;
    RangeAnswer a{now->usable,
                  now->reserve,
                  now->rate,
                  distances(now->toZero),
                  distances(now->toDry),
                  (o.shape.given() ? "level by the tank's shape (prior)" : said(now->why)) +
                      "; " + mode + rateWords(*car, o),
                  &*now,
                  o.shape.given() || (o.signal && car->gauge.isPrior()),
                  {}};
    if (!anyOf(o.corrections)) {
        answer(a, context);
        return {};
    }
    const Result<CarKnowledge> plain = learnVehicle(context);
    const Result<Outlook> without = plain ? outlook(*plain, question) : fail(plain.error());
    if (!without)
        return fail(without.error());
    a.corrections = correctionsJson(
        o.corrections, car->corrections,
        [&car](std::size_t i) { return Json(car->log.fills[i].id.uuid); },
        correctionEffect(*without, *now));
    answer(a, context);
    if (!context.json)
        printCorrections(o.corrections, car->corrections,
                         format("rate %.3f -> %.3f L/100 km", without->rate.mean.litresPer100Km(),
                                now->rate.mean.litresPer100Km()));
    return {};
}

Result<void> runRange(const RangeOptions& o, const CliContext& context)
{
    // (The odometer besides a reading goes with several tanks, once they are known.)
    if (o.litres && (o.signal || o.odometer))
        return wrongUse("the level can be told in one way only",
                        "one of --signal, --litres, --odometer-km");
    if (const auto sound = checkShapeFlags(o.shape); !sound)
        return sound;
    if (o.shape.given() && !o.signal)
        return wrongUse("a tank's shape needs a reading", "--signal with --shape");
    if (o.signal2 && (!o.signal || o.shape.given()))
        return wrongUse("--signal2 goes with --signal and a saddle tank's calibration");
    if ((o.signalSd || o.moving) && (!o.signal || o.shape.given()))
        return wrongUse("--signal-sd and --moving go with --signal and a calibration");
    if (o.signalSd && o.moving)
        return wrongUse("the noise of a reading is told in one way only",
                        "--signal-sd or --moving");
    if (o.litresSd && !o.litres)
        return wrongUse("--litres-sd goes with --litres");
    if (!o.tanks.signals.empty() || !o.tanks.litres.empty())
        if (o.litres || o.shape.given())
            return wrongUse("--litres is the sum of all tanks", "no --tank-signal and --tank-litres");
    if (!o.rate && (o.rateSd || o.zero || o.legSd))
        return wrongUse("--rate-sd, --zero-at-l and --leg-sd-per-sqrt-km go with --rate");
    const bool ofTheCar = !o.rate || o.odometer || !o.tanks.signals.empty() || !o.tanks.litres.empty() || (o.signal && !o.shape.given());
    if (o.rate && ofTheCar && (o.zero || o.legSd))
        return wrongUse("--zero-at-l and --leg-sd-per-sqrt-km go with --litres and --rate",
                        "a reading and the odometer ask the car that the logbook knows");
    if (const auto sound = checkBurnsMore(o.burnsMore); !sound)
        return sound;
    if (o.rate && o.burnsMore.percent)
        return wrongUse("--burns-more is against the log's rate", "no --rate");
    if (o.rate && anyOf(o.corrections))
        return wrongUse("--at-15c and --blend-energy correct logged fills", "no --rate");
    return ofTheCar ? rangeFromLog(o, context) : rangeFromFlags(o, context);
}

} // namespace

void addRangeCommand(CLI::App& app, CliContext& context)
{
    auto o = std::make_shared<RangeOptions>();
    CLI::App& range = addSubcommand(app, "range", "how far to the zero mark, and to dry");
    addNumber(range, "--signal", o->signal, kAnyNumber, "the sender's reading now");
    addNumber(range, "--signal2", o->signal2, kAnyNumber,
              "and the second lobe's, of a saddle tank with two senders");
    addNumber(range, "--signal-sd", o->signalSd, kNotNegative,
              "noise of the reading (0.3 % of the sender's span at rest)");
    addFlag(range, "--moving", o->moving, "read while driving (3.6 % of the span)");
    addSeriesFlags(range, o->lobe1, o->lobe2);
    addShapeFlags(range, o->shape);
    addNumber(range, "--litres", o->litres, kNotNegative, "usable litres now");
    addNumber(range, "--litres-sd", o->litresSd, kNotNegative, "their uncertainty (the logbook's car: as after a full fill)");
    addTankReadings(range, o->tanks);
    addNumber(range, "--odometer-km", o->odometer, kNotNegative, "the odometer now");
    addText(range, "--mode", o->mode, "driving mode ahead; default the usual mix");
    addNumber(range, "--rate", o->rate, kPositive, "consumption, L/100 km, instead of what the log taught; with --litres no logbook is needed");
    addNumber(range, "--rate-sd", o->rateSd, kNotNegative, "its uncertainty, L/100 km");
    addNumber(range, "--zero-at-l", o->zero, kNotNegative, "with --litres and --rate: usable litres at the zero mark");
    addNumber(range, "--leg-sd-per-sqrt-km", o->legSd, kNotNegative,
              "with --litres and --rate: noise of the road, L per square root of km");
    addText(range, "--date", o->date, kDateHelp);
    addBurnsMore(range, o->burnsMore);
    addCorrections(range, o->corrections);
    addJson(range, context);
    onRun(range, context, [o, &context] { return runRange(*o, context); });
}

} // namespace undermark
