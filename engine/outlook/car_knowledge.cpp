// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/car_knowledge.h"

#include "engine/outlook/several_tanks.h"
#include "engine/outlook/weigh_proofs.h"

#include <algorithm>
#include <cmath>
#include <map>

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
    ReservePrior prior = priorFor(log.vehicle.value, summaryOf(gauge, log, clickSd));
    if (gauge.isPrior()) { // litres count from the empty tank, not from the drained one
        prior.leftBehind = {};
        prior.linked = 0.0;
    }
    return HiddenReserve::fromPrior(prior);
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
        if (fill.tank || fill.extent != FillExtent::full || !fill.signalBefore
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

// What each fill's tank takes to the first click, `own` that of the vehicle's own. Tanks that
// share their level are filled through one neck.
std::vector<Volume> tanksFilled(const VehicleLog& log, Volume own)
{
    std::map<std::string, Volume> apart;
    for (const Entry<ExtraTank>& tank : log.tanks) {
        if (tank.value.feed == TankFeed::shared)
            own += tank.value.capacity;
        else
            apart[tank.value.name] = tank.value.capacity;
    }
    std::vector<Volume> filled;
    for (const Entry<Fill>& fill : log.fills) {
        const auto tank = apart.find(fill.value.tank.value_or(std::string()));
        filled.push_back(tank != apart.end() ? tank->second : own);
    }
    return filled;
}

Screened learnConsumption(const VehicleLog& log, std::span<const Fill> fills, const Gauge& gauge,
                          const WholeFills& whole)
{
    ScreenOptions options;
    options.capacity = std::max(log.vehicle.value.capacity,
                                beforeEvidence(gauge, log, Volume()).usableCapacity().mean);
    if (!log.tanks.empty())
        options.tankOfFill = tanksFilled(log, *options.capacity);
    for (const Entry<ExtraTank>& tank : log.tanks)
        if (whole.inUse.contains(tank.value.name))
            *options.capacity += tank.value.capacity;
    for (const Entry<Fill>& entry : log.fills)
        options.rulings.push_back(entry.value.counted);
    options.intervals.anew = whole.anew;
    if (gauge.curve() && log.tanks.empty()) { // one reading tells the level
        options.intervals.fullLevel = gauge.full();
        options.intervals.levelOf = [&gauge](Signal signal) { return exactLevel(gauge, signal); };
    }
    ConsumptionSetup setup;
    setup.modes = valuesOf(log.modes);
    setup.facts = {log.vehicle.value.capacity, log.vehicle.value.fuel, log.vehicle.value.massKg};
    return screen(fills, valuesOf(log.trips), ConsumptionModel(std::move(setup)), options);
}

Result<Gauge> gaugeOf(const VehicleLog& log)
{
    return log.calibration ? Gauge::of(log.calibration->value, log.vehicle.value.sender) : Gauge();
}

// The proofs of further tanks are flagged as the car's own are.
void flagAsOwn(const CarKnowledge& tank, CarKnowledge& car)
{
    for (const ProofFlag& flag : tank.proofFlags) {
        const auto proof = std::ranges::find(car.log.proofs, tank.log.proofs[flag.proof].id, &Entry<Proof>::id);
        car.proofFlags.push_back({std::size_t(proof - car.log.proofs.begin()), flag.text});
    }
}

// A car of this tank alone, with the rates of the whole car.
Result<CarKnowledge> learnFurther(const CarKnowledge& car, const ExtraTank& tank, const WholeFills& whole)
{
    VehicleLog log = logOfTank(car.log, tank);
    Result<Gauge> gauge = gaugeOf(log);
    if (!gauge)
        return fail(gauge.error());
    const Volume clickSd = kUsualClickSd; // that of the log is of all tanks together
    HiddenReserve reserve = withFills(beforeEvidence(*gauge, log, clickSd), log, *gauge, clickSd);
    CarKnowledge further{std::move(log), std::move(*gauge), std::move(reserve),
                         {car.consumption.model, {}, {}, {}}, {}, {}};
    further.fills = valuesOf(further.log.fills);
    further.clickSd = clickSd;
    further.feed = tank.feed;
    further.burnShare = burnShare(car.log, tank.name);
    if (const auto since = whole.inUse.find(tank.name); since != whole.inUse.end())
        further.inUse = since->second;
    weighProofs(further);
    return further;
}

} // namespace

Volume CarKnowledge::surgeMargin(const std::string& mode) const
{
    const auto found = vehicle().surgeMargin.find(mode);
    return found == vehicle().surgeMargin.end() ? Volume() : found->second;
}

Estimate<Volume> CarKnowledge::hiddenReserve() const
{
    return withFurther(reserve.reserve(), *this, [](const auto& tank) { return tank.reserve.reserve(); });
}

Estimate<Volume> CarKnowledge::usableCapacity() const
{
    return withFurther(reserve.usableCapacity(), *this,
                       [](const auto& tank) { return tank.reserve.usableCapacity(); });
}

const CarKnowledge* CarKnowledge::tank(const std::string& name) const
{
    for (std::size_t i = 0; i < further.size(); ++i)
        if (log.tanks[i].value.name == name)
            return &further[i];
    return nullptr;
}

Volume fullFillSd(const CarKnowledge& car)
{
    return Volume::fromLitres(std::hypot(car.usableCapacity().sd.litres(), car.clickSd.litres()));
}

Result<CarKnowledge> learn(VehicleLog log, CorrectionOptions corrections)
{
    Result<Gauge> gauge = gaugeOf(log);
    if (!gauge)
        return fail(gauge.error());
    WholeFills whole = wholeFills(log);
    corrections.fuel = log.vehicle.value.fuel;
    CorrectedFills corrected = correctFills(whole.fills, corrections);
    Screened consumption = learnConsumption(log, corrected.fills, *gauge, whole);
    const Volume clickSd = consumption.model.clickSd();
    HiddenReserve reserve = withFills(beforeEvidence(*gauge, log, clickSd), log, *gauge, clickSd);
    CarKnowledge car{std::move(log),         std::move(*gauge),    std::move(reserve),
                     std::move(consumption), std::move(corrected), {}};
    car.fills = std::move(whole.fills);
    car.clickSd = clickSd;
    car.burnShare = burnShare(car.log, {});
    weighProofs(car);
    for (const Entry<ExtraTank>& tank : car.log.tanks) {
        Result<CarKnowledge> further = learnFurther(car, tank.value, whole);
        if (!further)
            return fail(further.error());
        flagAsOwn(*further, car);
        car.further.push_back(std::move(*further));
    }
    return car;
}

} // namespace undermark
