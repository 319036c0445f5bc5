// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/told.h"

#include <cmath>

namespace undermark {

std::optional<Instant> lastRecorded(const VehicleLog& log)
{
    std::optional<Instant> last;
    const auto take = [&last](Instant time) {
        if (!last || time > *last)
            last = time;
    };
    for (const Entry<Fill>& fill : log.fills)
        take(fill.value.time);
    for (const Entry<Trip>& trip : log.trips)
        take(trip.value.time);
    return last;
}

bool stillCounts(const Told& told, const VehicleLog& log)
{
    const auto last = lastRecorded(log);
    return !last || told.time >= *last;
}

Question questionOf(const Told& told, const CarKnowledge& car, const std::string& mode)
{
    Question question;
    question.mode = mode;
    switch (told.what) {
    case Told::What::odometer:
        question.odometer = told.odometer;
        break;
    case Told::What::reading:
        question.signal = told.signal;
        question.signal2 = told.signal2;
        break;
    case Told::What::needleAtZero: {
        Estimate<Volume> usable = car.reserve.reserve();
        if (told.since) {
            const auto rate = car.consumption.model
                                  .forecast(mode.empty() ? Mix{} : Mix{{mode, Distance::fromKm(1)}}, car.now())
                                  .rate;
            usable.mean -= rate.mean * *told.since;
            usable.sd = Volume::fromLitres(
                std::hypot(usable.sd.litres(), (rate.sd * *told.since).litres()));
        }
        question.usable = usable;
        break;
    }
    }
    return question;
}

} // namespace undermark
