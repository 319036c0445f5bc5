// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/level.h"

#include "engine/outlook/kept_level.h"
#include "engine/outlook/levels_of_tanks.h"
#include "engine/outlook/sender_bias.h"
#include "engine/outlook/way_since.h"
#include "engine/tank/reserve_prior.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

Volume burntSince(const Level& level, const RateModel& rates)
{
    return rates.burntOver(roadSince(level, rates));
}

// What the tanks held when all of them were full; one that was filled for the first time since
// then has at first to be filled to where it gives anything.
Estimate<Volume> usableAtFull(const CarKnowledge& car, Instant full)
{
    return withFurther(car.reserve.usableCapacity(), car, [&](const CarKnowledge& tank) {
        if (*tank.inUse > full) {
            const Estimate<Volume> unusable = unusableOf(tank.vehicle());
            return Estimate<Volume>{-1.0 * unusable.mean, unusable.sd};
        }
        const Estimate<Volume> capacity = tank.reserve.usableCapacity();
        return Estimate<Volume>{capacity.mean, Volume::fromLitres(std::hypot(capacity.sd.litres(), tank.clickSd.litres()))};
    });
}

// The same above the zero marks; of a full tank the offset cancels.
Estimate<Volume> aboveZeroAtFull(const CarKnowledge& car, Instant full)
{
    return withFurther(car.reserve.zeroToFull(), car, [&](const CarKnowledge& tank) {
        if (*tank.inUse > full) {
            const Estimate<Volume> unusable = unusableOf(tank.vehicle()), reserve = tank.reserve.reserve();
            return Estimate<Volume>{-1.0 * (unusable.mean + reserve.mean),
                                    Volume::fromLitres(std::hypot(unusable.sd.litres(), reserve.sd.litres()))};
        }
        const Estimate<Volume> span = tank.reserve.zeroToFull();
        return Estimate<Volume>{span.mean, Volume::fromLitres(std::hypot(span.sd.litres(), tank.clickSd.litres()))};
    });
}

Result<Level> levelFromLog(const CarKnowledge& car, const Question& question, const ModeRates& rates)
{
    const auto full = lastFull(car);
    if (!full)
        return failInput(
            Sentence::of("the level is not known: the log holds no full fill yet"));
    const Fill& fill = car.fills[*full];
    if (question.odometer && !fill.odometer)
        return failInput(Sentence::of("the last full fill has no odometer to count from"));
    const Start start{fill.time, fill.odometer, *full + 1};
    Since since = sinceThen(car, rates, start);
    if (const auto counted = countOdometer(car, question.odometer, start, since,
                                         Sentence::of("the odometer is lower than at the last full fill"));
        !counted)
        return fail(counted.error());
    Level level;
    level.source = LevelSource::log;
    level.aboveZero = aboveZeroAtFull(car, fill.time);
    level.usable = usableAtFull(car, fill.time);
    carryOn(level, since, rates.clickSd);
    level.sinceFill = total(since.driven);
    const Part way = amount(*level.sinceFill, 1);
    level.why = since.partialCount > 0
                    ? Sentence::of("log: full, then %1 and %2 more", way, amount(since.partials))
                    : Sentence::of("log: full, then %1", way);
    return level;
}

// Litres of a level that was kept, taken on by what came since.
Result<void> carryOn(Level& level, const KeptLevel& kept, const CarKnowledge& car, const Question& question,
                     const ModeRates& learnt, const RateModel& rates)
{
    const Start start = startAt(car, kept.time, kept.odometer);
    Since since = sinceThen(car, learnt, start);
    const auto counted = kept.odometer
        ? countOdometer(car, question.odometer, start, since,
                        Sentence::of("the odometer is lower than at the level that was kept"))
        : shareOutWay(car, question, rates.mean.back(), start, since);
    if (!counted)
        return counted;
    carryOn(level, since, Volume());
    level.asOf = kept.time;
    const Distance way = total(since.driven);
    level.why = Sentence::of("from %1: %2", kept.what, level.why);
    if (since.partialCount > 0)
        level.why = Sentence::of("%1, then %2 and %3 more", level.why, amount(way, 1), amount(since.partials));
    else if (way > Distance())
        level.why = Sentence::of("%1, then %2", level.why, amount(way, 1));
    if (level.boundAt)
        level.boundAt = std::max(Volume(), *level.boundAt + since.partials - since.stood.mean - burntSince(level, rates));
    return {};
}

