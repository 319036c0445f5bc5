// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/demo_logbook.h"

#include <system_error>

namespace undermark {

namespace {

using namespace std::chrono_literals;

constexpr auto kFirstDay = std::chrono::sys_days{std::chrono::year{2026} / 4 / 3};

Volume litres(double v) { return Volume::fromLitres(v); }
Distance km(double v) { return Distance::fromKm(v); }

Vehicle demoVehicle()
{
    Vehicle car;
    car.name = "Ouzel wagon";
    car.capacity = litres(52);
    car.leftBehind = Estimate<Volume>{litres(1.6), litres(0.5)};
    car.lamp = litres(8);
    car.surgeMargin[kSpecialStage] = litres(1.5);
    car.sender.circuit = CircuitKind::resistive;
    car.sender.unit = "V";
    car.sender.supplyVolts = 5.0;
    car.sender.pullUpOhms = 220.0;
    return car;
}

// Drained, 5 L as the base that is called zero, then pours to the first click.
Calibration demoCalibration()
{
    struct Row {
        double litres, volts;
    };
    constexpr Row kRows[] = {{0, 3.02}, {5, 2.84},  {10, 2.61}, {15, 2.37}, {20, 2.13},
                             {25, 1.88}, {30, 1.62}, {35, 1.35}, {40, 1.08}, {45, 0.80}, {50, 0.55}};
    Calibration calibration;
    calibration.time = kFirstDay + 9h;
    calibration.zeroMark = litres(5);
    for (const Row& row : kRows) {
        CalibrationPoint point{litres(row.litres), Signal::of(row.volts), std::nullopt, Signal::of(0.008), 5};
        calibration.points.push_back(point);
    }
    return calibration;
}

// One tank: the driving since the last fill, and the fill.
struct DemoTank {
    int day;   // since kFirstDay
    double townKm, openRoadKm, motorwayKm, litres, pricePerLitre;
};

constexpr DemoTank kTanks[] = {
    {12, 142.6, 301.4, 0.0, 34.92, 1.729},  {24, 168.3, 240.8, 96.2, 40.71, 1.744},
    {33, 88.9, 402.5, 0.0, 36.48, 1.699},   {47, 201.7, 188.4, 0.0, 33.86, 1.715},
    {58, 64.2, 276.3, 188.0, 41.35, 1.752}, {71, 155.1, 322.9, 0.0, 37.29, 1.738},
    {84, 122.8, 214.6, 141.7, 38.04, 1.721}, {96, 96.4, 371.2, 0.0, 34.97, 1.709},
    {109, 187.5, 256.1, 0.0, 36.12, 1.733}, {121, 71.6, 198.7, 232.4, 39.88, 1.748},
    {134, 133.9, 344.8, 0.0, 37.66, 1.726}, {148, 118.2, 289.6, 84.3, 38.43, 1.719},
};

struct Entries {
    std::vector<Fill> fills;
    std::vector<Trip> trips;
    std::vector<Proof> proofs;
};

void addTrip(Entries& entries, Instant time, double distanceKm, const char* mode, int starts)
{
    if (distanceKm > 0)
        entries.trips.push_back({time, km(distanceKm), mode, std::nullopt, starts});
}

Entries demoEntries()
{
    Entries entries;
    double odometerKm = 148'206;
    Fill first;
    first.time = kFirstDay + 15h;
    first.volume = litres(50.2);
    first.odometer = km(odometerKm);
    first.pricePerLitre = 1.722;
    entries.fills.push_back(first);
    for (const DemoTank& tank : kTanks) {
        const Instant time = kFirstDay + std::chrono::days(tank.day) + 17h;
        addTrip(entries, time - 70h, tank.townKm, kTown, 9);
        addTrip(entries, time - 40h, tank.openRoadKm, kOpenRoad, 4);
        addTrip(entries, time - 20h, tank.motorwayKm, kMotorway, 1);
        odometerKm += tank.townKm + tank.openRoadKm + tank.motorwayKm;
        Fill fill;
        fill.time = time;
        fill.volume = litres(tank.litres);
        fill.odometer = km(odometerKm);
        fill.pricePerLitre = tank.pricePerLitre;
        entries.fills.push_back(fill);
    }
    const Instant last = entries.fills.back().time;
    addTrip(entries, last + 20h, 61.3, kTown, 3);
    addTrip(entries, last + 44h, 214.9, kOpenRoad, 2);

    Proof drained;
    drained.time = kFirstDay + 10h;
    drained.kind = ProofKind::drained;
    drained.leftBehind = Estimate<Volume>{litres(1.3), litres(0.2)};
    entries.proofs.push_back(drained);
    Proof past;
    past.time = kFirstDay + std::chrono::days(71) + 16h;
    past.kind = ProofKind::pastZero;
    past.distance = Estimate<Distance>{km(31), km(0.5)};
    past.mode = kOpenRoad;
    entries.proofs.push_back(past);
    return entries;
}

} // namespace

Instant demoDay() { return kFirstDay + std::chrono::days(151); }

Result<EntryId> writeDemo(Logbook& logbook)
{
    const Instant now = demoDay();
    const Result<EntryId> car = logbook.addVehicle(demoVehicle(), now);
    if (!car)
        return car;
    const Entries entries = demoEntries();
    if (const auto added = logbook.add(*car, demoCalibration(), now); !added)
        return added;
    if (const auto added = logbook.addAll<Fill>(*car, entries.fills, now); !added)
        return fail(added.error());
    if (const auto added = logbook.addAll<Trip>(*car, entries.trips, now); !added)
        return fail(added.error());
    if (const auto added = logbook.addAll<Proof>(*car, entries.proofs, now); !added)
        return fail(added.error());
    return car;
}

Result<void> makeDemoLogbook(const std::filesystem::path& file, Existing existing)
{
    std::error_code problem;
    if (existing == Existing::refuse && std::filesystem::exists(file, problem))
        return fail(ErrorCode::badInput,
                    Sentence::of("this file exists: a demo never writes over a logbook"),
                    {file.string()});
    std::filesystem::path fresh = file;
    fresh += ".new";
    for (const char* side : {"", "-wal", "-shm"}) {
        std::filesystem::remove(std::filesystem::path(fresh) += side, problem);
    }
    {
        auto logbook = Logbook::open(fresh, OpenMode::createIfMissing);
        if (!logbook)
            return fail(logbook.error());
        if (const auto written = writeDemo(*logbook); !written)
            return fail(written.error());
    }   // closing the last connection folds the write-ahead log into the file
    for (const char* side : {"-wal", "-shm"})
        std::filesystem::remove(std::filesystem::path(file) += side, problem);
    std::filesystem::rename(fresh, file, problem);
    if (problem)
        return fail(ErrorCode::fileAccess, Sentence::just(problem.message()), {file.string()});
    return {};
}

Route demoRoute()
{
    const auto point = [](double at, const char* name, const char* mode, FuelSource fuel,
                          std::optional<double> price = {}, bool timed = false) {
        RoutePoint p;
        p.at = km(at);
        p.name = name;
        p.mode = mode;
        p.fuel = fuel;
        p.pricePerLitre = price;
        p.timed = timed;
        return p;
    };
    const FuelSource none = FuelSource::none;
    return {{
        point(0, "Stenwick start", kOpenRoad, none),
        point(58.4, "Callow stage 1", kSpecialStage, none, {}, true),
        point(77.1, "Callow end", kOpenRoad, none),
        point(118.6, "Harrow Mill pump", kOpenRoad, FuelSource::pump, 1.809),
        point(151.2, "Weir stage 2", kSpecialStage, none, {}, true),
        point(174.8, "Weir end", kOpenRoad, none),
        point(203.5, "Zone at Linfold", kOpenRoad, FuelSource::zone, 2.150),
        point(241.9, "Quarry stage 3", kSpecialStage, none, {}, true),
        point(263.2, "Quarry end", kOpenRoad, none),
        point(322.7, "Stenwick finish", kOpenRoad, none),
    }};
}

} // namespace undermark
