// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/kept_level.h"

#include "engine/base/instant_text.h"
#include "engine/outlook/several_tanks.h"
#include "engine/outlook/way_since.h"
#include "engine/outlook/zero_mark.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::chrono::hours kToldLate{24}; // a fill, after it was poured; judgement, no source

// Of one tank, by its own knowledge.
bool canAnswer(const LevelRecord& level, const CarKnowledge& tank)
{
    if (level.usable)
        return true;
    if (!tank.gauge.isKnown() || calibrationAt(tank.log, level.time) != latestCalibration(tank.log))
        return false;
    if (level.added && !level.signal)
        return true;
    if (tank.gauge.hasTwoSignals() != level.signal2.has_value())
        return false;
    return !tank.gauge.faultOf({*level.signal, level.signal2}, tank.vehicle().sender);
}

// The newest of a tank after `full`; null: none.
const LevelRecord* newest(const CarKnowledge& car, const CarKnowledge& tank, const std::optional<std::string>& name,
                          std::optional<Instant> full)
{
    for (auto level = car.log.levels.rbegin(); level != car.log.levels.rend(); ++level)
        if (level->value.tank == name && (!full || level->value.time > *full) && canAnswer(level->value, tank))
            return &level->value;
    return nullptr;
}

// Nothing was driven or poured in between, as far as told.
bool isOneHalt(const CarKnowledge& car, const std::vector<const LevelRecord*>& levels)
{
    const auto ends = std::ranges::minmax(levels, {}, &LevelRecord::time);
    const Instant first = ends.min->time, last = ends.max->time;
    const auto between = [first, last](const auto& each) {
        return each.value.time > first && each.value.time <= last;
    };
    for (const LevelRecord* one : levels)
        for (const LevelRecord* other : levels)
            if (one->odometer && other->odometer && abs(*one->odometer - *other->odometer) > kHaltWay)
                return false;
    return last - first <= kHaltTime && std::ranges::none_of(car.log.trips, between)
        && std::ranges::none_of(car.log.fills, between);
}

// Litres come before a reading.
void tell(const LevelRecord& level, Question& question)
{
    if (level.usable) {
        question.usable = level.usable;
    } else if (level.signal) {
        question.signal = level.signal;
        question.signal2 = level.signal2;
        question.signalSd = level.signalSd;
        question.motion = Motion::atRest;
    } else {
        question.followed = level.added;
    }
}

void tell(const LevelRecord& level, TankTold& told)
{
    if (level.usable)
        told.usable = level.usable;
    else if (level.signal)
        told = {level.signal, level.signal2, {}, {}, level.signalSd};
    else
        told.followed = level.added;
}

Sentence wordsOf(const LevelRecord& level)
{
    const std::string day = instantText(level.time).substr(0, 10);
    if (level.usable)
        return Sentence::of("the litres of %1", day);
    return level.signal ? Sentence::of("the reading of %1", day)
                        : Sentence::of("the level as it was followed until %1", day);
}

} // namespace

Volume litresMaybeIn(const KeptLevel& kept, const CarKnowledge& car)
{
    Instant until = kept.time + kToldLate;
    for (const Entry<Trip>& trip : car.log.trips)
        if (trip.value.time > kept.time)
            until = std::min(until, trip.value.time);
    Volume litres;
    for (const Fill& fill : car.fills)
        if (fill.time > kept.time && fill.time < until)
            litres += fill.volume;
    return litres;
}

bool tellsLevel(const Question& question)
{
    return question.signal || question.followed || question.usable || !question.tanks.empty();
}

std::optional<KeptLevel> keptLevel(const CarKnowledge& car, const Question& question)
{
    const auto at = lastFull(car);
    const auto full = at ? std::optional(car.fills[*at].time) : std::nullopt;
    std::vector<const LevelRecord*> levels{newest(car, car, std::nullopt, full)};
    if (!levels.front())
        return std::nullopt;
    KeptLevel kept{question, levels.front()->time, {}, wordsOf(*levels.front())};
    bool several = false;
    for (std::size_t i = 0; i < car.further.size(); ++i) {
        const CarKnowledge& tank = car.further[i];
        const std::string& name = car.log.tanks[i].value.name;
        if (!tank.inUse)
            continue;
        several = true;
        const LevelRecord* level = newest(car, tank, name, full);
        if (level) {
            levels.push_back(level);
            tell(*level, kept.asked.tanks[name]);
        } else if (tank.feed != TankFeed::shared) {
            return std::nullopt;
        }
    }
    if (several && levels.front()->usable) // (the question's own litres are those of all tanks)
        kept.asked.tanks[std::string()].usable = levels.front()->usable;
    else
        tell(*levels.front(), kept.asked);
    if (!isOneHalt(car, levels))
        return std::nullopt;
    for (const LevelRecord* level : levels) {
        kept.time = std::max(kept.time, level->time);
        const auto& atFull = at ? car.fills[*at].odometer : std::nullopt;
        if (level->odometer && !(atFull && *level->odometer < *atFull)) // a slip, or another dash
            kept.odometer = std::max(kept.odometer.value_or(*level->odometer), *level->odometer);
    }
    return kept;
}

} // namespace undermark
