// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/car_knowledge.h"

#include "engine/tank/proof_choice.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// Of a proof against what was known before it, in standard deviations.
constexpr double kSurprises = 3.0;
constexpr double kContradicts = 4.0;

std::optional<CalibrationSummary> summaryOf(const Gauge& gauge, const VehicleLog& log)
{
    if (!gauge.isKnown())
        return std::nullopt;
    return CalibrationSummary{gauge.knownDriving(log.calibration->value.zeroMark),
                              gauge.known(gauge.full()), std::nullopt};
}

// The level before a fill whose reading was noted and lay on no stop.
std::optional<Estimate<Volume>> exactLevel(const Gauge& gauge, Signal signal)
{
    const auto level = gauge.readDriving({signal, std::nullopt});
    return level && level->bound == LevelBound::exact ? std::optional(level->added) : std::nullopt;
}

// Full fills that began at a known level: they check curve and meter, and may
// not shrink the reserve (hidden_reserve.h sees to that).
HiddenReserve withFills(HiddenReserve reserve, const VehicleLog& log, const Gauge& gauge,
                        Volume clickSd)
{
    for (const Entry<Fill>& entry : log.fills) {
        const Fill& fill = entry.value;
        if (fill.extent != FillExtent::full || !fill.signalBefore
            || fill.counted == std::optional(false))
            continue;
        const auto level = exactLevel(gauge, *fill.signalBefore);
        if (!level)
            continue;
        reserve = reserve.with(
            FullFill{fill.time, {fill.volume, clickSd}, reserve.toZero(*level)});
    }
    return reserve;
}

ProofContext contextOf(const Proof& proof, const CarKnowledge& car)
{
    ProofContext context;
    const std::string mode = proof.mode.value_or(std::string());
    const Mix ahead = mode.empty() ? Mix{} : Mix{{mode, Distance::fromKm(1)}};
    const RateForecast rate = car.consumption.model.forecast(ahead);
    context.rate = rate.rate;
    context.routeVarianceL2PerKm = rate.tauSquaredPerKm;
    context.surgeMargin = car.surgeMargin(mode);
    context.readsHigh = car.gauge.readsHigh();
    if (proof.signal)
        if (const auto level = exactLevel(car.gauge, *proof.signal))
            context.aboveZero = car.reserve.toZero(*level);
    return context;
}

template <class T>
std::vector<T> valuesOf(const std::vector<Entry<T>>& entries)
{
    std::vector<T> values;
    values.reserve(entries.size());
    for (const Entry<T>& entry : entries)
        values.push_back(entry.value);
    return values;
}

std::vector<ProofUse> usesOfProofs(const CarKnowledge& car)
{
    std::vector<Instant> fills;
    for (const Entry<Fill>& fill : car.log.fills)
        fills.push_back(fill.value.time);
    const auto burnt = [&car](const Proof& proof) {
        const ProofContext context = contextOf(proof, car);
        return context.rate->mean * proof.distance->mean + context.surgeMargin;
    };
    return usesOfProofs(valuesOf(car.log.proofs), std::move(fills), burnt);
}

void weighProofs(CarKnowledge& car)
{
    const std::vector<ProofUse> uses = usesOfProofs(car);
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const Proof& proof = car.log.proofs[i].value;
        if (uses[i] == ProofUse::sameDrive)
            car.proofFlags.push_back(
                {i, Sentence::of("the same drive past zero as another entry: it counts once")});
        if (uses[i] != ProofUse::counts)
            continue;
        const Result<ProofOutcome> outcome = car.reserve.with(proof, contextOf(proof, car));
        if (!outcome) {
            car.proofFlags.push_back({i, Sentence::of("not used: %1", outcome.error().detail)});
            continue;
        }
        const double surprise = std::abs(outcome->reserve.evidence().back().surprise);
        if (surprise > kContradicts)
            car.proofFlags.push_back(
                {i, Sentence::of("contradicts what was known: it does not count before you say "
                                 "that it is right")});
        else if (surprise > kSurprises)
            car.proofFlags.push_back(
                {i, Sentence::of("contradicts what was known: check the entry")});
        if (surprise <= kContradicts)
            car.reserve = outcome->reserve;
    }
}

Screened learnConsumption(const VehicleLog& log, std::span<const Fill> fills,
                          const Gauge& gauge, const HiddenReserve& reserve)
{
    ScreenOptions options;
    options.capacity = std::max(log.vehicle.value.capacity, reserve.usableCapacity().mean);
    for (const Entry<Fill>& entry : log.fills)
        options.rulings.push_back(entry.value.counted);
    if (gauge.curve()) {
        options.intervals.fullLevel = gauge.full();
        options.intervals.levelOf = [&gauge](Signal signal) { return exactLevel(gauge, signal); };
    }
    ConsumptionSetup setup;
    setup.modes = valuesOf(log.modes);
    setup.facts = {log.vehicle.value.capacity, log.vehicle.value.fuel};
    return screen(fills, valuesOf(log.trips), ConsumptionModel(std::move(setup)), options);
}

} // namespace

Volume CarKnowledge::surgeMargin(const std::string& mode) const
{
    const auto found = vehicle().surgeMargin.find(mode);
    return found == vehicle().surgeMargin.end() ? Volume() : found->second;
}

Result<CarKnowledge> learn(VehicleLog log, CorrectionOptions corrections)
{
    Gauge gauge;
    if (log.calibration) {
        auto calibrated = Gauge::calibrate(log.calibration->value.points, log.vehicle.value.sender);
        if (!calibrated)
            return fail(calibrated.error());
        gauge = std::move(*calibrated);
    }
    const ReservePrior prior = priorFor(log.vehicle.value, summaryOf(gauge, log));
    HiddenReserve reserve = HiddenReserve::fromPrior(prior);
    corrections.fuel = log.vehicle.value.fuel;
    CorrectedFills corrected = correctFills(valuesOf(log.fills), corrections);
    Screened consumption = learnConsumption(log, corrected.fills, gauge, reserve);
    reserve = withFills(std::move(reserve), log, gauge, consumption.model.rates().clickSd);
    CarKnowledge car{std::move(log),         std::move(gauge),     std::move(reserve),
                     std::move(consumption), std::move(corrected), {}};
    weighProofs(car);
    return car;
}

} // namespace undermark