Level levelFromUsable(const CarKnowledge& car, Estimate<Volume> usable)
{
    const Estimate<Volume> reserve = car.hiddenReserve();
    Level level;
    level.usable = usable;
    level.aboveZero = {usable.mean - reserve.mean,
                       Volume::fromLitres(std::hypot(usable.sd.litres(), reserve.sd.litres()))};
    level.why = Sentence::of("the fuel as given");
    return level;
}

// Anything from dry to a bound is as likely as anything else: the mean and sd of
// the uniform law, with what is not known of the bound itself.
Estimate<Volume> anywhereBelow(Estimate<Volume> bound)
{
    const Volume top = std::max(bound.mean, Volume());
    return {0.5 * top, Volume::fromLitres(std::hypot(top.litres() / std::sqrt(12.0), bound.sd.litres()))};
}

// Litres since drained, less what the sender has read too much at the last full fills.
Level levelFromAdded(const CarKnowledge& car, Estimate<Volume> added)
{
    if (const auto bias = senderBias(car)) {
        added.mean -= bias->mean;
        added.sd = Volume::fromLitres(std::hypot(added.sd.litres(), bias->sd.litres()));
    }
    Level level;
    level.source = LevelSource::signal;
    level.aboveZero = car.reserve.toZero(added);
    level.usable = car.reserve.toDry(added);
    level.why = Sentence::of("the level as it was followed on the way");
    return level;
}

SenderReading readingOf(const Question& question) { return {*question.signal, question.signal2}; }

Level levelFromSignal(const CarKnowledge& car, const Question& question)
{
    LevelReading reading =
        *(question.seriesSpread > Volume() ? car.gauge.inSeries(question.seriesSpread) : car.gauge)
             .readDriving(readingOf(question), question.signalSd, question.motion);
    Level level;
    if (const auto bias = senderBias(car); bias && reading.bound != LevelBound::atMost) {
        reading.added.mean -= bias->mean;
        reading.added.sd = Volume::fromLitres(
            std::hypot(reading.added.sd.litres(), bias->sd.litres()));
    }
    level.source = LevelSource::signal;
    level.bound = reading.bound;
    level.aboveZero = car.reserve.toZero(reading.added);
    level.usable = car.reserve.toDry(reading.added);
    const std::string& unit = car.vehicle().sender.unit;
    level.why = question.signal2
                    ? Sentence::of("sender at %1 and %2 %3", amount(question.signal->value(), 3),
                                   amount(question.signal2->value(), 3), unit)
                    : Sentence::of("sender at %1 %2", amount(question.signal->value(), 3), unit);
    if (reading.bound == LevelBound::exact)
        return level;
    level.boundAt = std::max(level.usable.mean, Volume());
    const bool below = reading.bound == LevelBound::atMost;
    level.why = below ? Sentence::of("%1, on the float's lower stop", level.why)
                      : Sentence::of("%1, on the float's upper stop", level.why);
    if (below) {
        const Volume zero = level.usable.mean - level.aboveZero.mean;
        const Estimate<Volume> usable = anywhereBelow(level.usable);
        level.aboveZero = {usable.mean - zero, usable.sd};
        level.usable = usable;
    }
    return level;
}

// A one-sided reading says less than the log where the log agrees with it.
bool agrees(const Level& log, const Level& reading, const RateModel& rates)
{
    const Volume left = log.usable.mean - burntSince(log, rates);
    return reading.bound == LevelBound::atMost ? left <= *reading.boundAt
                                               : left >= *reading.boundAt;
}

Sentence faultText(CircuitFault fault)
{
    switch (fault) {
    case CircuitFault::open:
        return Sentence::of("the sender reads open: check its wire and connector");
    case CircuitFault::shorted:
        return Sentence::of("the sender reads shorted: check its wire for contact with ground");
    case CircuitFault::impossible:
        break;
    }
    return Sentence::of("the sender cannot give this reading: check its unit, wire and connector");
}

