// SPDX-License-Identifier: GPL-3.0-or-later
//
// The car that the touch screen starts with.
#pragma once

#include "app/car/car.h"

namespace undermark {

struct CarSource {
    std::optional<std::filesystem::path> logbook; // absent: the default place
    bool demo = false;                            // the demo car, in a logbook of its own
};

using CarOpener = std::function<Car(const CarSource&)>;

// Always a car: where its logbook cannot be opened, one that answers with the reason, so
// that the screen can say why it has no number. A newer Undermark's logbook is opened for
// reading where that one said it may be read.
Car openCar(const CarSource& source);

} // namespace undermark
