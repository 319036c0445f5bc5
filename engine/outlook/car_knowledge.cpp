// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/car_knowledge.h"

#include "engine/calibration/lobes.h"
#include "engine/outlook/weigh_proofs.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

// The calibration's full is one click: the level that clicks scatter about is not better
// known than by that one.
std::optional<CalibrationSummary> summaryOf(const Gauge& gauge, const VehicleLog& log, Volume clickSd)
{
    if (!gauge.isKnown())
        return std::nullopt;
    Estimate<Volume> full = gauge.known(gauge.full());
    full.sd = Volume::fromLitres(std::hypot(full.sd.litres(), clickSd.litres()));
    return CalibrationSummary{gauge.knownDriving(log.calibration->value.zeroMark), full, std::nullopt};
}

HiddenReserve beforeEvidence(const Gauge& gauge, const VehicleLog& log, Volume clickSd)
{
    return HiddenReserve::fromPrior(priorFor(log.vehicle.value, summaryOf(gauge, log, clickSd)));
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
                          const Gauge& gauge)
{
    ScreenOptions options;
    options.capacity = std::max(log.vehicle.value.capacity,
                                beforeEvidence(gauge, log, Volume()).usableCapacity().mean);
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

Volume fullFillSd(const CarKnowledge& car)
{
    return Volume::fromLitres(std::hypot(car.reserve.usableCapacity().sd.litres(),
                                         car.consumption.model.clickSd().litres()));
}

Result<CarKnowledge> learn(VehicleLog log, CorrectionOptions corrections)
{
    Gauge gauge;
    if (log.calibration) {
        auto calibrated = Gauge::calibrate(log.calibration->value.points, log.vehicle.value.sender);
        if (!calibrated)
            return fail(calibrated.error());
        gauge = std::move(*calibrated);
        if (const auto& lobes = log.calibration->value.lobes)
            gauge = gauge.inSeries(seriesSpread(lobes->first, lobes->second));
    }
    corrections.fuel = log.vehicle.value.fuel;
    CorrectedFills corrected = correctFills(valuesOf(log.fills), corrections);
    Screened consumption = learnConsumption(log, corrected.fills, gauge);
    const Volume clickSd = consumption.model.clickSd();
    HiddenReserve reserve = withFills(beforeEvidence(gauge, log, clickSd), log, gauge, clickSd);
    CarKnowledge car{std::move(log),         std::move(gauge),     std::move(reserve),
                     std::move(consumption), std::move(corrected), {}, {}};
    weighProofs(car);
    return car;
}

} // namespace undermark