// What a reading on a stop of the float bounds.
Sentence boundText(const Level& reading)
{
    return reading.bound == LevelBound::atMost
               ? Sentence::of("at most %1 usable", amount(*reading.boundAt))
               : Sentence::of("at least %1 usable", amount(*reading.boundAt));
}

// Where the log contradicts the sender by more than a click.
std::optional<Sentence> biasWarning(const CarKnowledge& car)
{
    const auto bias = senderBias(car);
    if (!bias || abs(bias->mean) < std::max(2.0 * bias->sd, checkedWithin(car)))
        return std::nullopt;
    return bias->mean > Volume()
        ? Sentence::of("by the last full fills the sender reads %1 too high: the level is "
                       "counted lower by that", amount(bias->mean))
        : Sentence::of("by the last full fills the sender reads %1 too low: the level is "
                       "counted higher by that", amount(abs(bias->mean)));
}

Result<void> checkSignals(const CarKnowledge& car, const Question& question)
{
    if (!car.gauge.isKnown())
        return failInput(Sentence::of("a reading says nothing before the sender is calibrated"));
    if (car.gauge.hasTwoSignals() && !question.signal2)
        return failInput(
            Sentence::of("this saddle tank has two senders: one reading is not enough"),
            Sentence::of("both readings"));
    if (!car.gauge.hasTwoSignals() && question.signal2)
        return failInput(Sentence::of("this tank was calibrated with one signal"),
                         Sentence::of("one reading"));
    return {};
}

} // namespace

std::vector<RouteLeg> roadSince(const Level& level, const RateModel& rates)
{
    const Distance whole = total(level.driven);
    std::vector<RouteLeg> road;
    for (const auto& [mode, distance] : level.driven)
        road.push_back({distance, rates.indexOf(mode).value_or(rates.modes.size() - 1),
                        distance > Distance() ? level.climbed * (distance / whole) : Distance()});
    return road;
}

namespace {

// Taken on to today: lower by the road that no record tells (`from`: since then), and less sure.
void takeToToday(Level& level, const CarKnowledge& car, const Question& question, const RateModel& rates,
                 std::vector<Sentence>& warnings, std::optional<Instant> from = {})
{
    if (question.odometer)
        return;
    const Consumption usualMix = rates.mean.back();
    const Volume left = level.usable.mean - burntSince(level, rates);
    level.unlogged = unloggedRoad(car, question.now.begin, std::max(left, Volume()) / usualMix, from);
    if (!level.unlogged)
        return;
    if (level.unlogged->longerThanUsual || level.unlogged->mayBeAll)
        warnings.push_back(sentenceOf(*level.unlogged));
    const auto& road = level.unlogged->road;
    if (!road)
        return;
    level.driven[""] += road->mean;
    addSpread(level, usualMix * road->sd);
    level.why = Sentence::of("%1, then about %2 that nobody wrote down", level.why,
                             amount(road->mean));
}

Distance unloggedMean(const Level& level)
{
    return level.unlogged && level.unlogged->road ? level.unlogged->road->mean : Distance();
}

} // namespace

Result<Level> levelByLog(const CarKnowledge& car, const Question& question, const ModeRates& learnt,
                         const RateModel& rates, std::vector<Sentence>& warnings)
{
    Result<Level> level = levelFromLog(car, question, learnt);
    if (!level)
        return level;
    takeToToday(*level, car, question, rates, warnings);
    level->likelySinceFill = *level->sinceFill + unloggedMean(*level);
    return level;
}

Result<std::optional<Level>> toldLevel(const CarKnowledge& car, const Question& question,
                                       std::vector<Sentence>& warnings)
{
    if (question.usable)
        return levelFromUsable(car, *question.usable);
    if (question.followed)
        return levelFromAdded(car, *question.followed);
    if (!question.signal)
        return std::nullopt;
    if (const auto fault = car.gauge.faultOf(readingOf(question), car.vehicle().sender)) {
        warnings.push_back(
            Sentence::of("%1; the distance is from the log alone", faultText(*fault)));
        return std::nullopt;
    }
    if (const auto sound = checkSignals(car, question); !sound)
        return fail(sound.error());
    if (const auto warning = biasWarning(car))
        warnings.push_back(*warning);
    return levelFromSignal(car, question);
}

