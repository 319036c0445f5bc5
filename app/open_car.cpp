// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_car.h"

#include "app/logbook_car.h"
#include "app/logbook_place.h"
#include "engine/demo/demo_logbook.h"

#include <utility>

namespace undermark {

namespace {

class UnavailableCar : public CarService {
public:
    explicit UnavailableCar(Error error) : m_error(std::move(error)) {}
    Result<NowState> now(const std::string&) override { return fail(m_error); }
    Result<FillDraft> guessFill() override { return fail(m_error); }
    Result<FillLesson> addFill(const FillDraft&) override { return fail(m_error); }
    Result<void> undoFill(const std::string&) override { return fail(m_error); }

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
    auto logbook = source.demo ? makeDemoLogbook(source.logbook.value_or(demoLogbook()), existing)
                               : Logbook::open(source.logbook.value_or(defaultLogbook()),
                                               OpenMode::readWrite);
    if (!logbook)
        return fail(logbook.error());
    const auto vehicles = logbook->vehicles();
    if (!vehicles)
        return fail(vehicles.error());
    if (vehicles->empty())
        return fail(Error{ErrorCode::notFound, "the logbook has no vehicle yet", {}, 0, {}, {}, {}});
    const auto clock = [] {
        return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    };
    return std::make_unique<LogbookCar>(std::move(*logbook), vehicles->front().id, clock);
}

} // namespace undermark
