// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/test_car.h"

#include "app/car/demo_logbook.h"

#include <cstdlib>

namespace undermark::test {

TestFolder::TestFolder()
{
    std::string name = (std::filesystem::temp_directory_path() / "undermark-XXXXXX").string();
    path = mkdtemp(name.data());
}

TestFolder::~TestFolder()
{
    std::error_code ignored;
    std::filesystem::remove_all(path, ignored);
}

Instant testTime()
{
    using namespace std::chrono;
    return sys_days{year{2026} / 9 / 1} + hours(12);
}

Car demoCar(const std::filesystem::path& folder, const Clock& clock)
{
    // Made once, then copied: a page's test opens some hundred of them.
    static const TestFolder made;
    const std::filesystem::path whole = made.path / "demo.sqlite", file = folder / "demo.sqlite";
    if (!std::filesystem::exists(whole) && !makeDemoLogbook(whole, Existing::refuse))
        std::abort();
    std::filesystem::copy_file(whole, file);
    return Car::open(file, OpenMode::readWrite, clock).value();
}

Car reopenedCar(const std::filesystem::path& folder, OpenMode mode)
{
    return Car::open(folder / "demo.sqlite", mode, testTime).value();
}

Car emptyCar(const std::filesystem::path& folder, const Clock& clock)
{
    return Car::none(folder / "new.sqlite", {}, clock);
}

Clock Bench::clock() const
{
    return [time = wallClock] { return *time; };
}

void drive(Car& car, double km, const std::string& mode)
{
    Trip trip;
    trip.time = car.time();
    trip.distance = Distance::fromKm(km);
    trip.mode = mode;
    car.record(trip).value();
}

Fill lastFill(Car& car)
{
    return car.knowledge().value()->log.fills.back().value;
}

namespace {

void fillUp(Car& car, double litres, double odometerKm)
{
    Fill fill;
    fill.time = car.time();
    fill.volume = Volume::fromLitres(litres);
    fill.odometer = Distance::fromKm(odometerKm);
    car.record(fill).value();
}

// The first fill typed in gallons, the second with a can filled too.
void fillOddly(Car& car)
{
    const double odometer = lastFill(car).odometer->km();
    fillUp(car, 5.5, odometer + 276);
    fillUp(car, 52, odometer + 276 + 310);
    drive(car, 280);
}

void useLargeTank(Car& car)
{
    Vehicle lorry;
    lorry.name = "Long-wheelbase expedition lorry with both tanks joined";
    lorry.capacity = Volume::fromLitres(120);
    lorry.zeroMark = Volume::fromLitres(6);
    car.setUp(lorry).value();
    fillUp(car, 118, 200'100);
    fillUp(car, 71, 201'000);
    drive(car, 40);
}

void keepMany(Car& car)
{
    const Entry<Vehicle> first = car.vehicle().value();
    Calibration calibration = car.log().value().calibration->value;
    HandOverRecord handOver;
    handOver.time = car.time() - std::chrono::days(500);
    car.record(handOver).value();
    for (int number = 2; number <= 30; ++number) {
        Vehicle vehicle = first.value;
        vehicle.name = "Rally car " + std::to_string(number);
        car.setUp(vehicle).value();
        calibration.time = car.time() - std::chrono::days(800);
        if (number == 7)
            car.record(calibration).value();
    }
    (void)car.showCar(first.id.uuid);
}

} // namespace

ExtraTank auxTank()
{
    ExtraTank aux;
    aux.name = "aux";
    aux.capacity = Volume::fromLitres(30);
    aux.feed = TankFeed::chosen;
    return aux;
}

void addAuxTank(Car& car, bool used)
{
    car.record(auxTank()).value();
    if (!used)
        return;
    Fill fill = lastFill(car);
    fill.time += std::chrono::minutes(5);
    fill.volume = Volume::fromLitres(28);
    fill.extent = FillExtent::full;
    fill.tank = "aux";
    car.record(fill).value();
}

Car carInState(const std::string& state, const std::filesystem::path& folder)
{
    if (state == "unknown")
        return Car::none(folder / "demo.sqlite",
                         failInput(Sentence::just("no reading and no fill yet"),
                                   Sentence::just("one of them"), "an empty logbook")
                             .value());
    Car car = demoCar(folder);
    if (state == "low")
        drive(car, 350);
    if (state == "warned")
        fillOddly(car);
    if (state == "far")
        useLargeTank(car);
    if (state == "workshop")
        keepMany(car);
    if (state == "tanks")
        addAuxTank(car, true);
    return car;
}

} // namespace undermark::test
