// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/way_since.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace undermark {

namespace {

struct KnownOdometer {
    Distance at;
    Instant time{};
};

// The furthest odometer of these fills (a partial one tells it too) and of the levels kept after
// `from` and up to `to`.
std::optional<KnownOdometer> latestOdometer(const CarKnowledge& car, std::span<const Fill> fills, Instant from,
                                            Instant to = Instant::max())
{
    std::optional<KnownOdometer> latest;
    const auto see = [&latest](const std::optional<Distance>& odometer, Instant time) {
        if (odometer && (!latest || *odometer > latest->at))
            latest = {*odometer, time};
    };
    for (const Fill& fill : fills)
        if (!fill.odometerReset)
            see(fill.odometer, fill.time);
    for (const Entry<LevelRecord>& level : car.log.levels)
        if (level.value.time > from && level.value.time <= to)
            see(level.value.odometer, level.value.time);
    return latest;
}

tl::unexpected<Error> lowerThan(Sentence what, Distance known, Distance told)
{
    return failInput(std::move(what), Sentence::of("at least %1", amount(known, 1)), amount(told, 1));
}

double seconds(Instant::duration time) { return std::chrono::duration<double>(time).count(); }

} // namespace

Distance total(const Mix& mix)
{
    Distance sum;
    for (const auto& [mode, distance] : mix)
        sum += distance;
    return sum;
}

std::optional<std::size_t> lastFull(const CarKnowledge& car)
{
    for (std::size_t i = car.fills.size(); i-- > 0;)
        if (car.fills[i].extent != FillExtent::partial)
            return i;
    return std::nullopt;
}

Start startAt(const CarKnowledge& car, Instant time, std::optional<Distance> odometer)
{
    std::size_t fill = car.fills.size();
    while (fill > 0 && car.fills[fill - 1].time > time)
        --fill;
    return {time, odometer, fill};
}

Since sinceThen(const CarKnowledge& car, const ModeRates& rates, const Start& start)
{
    Since since;
    for (std::size_t i = start.fill; i < car.fills.size(); ++i) {
        since.partials += car.fills[i].volume;
        ++since.partialCount;
    }
    double variance = 0;
    for (const Entry<Trip>& entry : car.log.trips) {
        const Trip& trip = entry.value;
        if (trip.time <= start.time)
            continue;
        since.driven[trip.mode] += trip.distance;
        if (trip.climb)
            since.climbed += *trip.climb - trip.distance * rates.usualClimb;
        const double hours = trip.idle ? trip.idle->count() / 60 : 0;
        const double starts = trip.starts.value_or(0);
        since.stood.mean += Volume::fromLitres(hours * rates.idle.mean.litresPerHour())
            + starts * rates.coldStart.mean;
        variance += std::pow(hours * rates.idle.sd.litresPerHour(), 2)
            + std::pow(starts * rates.coldStart.sd.litres(), 2);
    }
    since.stood.sd = Volume::fromLitres(std::sqrt(variance));
    return since;
}

// The odometer is trusted; what no trip accounts for was the usual mix.
Result<void> countOdometer(const CarKnowledge& car, std::optional<Distance> odometer, const Start& start, Since& since,
                           Sentence lower)
{
    const auto known = latestOdometer(car, std::span(car.fills).subspan(start.fill), start.time);
    if (!start.odometer || !(odometer || known))
        return {};
    const Distance driven = odometer.value_or(known ? known->at : Distance()) - *start.odometer;
    if (odometer && driven < Distance())
        return lowerThan(std::move(lower), *start.odometer, *odometer);
    const Distance told = total(since.driven);
    if (odometer && told > driven && told > Distance())
        for (auto& [mode, distance] : since.driven)
            distance = distance * (driven / told);
    else if (driven > told)
        since.driven[""] += driven - told;
    return {};
}

Estimate<Distance> shareOfWay(Distance untold, double share)
{
    return {share * untold, std::sqrt(share * (1.0 - share) / 3.0) * untold};
}

Result<void> shareOutWay(const CarKnowledge& car, const Question& question, Consumption usualMix, const Start& start,
                         Since& since)
{
    const auto full = lastFull(car);
    const std::span<const Fill> fills = std::span(car.fills).first(start.fill).subspan(full.value_or(0));
    const auto before = latestOdometer(car, fills, full ? car.fills[*full].time : Instant::min(), start.time);
    auto after = latestOdometer(car, std::span(car.fills).subspan(start.fill), start.time);
    if (question.odometer && !before)
        return failInput(Sentence::of("neither the kept level nor the last full fill has an odometer to count from"));
    if (question.odometer)
        after = {*question.odometer, std::max(question.now.begin.value_or(start.time), start.time)};
    if (!before || !after)
        return {};
    if (question.odometer && after->at < before->at)
        return lowerThan(Sentence::of("the odometer is lower than it was before the kept level"), before->at, after->at);
    Distance told;
    for (const Entry<Trip>& trip : car.log.trips)
        if (trip.value.time > before->time && trip.value.time <= after->time)
            told += trip.value.distance;
    const double days = seconds(after->time - before->time), late = seconds(after->time - start.time);
    const Estimate<Distance> way = shareOfWay(std::max(Distance(), after->at - before->at - told),
                                              days > 0.0 ? std::clamp(late / days, 0.0, 1.0) : 1.0);
    if (way.mean > Distance())
        since.driven[""] += way.mean;
    since.astray = usualMix * way.sd;
    return {};
}

void addSpread(Level& level, Volume sd)
{
    for (Estimate<Volume>* litres : {&level.usable, &level.aboveZero})
        litres->sd = Volume::fromLitres(std::hypot(litres->sd.litres(), sd.litres()));
}

// `level` is what was there at the start; `click`: the scatter of where a pump stops.
void carryOn(Level& level, const Since& since, Volume click)
{
    const Volume change = since.partials - since.stood.mean;
    for (Estimate<Volume>* litres : {&level.usable, &level.aboveZero})
        *litres = {litres->mean + change,
                   Volume::fromLitres(std::hypot(litres->sd.litres(), click.litres(), since.stood.sd.litres()))};
    if (since.astray > Volume())
        addSpread(level, since.astray);
    level.driven = since.driven;
    level.climbed = since.climbed;
}

} // namespace undermark
