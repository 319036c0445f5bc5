// SPDX-License-Identifier: GPL-3.0-or-later
//
// The seam between the touch screen and the logbook.
#pragma once

#include "app/car/car_service.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

namespace undermark {

// Which car the screen shows.
struct CarSource {
    std::optional<std::filesystem::path> logbook; // absent: the default place
    bool demo = false;                            // the demo car, in a logbook of its own
};

using CarOpener = std::function<Result<std::unique_ptr<CarService>>(const CarSource&)>;

// A car over the logbook. Errors: whatever keeps the logbook from being opened.
Result<std::unique_ptr<CarService>> openCar(const CarSource& source);

// A car that answers every question with the error that kept it from being
// opened, so that the screen can say why it has no number.
std::unique_ptr<CarService> unavailableCar(Error error);

} // namespace undermark
