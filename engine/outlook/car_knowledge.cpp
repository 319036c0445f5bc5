// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/car_knowledge.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace undermark {

namespace {

std::optional<LevelReading> readLevel(const std::optional<CalibrationFit>& fit, Signal signal)
{
    if (!fit || !fit->curve)
        return std::nullopt;
    LevelReading reading = fit->curve->read(signal);
    if (reading.bound != LevelBound::atMost)   // at most so much is true as it stands
        reading.added.mean -= fit->readsHighBy;
    return reading;
}

std::optional<CalibrationSummary> summaryOf(const std::optional<CalibrationFit>& fit,
                                            const std::optional<Entry<Calibration>>& calibration)
{
    if (!fit || !fit->curve || !calibration)
        return std::nullopt;
    const LevelCurve& curve = *fit->curve;
    const Volume zero = calibration->value.zeroMark;
    // Where litres were poured and the signal read, the curve's shape between its
    // points does not matter: only the pour's own error and the reading's do.
    const auto measured = [&](Volume added) {
        const Volume pour = CalibrationOptions{}.pourSd.ratio() * added;
        return Volume::fromLitres(std::hypot(pour.litres(), fit->uncertainty.resolution.litres(),
                                             fit->uncertainty.readings.litres()));
    };
    const auto atZero = [&](const CalibrationPoint& point) { return point.added == zero; };
    const Volume zeroSd = std::ranges::any_of(calibration->value.points, atZero)
        ? measured(zero)
        : curve.read(curve.signalAt(zero)).added.sd;
    const Volume full = curve.highest().added + curve.highest().width;
    return CalibrationSummary{{zero, zeroSd}, {full, measured(full)}, std::nullopt};
}

// Both lobes' pours, and half a step of unequal emptying where zero lies between
// two points of the calibration.
CalibrationSummary summaryOf(const SaddleCurves& saddle, const Calibration& calibration)
{
    const auto top = [](const LevelCurve& curve) { return curve.highest().added + curve.highest().width; };
    const Volume full = top(saddle.first) + top(saddle.second);
    const auto sd = [&](Volume added) {
        const CalibrationPoint& nearest = *std::ranges::min_element(
            calibration.points, {}, [&](const CalibrationPoint& p) { return abs(p.added - added); });
        const Volume read = readSaddle(saddle, nearest.signal, *nearest.signal2).added.sd;
        return Volume::fromLitres(std::hypot(read.litres(), 0.5 * (nearest.added - added).litres()));
    };
    return {{calibration.zeroMark, sd(calibration.zeroMark)}, {full, sd(full)}, std::nullopt};
}

// Full fills that began at a known level: they check curve and meter, and may
// not shrink the reserve (hidden_reserve.h sees to that).
HiddenReserve withFills(HiddenReserve reserve, const VehicleLog& log,
                        const std::optional<CalibrationFit>& fit)
{
    for (const Entry<Fill>& entry : log.fills) {
        const Fill& fill = entry.value;
        if (!fit || fill.extent != FillExtent::full || !fill.signalBefore
            || fill.counted == std::optional(false))
            continue;
        const auto level = readLevel(fit, *fill.signalBefore);
        if (!level || level->bound != LevelBound::exact)
            continue;
        reserve = reserve.with(
            FullFill{fill.time, {fill.volume, kClickSd}, reserve.toZero(level->added)});
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
    if (proof.signal)
        if (const auto level = levelAt(car, *proof.signal); level && level->bound == LevelBound::exact)
            context.aboveZero = car.reserve.toZero(level->added);
    return context;
}

// Of the drives past zero in one mode only the farthest counts: alike drives are
// not independent evidence.
std::map<std::string, std::size_t> farthestDrives(const VehicleLog& log)
{
    std::map<std::string, std::size_t> farthest;
    for (std::size_t i = 0; i < log.proofs.size(); ++i) {
        const Proof& proof = log.proofs[i].value;
        if (proof.kind != ProofKind::pastZero || !proof.distance)
            continue;
        const auto [known, isNew] = farthest.emplace(proof.mode.value_or(std::string()), i);
        if (!isNew && log.proofs[known->second].value.distance->mean < proof.distance->mean)
            known->second = i;
    }
    return farthest;
}

void weighProofs(CarKnowledge& car)
{
    const auto farthest = farthestDrives(car.log);
    for (std::size_t i = 0; i < car.log.proofs.size(); ++i) {
        const Proof& proof = car.log.proofs[i].value;
        if (proof.kind == ProofKind::pastZero && proof.distance
            && farthest.at(proof.mode.value_or(std::string())) != i) {
            continue;
        }
        const Result<ProofOutcome> outcome = car.reserve.with(proof, contextOf(proof, car));
        if (!outcome) {
            car.proofFlags.push_back({i, Sentence::of("not used: %1", outcome.error().detail)});
            continue;
        }
        car.reserve = outcome->reserve;
        if (!car.reserve.evidence().empty() && std::abs(car.reserve.evidence().back().surprise) > 3)
            car.proofFlags.push_back(
                {i, Sentence::of("contradicts what was known: check the entry")});
    }
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

Screened learnConsumption(const VehicleLog& log, std::span<const Fill> fills,
                          const std::optional<CalibrationFit>& fit, const HiddenReserve& reserve)
{
    ScreenOptions options;
    options.capacity = std::max(log.vehicle.value.capacity, reserve.usableCapacity().mean);
    for (const Entry<Fill>& entry : log.fills)
        options.rulings.push_back(entry.value.counted);
    if (fit && fit->curve) {
        options.intervals.fullLevel = fit->curve->highest().added + fit->curve->highest().width;
        options.intervals.levelOf = [&fit](Signal signal) -> std::optional<Estimate<Volume>> {
            const auto level = readLevel(fit, signal);
            return level && level->bound == LevelBound::exact ? std::optional(level->added)
                                                              : std::nullopt;
        };
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

std::optional<LevelReading> levelAt(const CarKnowledge& car, Signal signal,
                                    std::optional<Signal> signal2)
{
    if (car.saddle)
        return signal2 ? std::optional(readSaddle(*car.saddle, signal, *signal2)) : std::nullopt;
    return readLevel(car.fit, signal);
}

Result<CarKnowledge> learn(VehicleLog log, CorrectionOptions corrections)
{
    std::optional<CalibrationFit> fit;
    std::optional<SaddleCurves> saddle;
    if (log.calibration && isSaddle(log.calibration->value.points)) {
        auto fitted = fitSaddle(log.calibration->value.points);
        if (!fitted)
            return fail(fitted.error());
        saddle = std::move(*fitted);
    } else if (log.calibration) {
        auto fitted = fitCalibration(log.calibration->value.points, log.vehicle.value.sender);
        if (!fitted)
            return fail(fitted.error());
        fit = std::move(*fitted);
    }
    const ReservePrior prior = priorFor(
        log.vehicle.value, saddle ? std::optional(summaryOf(*saddle, log.calibration->value))
                                  : summaryOf(fit, log.calibration));
    HiddenReserve reserve = withFills(HiddenReserve::fromPrior(prior), log, fit);
    corrections.fuel = log.vehicle.value.fuel;
    CorrectedFills corrected = correctFills(valuesOf(log.fills), corrections);
    Screened consumption = learnConsumption(log, corrected.fills, fit, reserve);
    CarKnowledge car{std::move(log),     std::move(fit),         std::move(saddle),
                     std::move(reserve), std::move(consumption), std::move(corrected), {}};
    weighProofs(car);
    return car;
}

} // namespace undermark
