// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/fake_car.h"

#include "app/car/demo_logbook.h"
#include "app/car/logbook_car.h"

#include <algorithm>
#include <cstdlib>

namespace undermark::test {

NowState inventedState(double aboveZeroLitres)
{
    const Estimate<Volume> aboveZero{Volume::fromLitres(aboveZeroLitres), Volume::fromLitres(0.6)};
    const Estimate<Volume> reserve{Volume::fromLitres(5.9), Volume::fromLitres(0.7)};
    const Estimate<Volume> usable{aboveZero.mean + reserve.mean, Volume::fromLitres(0.92)};
    const Estimate<Consumption> rate{Consumption::fromLitresPer100Km(8.1),
                                     Consumption::fromLitresPer100Km(0.35)};
    const RangeLaw toZero = *RangeLaw::make(aboveZero, rate);
    return {
        .vehicle = "Kestrel van",
        .mode = kOpenRoad,
        .modes = {kStandardModes.begin(), kStandardModes.end()},
        .sinceFill = Distance::fromKm(312.4),
        .aboveZero = aboveZero,
        .reserve = reserve,
        .rate = rate,
        .toZero = toZero,
        .toDry = toZero.withFuel(usable),
        .places = {{"Ferry ramp", Distance::fromKm(96)}, {"Mill bridge", Distance::fromKm(181)}},
        .notices = {},
        .why = Sentence::just("Rate from 9 full fills; level from the last reading, 4 km ago; "
                              "reserve from base and drain.")};
}

FakeCar::FakeCar() : state(inventedState(13.8)), m_folder(std::make_unique<TestFolder>())
{
    guess = {Volume::fromLitres(41.5), Distance::fromKm(48210), Distance::fromKm(312),
             FillExtent::full, 1.759};
    lesson.entryId = "fill-1";
    lesson.rate = {state.rate, Estimate<Consumption>{Consumption::fromLitresPer100Km(8.3),
                                                     Consumption::fromLitresPer100Km(0.31)}};
    lesson.reserve = {state.reserve, state.reserve};
}

Result<NowState> FakeCar::now(const std::string& mode)
{
    if (error)
        return fail(*error);
    if (mode.empty())
        return state;
    if (std::ranges::find(state.modes, mode) == state.modes.end()) {
        Error unknown;
        unknown.code = ErrorCode::notFound;
        unknown.detail = Sentence::just("no such driving mode");
        return fail(unknown);
    }
    state.mode = mode;
    return state;
}

Result<FillDraft> FakeCar::guessFill()
{
    if (error)
        return fail(*error);
    return guess;
}

Result<FillLesson> FakeCar::addFill(const FillDraft& fill)
{
    if (error)
        return fail(*error);
    stored.push_back(fill);
    return lesson;
}

Result<void> FakeCar::undoFill(const std::string& entryId)
{
    if (error)
        return fail(*error);
    undone.push_back(entryId);
    return {};
}

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

namespace {

std::unique_ptr<CarService> firstCarOf(Logbook logbook, const std::filesystem::path& file)
{
    using namespace std::chrono;
    const EntryId vehicle = logbook.vehicles()->front().id;
    const Instant now = sys_days{year{2026} / 9 / 1} + hours(12);
    return std::make_unique<LogbookCar>(std::move(logbook), file, vehicle, [now] { return now; });
}

} // namespace

std::unique_ptr<CarService> demoCar(const std::filesystem::path& folder)
{
    const std::filesystem::path file = folder / "demo.sqlite";
    return firstCarOf(std::move(*makeDemoLogbook(file, Existing::refuse)), file);
}

std::unique_ptr<CarService> reopenedCar(const std::filesystem::path& folder)
{
    const std::filesystem::path file = folder / "demo.sqlite";
    return firstCarOf(std::move(*Logbook::open(file, OpenMode::readWrite)), file);
}

std::unique_ptr<CarService> emptyCar(const std::filesystem::path& folder)
{
    using namespace std::chrono;
    return std::make_unique<LogbookCar>(std::nullopt, folder / "new.sqlite", std::nullopt, [] {
        return Instant(sys_days{year{2026} / 9 / 1} + hours(12));
    });
}

CarService& FakeCar::demo()
{
    if (!m_demo)
        m_demo = demoCar(m_folder->path);
    return *m_demo;
}

Result<std::shared_ptr<const CarKnowledge>> FakeCar::knowledge()
{
    if (error)
        return fail(*error);
    return demo().knowledge();
}

Result<void> FakeCar::revise(const std::string& entryId, const LogValue& value)
{
    return demo().revise(entryId, value);
}

Result<void> FakeCar::takeBack(const std::string& entryId)
{
    return demo().takeBack(entryId);
}

Result<std::vector<LogVersion>> FakeCar::history(const std::string& entryId, const LogValue& kind)
{
    return demo().history(entryId, kind);
}

Result<void> FakeCar::saveCalibration(Calibration calibration)
{
    return demo().saveCalibration(std::move(calibration));
}

Result<std::vector<Entry<Vehicle>>> FakeCar::cars()
{
    Entry<Vehicle> van;
    van.id.uuid = shownCar();
    van.value.name = state.vehicle;
    return std::vector<Entry<Vehicle>>{van};
}

Result<void> FakeCar::showCar(const std::string& id)
{
    if (id == shownCar())
        return {};
    return fail(ErrorCode::notFound, Sentence::just("no such car"));
}

Result<void> FakeCar::setUp(const Vehicle& vehicle)
{
    return demo().setUp(vehicle);
}

Result<void> FakeCar::showDemo()
{
    return {};
}

Result<void> FakeCar::withLogbook(const LogbookWork& work)
{
    return demo().withLogbook(work);
}

Result<void> FakeCar::readLogbook(const LogbookQuestion& question)
{
    if (error)
        return fail(*error);
    return demo().readLogbook(question);
}

Instant FakeCar::time() const
{
    using namespace std::chrono;
    return sys_days{year{2026} / 9 / 1} + hours(12) + seconds(m_asked++);
}

} // namespace undermark::test
