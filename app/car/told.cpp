// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/told.h"

#include "engine/tank/reserve_prior.h"

#include <algorithm>
#include <cmath>

namespace undermark {

std::optional<Instant> lastRecorded(const VehicleLog& log)
{
    std::optional<Instant> last;
    const auto take = [&last](Instant time) {
        if (!last || time > *last)
            last = time;
    };
    for (const Entry<Fill>& fill : log.fills)
        take(fill.value.time);
    for (const Entry<Trip>& trip : log.trips)
        take(trip.value.time);
    for (const Entry<LevelRecord>& level : log.levels)
        take(level.value.time);
    return last;
}

bool stillCounts(const Told& told, const VehicleLog& log)
{
    const auto last = lastRecorded(log);
    return !last || told.time >= *last;
}

LevelRecord levelOf(const Told& told)
{
    LevelRecord level;
    level.time = told.time;
    level.signal = told.signal;
    level.signal2 = told.signal2;
    level.odometer = told.odometer;
    return level;
}

std::optional<Proof> proofOf(const Told& told, const VehicleLog& log)
{
    if (told.what != Told::What::needleAtZero || stillCounts(told, log))
        return std::nullopt;
    std::optional<Distance> driven = told.since;
    Proof proof;
    proof.kind = ProofKind::pastZero;
    proof.time = *lastRecorded(log);
    const auto fill = std::ranges::find_if(log.fills, [&](const Entry<Fill>& each) { return each.value.time > told.time; });
    if (fill != log.fills.end()) {
        proof.time = fill->value.time;
        if (told.odometer && fill->value.odometer && !fill->value.odometerReset)
            driven = *fill->value.odometer - *told.odometer;
    }
    if (!driven || *driven <= Distance())
        return std::nullopt;
    proof.distance = Estimate<Distance>{*driven, kTripMeterSd};
    return proof;
}

bool isLearnt(const Load& load, const VehicleLog& log)
{
    return std::ranges::any_of(log.fills, [&load](const Entry<Fill>& fill) {
        return fill.value.extent != FillExtent::partial && fill.value.time > load.since;
    });
}

Estimate<Fraction> byWord(Fraction more)
{
    // Such a word is a third of itself uncertain (judgement, no source).
    return {more, Fraction::fromRatio(std::abs(more.ratio()) / 3)};
}

namespace {

Estimate<Volume> leftSinceZero(Distance since, const CarKnowledge& car, const Question& question)
{
    Estimate<Volume> usable = car.reserve.reserve();
    Circumstances now = car.now();
    now.burnsMore = question.now.burnsMore;
    const Mix ahead = question.mode.empty() ? Mix{} : Mix{{question.mode, Distance::fromKm(1)}};
    const auto rate = car.consumption.model.forecast(ahead, now).rate;
    usable.mean -= rate.mean * since;
    usable.sd =
        Volume::fromLitres(std::hypot(usable.sd.litres(), (rate.sd * since).litres()));
    return usable;
}

} // namespace

Question questionOf(const std::optional<Told>& told, const std::optional<Load>& load,
                    const CarKnowledge& car, const std::string& mode)
{
    Question question;
    question.mode = mode;
    if (load)
        question.now.burnsMore = byWord(load->more);
    if (!told)
        return question;
    switch (told->what) {
    case Told::What::odometer:
        question.odometer = told->odometer;
        break;
    case Told::What::reading:
        question.signal = told->signal;
        question.signal2 = told->signal2;
        break;
    case Told::What::needleAtZero:
        // The needle is that of the vehicle's own tank.
        (car.further.empty() ? question.usable : question.tanks[std::string()].usable) =
            leftSinceZero(told->since.value_or(Distance()), car, question);
        break;
    }
    return question;
}

} // namespace undermark
