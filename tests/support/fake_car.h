// SPDX-License-Identifier: GPL-3.0-or-later
//
// An invented car for the tests of the screen; its distances come from the
// engine's range law, so that they fit each other.
#pragma once

#include "app/car_service.h"

namespace undermark::test {

class FakeCar : public CarService {
public:
    FakeCar();

    Result<NowState> now(const std::string& mode) override;
    Result<FillDraft> guessFill() override;
    Result<FillLesson> addFill(const FillDraft& fill) override;
    Result<void> undoFill(const std::string& entryId) override;

    // What the next calls answer; tests change it as they need.
    NowState state;
    FillDraft guess;
    FillLesson lesson;
    std::optional<Error> error; // answered instead, by every call

    // What was asked.
    std::vector<FillDraft> stored;
    std::vector<std::string> undone;
};

// The state of the invented car with so many litres above the zero mark.
NowState inventedState(double aboveZeroLitres);

} // namespace undermark::test