namespace {

// The reading or the log, where one of them rests on a stop of the float.
Level atStop(Level reading, Result<Level> log, const std::vector<Sentence>& ofTheLog, const RateModel& rates,
             std::vector<Sentence>& warnings)
{
    if (log && agrees(*log, reading, rates)) {
        log->bound = reading.bound;
        log->boundAt = reading.boundAt;
        warnings.push_back(Sentence::of(
            "the float rests on its stop: %1; the distance is from the log", boundText(reading)));
        warnings.insert(warnings.end(), ofTheLog.begin(), ofTheLog.end());
        return *std::move(log);
    }
    warnings.push_back(log ? Sentence::of("the float rests on its stop: %1; the log disagrees, the "
                                          "distance follows the reading",
                                          boundText(reading))
                           : Sentence::of("the float rests on its stop: %1", boundText(reading)));
    return reading;
}

// What is kept knows the way since the last full fill only from its own day on.
void countSinceFill(Level& level, const CarKnowledge& car, const KeptLevel& kept, const Result<Level>& log)
{
    if (!log)
        return;
    level.sinceFill = log->sinceFill;
    level.likelySinceFill = log->likelySinceFill;
    const Fill& full = car.fills[*lastFull(car)];
    if (!kept.odometer || !full.odometer || level.bound != LevelBound::exact)
        return;
    const Distance since = *kept.odometer - *full.odometer + total(level.driven);
    level.sinceFill = since - unloggedMean(level);
    level.likelySinceFill = since;
}

// A fill that was in the level before it was told is not counted twice.
void notCountTwice(Level& level, const KeptLevel& kept, const Level& log, const CarKnowledge& car,
                   const RateModel& rates, std::vector<Sentence>& warnings)
{
    const Volume fill = litresMaybeIn(kept, car);
    const auto left = [&rates](const Level& each) { return each.usable.mean - burntSince(each, rates); };
    if (fill == Volume() || left(level) - left(log) < 0.5 * fill)
        return;
    level.usable.mean -= fill;
    level.aboveZero.mean -= fill;
    warnings.push_back(Sentence::of("the fill of %1 seems to have been in the tank already when the level was kept: it "
                                    "is not counted twice", amount(fill)));
}

Result<Level> levelByKept(const CarKnowledge& car, const KeptLevel& kept, const Question& question,
                          const ModeRates& learnt, const RateModel& rates, std::vector<Sentence>& warnings)
{
    const bool several = hasSeveralTanks(car, kept.asked);
    const Result<std::optional<Level>> then = several
        ? levelOfTanks(car, kept.asked, learnt, rates, warnings).map([](Level level) { return std::optional(std::move(level)); })
        : toldLevel(car, kept.asked, warnings);
    if (!then)
        return fail(then.error());
    Level level = **then; // (keptLevel() passes over what tells nothing)
    if (const auto carried = carryOn(level, kept, car, question, learnt, rates); !carried)
        return fail(carried.error());
    takeToToday(level, car, question, rates, warnings, kept.time);
    std::vector<Sentence> ofTheLog;
    const Result<Level> log = levelByLog(car, question, learnt, rates, ofTheLog);
    countSinceFill(level, car, kept, log);
    if (log)
        notCountTwice(level, kept, *log, car, rates, warnings);
    return level.bound == LevelBound::exact ? level : atStop(std::move(level), log, ofTheLog, rates, warnings);
}

} // namespace

Result<Level> findLevel(const CarKnowledge& car, const Question& question, const ModeRates& learnt,
                        const RateModel& rates, std::vector<Sentence>& warnings)
{
    if (!tellsLevel(question))
        if (const auto kept = keptLevel(car, question))
            return levelByKept(car, *kept, question, learnt, rates, warnings);
    if (!question.usable && hasSeveralTanks(car, question))
        return levelOfTanks(car, question, learnt, rates, warnings);
    const Result<std::optional<Level>> told = toldLevel(car, question, warnings);
    if (!told)
        return fail(told.error());
    if (!*told)
        return levelByLog(car, question, learnt, rates, warnings);
    if ((*told)->bound == LevelBound::exact)
        return **told;
    std::vector<Sentence> ofTheLog;
    const Result<Level> log = levelByLog(car, question, learnt, rates, ofTheLog);
    return atStop(**told, log, ofTheLog, rates, warnings);
}

} // namespace undermark
