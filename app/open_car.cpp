// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_car.h"

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

// The seam: the logbook's car (app/logbook_car.h) and the demo logbook belong
// here. Until they are joined, the screen says so instead of inventing a car.
Result<std::unique_ptr<CarService>> openCar(const CarSource& source)
{
    Error error;
    error.code = ErrorCode::internal;
    error.detail =
        source.demo ? "This build has no demo logbook yet" : "This build cannot open a logbook yet";
    return fail(error);
}

} // namespace undermark
