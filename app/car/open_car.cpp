// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/open_car.h"

#include "app/car/demo_logbook.h"
#include "app/car/logbook_place.h"

namespace undermark {

Car openCar(const CarSource& source)
{
    const Existing existing = source.logbook ? Existing::refuse : Existing::replace;
    const std::filesystem::path file =
        source.logbook.value_or(source.demo ? demoLogbook() : defaultLogbook());
    std::error_code problem;
    if (source.demo) {
        if (const auto made = makeDemoLogbook(file, existing); !made)
            return Car::none(file, made.error());
    } else if (!std::filesystem::exists(file, problem)) {
        return Car::none(file);
    }
    auto car = Car::open(file, OpenMode::readWrite, source.demo ? demoTime() : Clock(systemTime));
    if (!car && car.error().code == ErrorCode::newerSchema)
        car = Car::open(file, OpenMode::readOnly);
    return car ? std::move(*car) : Car::none(file, car.error());
}

} // namespace undermark
