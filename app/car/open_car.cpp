// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/open_car.h"

#include "app/car/demo_logbook.h"
#include "app/car/logbook_car.h"
#include "app/car/logbook_place.h"

#include <utility>

namespace undermark {

namespace {

Instant clockNow()
{
    return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

class UnavailableCar : public CarService {
public:
    explicit UnavailableCar(Error error) : m_error(std::move(error)) {}
    Result<NowState> now(const std::string&) override { return fail(m_error); }
    Result<FillDraft> guessFill() override { return fail(m_error); }
    Result<FillLesson> addFill(const FillDraft&) override { return fail(m_error); }
    Result<void> undoFill(const std::string&) override { return fail(m_error); }
    Result<std::shared_ptr<const CarKnowledge>> knowledge() override { return fail(m_error); }
    Result<void> revise(const std::string&, const LogValue&) override { return fail(m_error); }
    Result<void> takeBack(const std::string&) override { return fail(m_error); }
    Result<std::vector<LogVersion>> history(const std::string&, const LogValue&) override
    {
        return fail(m_error);
    }
    Result<void> saveCalibration(Calibration) override { return fail(m_error); }
    Result<std::vector<Entry<Vehicle>>> cars() override { return fail(m_error); }
    std::string shownCar() const override { return {}; }
    Result<void> showCar(const std::string&) override { return fail(m_error); }
    Result<void> setUp(const Vehicle&) override { return fail(m_error); }
    Result<void> showDemo() override { return fail(m_error); }
    Result<void> withLogbook(const LogbookWork&) override { return fail(m_error); }
    Result<void> readLogbook(const LogbookQuestion&) override { return fail(m_error); }
    bool writtenElsewhere() override { return false; }
    std::filesystem::path folder() const override { return defaultLogbook().parent_path(); }
    Instant time() const override { return clockNow(); }

private:
    Error m_error;
};

} // namespace

std::unique_ptr<CarService> unavailableCar(Error error)
{
    return std::make_unique<UnavailableCar>(std::move(error));
}

Result<std::unique_ptr<CarService>> openCar(const CarSource& source)
{
    const Existing existing = source.logbook ? Existing::refuse : Existing::replace;
    const std::filesystem::path file =
        source.logbook.value_or(source.demo ? demoLogbook() : defaultLogbook());
    std::error_code problem;
    if (!source.demo && !std::filesystem::exists(file, problem))
        return std::make_unique<LogbookCar>(std::nullopt, file, std::nullopt, clockNow);
    auto logbook = source.demo ? makeDemoLogbook(file, existing)
                               : Logbook::open(file, OpenMode::readWrite);
    if (!logbook && logbook.error().code == ErrorCode::newerSchema)
        logbook = Logbook::open(file, OpenMode::readOnly);   // where that one said it may be read
    if (!logbook)
        return fail(logbook.error());
    const auto vehicles = logbook->vehicles();
    if (!vehicles)
        return fail(vehicles.error());
    std::optional<EntryId> vehicle;
    if (!vehicles->empty())
        vehicle = vehicles->front().id;
    return std::make_unique<LogbookCar>(std::move(*logbook), file, vehicle, clockNow);
}

} // namespace undermark
