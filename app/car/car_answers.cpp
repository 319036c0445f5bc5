// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/car_answers.h"

#include "app/car/told.h"
#include "engine/consumption/correction.h"
#include "engine/outlook/outlook.h"
#include "engine/tracking/sender_reading.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

std::vector<std::string> modeNames(const VehicleLog& log)
{
    std::vector<std::string> names;
    for (const Entry<Mode>& mode : log.modes)
        names.push_back(mode.value.name);
    return names;
}

std::vector<Notice> noticesOf(const CarKnowledge& car, const Outlook& now)
{
    std::vector<Notice> notices;
    for (const Sentence& warning : now.warnings)
        notices.push_back({Severity::warning, warning});
    for (const FillFlag& flag : car.consumption.flags)
        notices.push_back(
            {Severity::warning, Sentence::of("a fill is kept out: %1", flag.text)});
    for (const ProofFlag& flag : car.proofFlags)
        notices.push_back({Severity::warning, Sentence::of("a proof: %1", flag.text)});
    const auto noteErrors = [&](const CarKnowledge& tank) {
        for (const Finding& finding : tank.gauge.findings())
            if (finding.severity == Severity::error)
                notices.push_back({Severity::error, finding.text});
    };
    noteErrors(car);
    for (const CarKnowledge& tank : car.further)
        noteErrors(tank);
    return notices;
}

Volume atMost(Estimate<Volume> litres) { return litres.mean + 2.0 * litres.sd; }

// A tank that was never filled gives nothing; and by the log there is no more in all of them.
OtherTanks otherTanks(const CarKnowledge& car)
{
    OtherTanks others{.share = car.burnShare, .hold = {}, .comesOver = {}, .transfer = {}};
    bool allStated = true;
    for (std::size_t i = 0; i < car.further.size(); ++i) {
        const CarKnowledge& tank = car.further[i];
        if (!tank.inUse || tank.feed == TankFeed::shared)
            continue;
        const Volume holds = atMost(tank.reserve.usableCapacity());
        others.hold += holds;
        if (tank.feed != TankFeed::pumpedOver)
            continue;
        others.comesOver += holds;
        const auto& transfer = car.log.tanks[i].value.transfer;
        allStated = allStated && transfer;
        if (transfer)
            others.transfer = std::max(*transfer, others.transfer.value_or(*transfer));
    }
    if (!allStated)
        others.transfer.reset();
    const auto now = others.hold > Volume() ? outlook(car, {}) : fail(Error{});
    const Volume inAll = now ? atMost(now->usable) : others.hold;
    others.hold = std::min(others.hold, inAll);
    others.comesOver = std::min(others.comesOver, inAll);
    return others;
}

} // namespace

Result<NowState> nowState(const CarKnowledge& car, const Question& question)
{
    Result<Outlook> answer = outlook(car, question);
    if (!answer)
        return fail(answer.error());
    const Result<Distances> past = pastZero(car, question.mode, question.now);
    if (!past)
        return fail(past.error());
    std::vector<Notice> notices = noticesOf(car, *answer);
    const bool assumed = !car.gauge.isKnown() && !car.vehicle().zeroMark && car.log.proofs.empty();
    return NowState{car.vehicle().name, modeNames(car.log), std::move(*answer), *past,
                    lastRecorded(car.log), assumed, std::move(notices)};
}

Result<Observation> observationOf(const CarKnowledge& car)
{
    if (!car.gauge.isKnown())
        return fail(ErrorCode::notFound,
                    Sentence::of("the level cannot be followed before the sender is calibrated"));
    Observation start{car.gauge, trackerSettings(car.gauge)};
    const Estimate<Consumption> rate = car.consumption.model.forecast().rate;
    start.settings.rate = rate;
    start.settings.others = otherTanks(car);
    for (std::size_t i = 0; i < car.further.size(); ++i) {
        const CarKnowledge& tank = car.further[i];
        start.further.push_back({car.log.tanks[i].value.name, tank.feed, tank.gauge, tank.reserve.offset()});
    }
    return start;
}

Fill likelyFill(const CarKnowledge& car, Instant now, const Question& question, const std::string& tank)
{
    const CarKnowledge* further = car.tank(tank);
    const CarKnowledge& filled = further ? *further : car;
    Fill fill;
    fill.time = now;
    if (further)
        fill.tank = tank;
    const VehicleLog& log = car.log;
    if (!log.fills.empty())
        fill.pricePerLitre = log.fills.back().value.pricePerLitre;
    const Result<Outlook> outlook = undermark::outlook(car, question);
    if (!outlook) {   // a first fill: nothing to guess from but the tank
        fill.volume = filled.vehicle().capacity;
        return fill;
    }
    const bool unused = further && !further->inUse;
    const Volume takes = filled.reserve.usableCapacity().mean; // of this tank alone
    const Volume missing = std::max(Volume(), car.usableCapacity().mean - outlook->usable.mean);
    fill.volume = unused ? filled.vehicle().capacity : car.further.empty() ? missing : std::min(missing, takes);
    const auto last = std::find_if(car.fills.rbegin(), car.fills.rend(),
                                   [](const Fill& each) { return each.extent != FillExtent::partial; });
    const std::optional<Distance> since = outlook->likelySinceFill;
    if (last != car.fills.rend() && last->odometer && since)
        // whole km: that is what an odometer shows
        fill.odometer = Distance::fromKm(std::floor((*last->odometer + *since).km()));
    else
        fill.sinceLast = since;
    return fill;
}

FillLesson lessonOf(const EntryId& id, const CarKnowledge& before, const CarKnowledge& after)
{
    FillLesson lesson;
    lesson.entry = id;
    lesson.rate = {before.consumption.model.forecast().rate, after.consumption.model.forecast().rate};
    lesson.reserve = {before.hiddenReserve(), after.hiddenReserve()};
    for (const FillFlag& flag : after.consumption.flags) {
        const Entry<Fill>& entry = after.log.fills[flag.fill];
        if (!(entry.id == id))
            continue;
        lesson.flags.push_back({Severity::warning, flag.text});
        lesson.proposed = corrected(entry.value, flag);
    }
    return lesson;
}

} // namespace undermark
