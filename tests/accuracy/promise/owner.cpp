// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/accuracy/promise/owner.h"

namespace undermark::test {

namespace {

double rateOf(Kind kind, Random& random)
{
    const KindRanges& range = kKindRanges[std::size_t(kind)];
    return std::exp(between(random, std::log(range.leastLPer100Km), std::log(range.mostLPer100Km)));
}

double rounded(double value, double step) { return std::round(value / step) * step; }

// As somebody in a hurry types it.
double mistyped(double value, Random& random)
{
    switch (random() % 4) {
    case 0: return value / kLitresPerUsGallon;
    case 1: return value * 10.0;
    case 2: return value + 10.0;
    default: return std::max(1.0, value - 10.0);
    }
}

} // namespace

Owner::Owner(Kind kind, int points, const std::filesystem::path& folder, std::uint64_t seed)
    : m_random(seed), m_machine(kind, m_random), m_driving(kind, rateOf(kind, m_random), m_random),
      m_clock(std::make_shared<Instant>(m_driving.time())),
      m_car(Car::none(folder / (std::to_string(seed) + ".sqlite"), {}, [clock = m_clock] { return *clock; })),
      m_isHonest(chance(m_random, 0.5)), m_logsTrips(chance(m_random, 0.25)),
      m_notesReadings(chance(m_random, 0.3)),
      m_partialShare(chance(m_random, 0.5) ? between(m_random, 0.05, 0.3) : 0.0),
      m_meter(std::exp(normal(m_random, 0.002))), m_odometerKm(rounded(between(m_random, 5e3, 2e5), 1.0))
{
    Vehicle vehicle;
    vehicle.name = kKinds[std::size_t(kind)];
    const double stated = (m_machine.clickL - m_machine.leftL) * std::exp(normal(m_random, 0.02));
    vehicle.capacity = Volume::fromLitres(rounded(stated, stated > 20.0 ? 1.0 : 0.1));
    if (chance(m_random, 0.5))
        vehicle.sender.resolution = Signal::of(m_machine.sender.step());
    if (kind == Kind::truck)
        vehicle.fuel = FuelKind::diesel;
    m_car.setUp(vehicle).value();
    Calibration calibration = m_machine.calibrate(points, m_random);
    calibration.time = *m_clock;
    m_car.record(calibration).value();
    m_litres = m_machine.click(m_random);
}

void Owner::changeOfLife()
{
    ++m_tanksSinceChange;
    const auto change = [&](double factor) {
        m_driving.burnMore(factor);
        m_tanksSinceChange = 0;
    };
    if (m_boxTanks > 0 && --m_boxTanks == 0)
        change(1.0 / m_box);
    if (m_boxTanks > 0)
        m_tanksSinceChange = 0;
    if (m_boxTanks == 0 && chance(m_random, 0.02)) {   // a roof box, for some tanks
        m_box = between(m_random, 1.05, 1.2);
        m_boxTanks = 1 + int(m_random() % 4);
        change(m_box);
    }
    if (chance(m_random, 0.015))                       // another driver, another job
        change(std::exp(normal(m_random, 0.1)));
}

void Owner::hitch(double factor)
{
    m_driving.burnMore(factor);
    m_tanksSinceChange = 0;
}

void Owner::driveTo(double litres)
{
    while (m_litres > litres) {
        const Drive drive = m_driving.next(m_random);
        // Nobody sets out on more than there is: a long way is cut by a stop.
        const double share = std::min(1.0, (m_litres - 0.5 * (litres + m_machine.unusableL)) / drive.litres);
        m_litres -= share * drive.litres;
        m_odometerKm += share * drive.km;
        m_stretch.km += share * drive.km;
        m_stretch.byMode[drive.mode] += share * drive.km;
    }
    *m_clock = m_driving.time();
}

// Whole kilometres by mode; one trip in fifteen is forgotten.
void Owner::logTrips()
{
    for (const auto& [mode, km] : m_stretch.byMode) {
        if (!m_logsTrips || km < 1.0 || chance(m_random, 1.0 / 15.0))
            continue;
        Trip trip;
        trip.time = *m_clock - std::chrono::seconds(60);
        trip.distance = Distance::fromKm(std::round(km));
        trip.mode = mode;
        m_car.record(trip).value();
    }
    m_stretch = {};
}

void Owner::record(double pouredL, bool full, bool truthful, std::optional<double> reading)
{
    Fill fill;
    fill.time = *m_clock;
    fill.extent = full ? FillExtent::full : FillExtent::partial;
    double litres = pouredL * m_meter * std::exp(normal(m_random, 0.002));
    double odometer = rounded(m_odometerKm, m_machine.kind == Kind::kart ? 0.1 : 1.0);
    if (!truthful && chance(m_random, 0.02)) {
        if (chance(m_random, 0.5))
            litres = mistyped(litres, m_random);
        else
            odometer += chance(m_random, 0.5) ? 100.0 : 10.0;
    }
    fill.volume = Volume::fromLitres(rounded(litres, 0.01));
    fill.odometer = Distance::fromKm(odometer);
    if (reading)
        fill.signalBefore = Signal::of(*reading);
    m_car.record(fill).value();
    ++m_fills;
}

void Owner::fill(bool truthful)
{
    changeOfLife();
    const double spanL = m_machine.clickL - m_machine.zeroL;
    const double share = chance(m_random, 0.1) ? between(m_random, 0.4, 0.8) : between(m_random, 0.03, 0.4);
    const double least = m_machine.unusableL + 0.03 * m_machine.clickL;
    driveTo(std::max(least, std::min(m_machine.zeroL + share * spanL, m_litres - 0.05 * spanL)));
    logTrips();
    const std::optional<double> reading = m_notesReadings
        ? std::optional(m_machine.reading(m_litres, false, m_random)) : std::nullopt;
    const double before = m_litres;
    const bool full = truthful || !chance(m_random, m_partialShare);
    const double target = m_machine.click(m_random);
    m_litres = full ? std::max(target, m_litres + 0.1) : m_litres + between(m_random, 0.2, 0.8) * (target - m_litres);
    if (!truthful && !m_isHonest && chance(m_random, 0.03))
        return;   // forgotten
    const bool partialCalledFull = !full && !m_isHonest && chance(m_random, 0.1);
    record(m_litres - before, full || partialCalledFull, truthful || m_isHonest, reading);
}

void Owner::toNextFill() { fill(false); }
void Owner::toNextFullFill() { fill(true); }

Run Owner::ahead(double part)
{
    Driving driving = m_driving;
    const double partL = m_machine.zeroL + part * (m_machine.clickL - m_machine.zeroL);
    const double dryL = m_machine.starves(m_random);
    Run run;
    double litres = m_litres, km = 0.0;
    const auto crossed = [&](const Drive& drive, double limit) {
        return litres >= limit && litres - drive.litres < limit
            ? std::optional(km + drive.km * (litres - limit) / drive.litres) : std::nullopt;
    };
    while (litres > std::min(dryL, m_machine.zeroL)) {
        const Drive drive = driving.next(m_random);
        if (const auto at = crossed(drive, partL)) {
            run.partKm = *at;
            run.partTime = driving.time();
            run.readAtRest = m_machine.reading(partL, false, m_random);
            run.readMoving = m_machine.reading(partL, true, m_random);
        }
        run.toZeroKm = crossed(drive, m_machine.zeroL).value_or(run.toZeroKm);
        run.toDryKm = crossed(drive, dryL).value_or(run.toDryKm);
        litres -= drive.litres;
        km += drive.km;
    }
    return run;
}

} // namespace undermark::test
