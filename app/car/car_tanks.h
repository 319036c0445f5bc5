// SPDX-License-Identifier: GPL-3.0-or-later
//
// One of a car's tanks: the vehicle's own, or a further one by its name. Empty: the own.
#pragma once

#include "app/car/car.h"

#include <optional>
#include <string>
#include <vector>

namespace undermark {

// The name as records have it: nothing for the vehicle's own.
std::optional<std::string> tankName(const std::string& tank);
// "STEM.pdf" of the vehicle's own tank, "STEM-aux.pdf" of a further one; what of its name is
// neither letter nor digit is a dash.
std::string fileOfTank(const std::string& stem, const std::string& extension, const std::string& tank);
// Of the further ones, in order of recording.
std::vector<std::string> furtherNames(const VehicleLog& log);
// Which one a source of live values is of, as ofTank() has it (engine/signals/sample.h): nothing is
// the vehicle's own. notFound, with those that there are; badInput for one that cannot be heard.
Result<std::size_t> placeOfTank(const std::vector<std::string>& tanks, const std::optional<std::string>& tank);
// notFound, with those that there are.
Result<Entry<ExtraTank>> furtherTank(const VehicleLog& log, const std::string& name);
// What is known of it: the car of that tank alone. notFound.
Result<CarKnowledge> carOfTank(const CarKnowledge& car, const std::string& tank);

// The same without a copy, but that its own tank keeps the further ones; of a tank that is not
// there the vehicle's own.
Knowledge knownOfTank(const Knowledge& car, const std::string& tank);

// A tank as it is recorded.
struct TankAtHand {
    VehicleLog log;
    std::optional<Entry<ExtraTank>> further; // none: the vehicle's own

    std::optional<std::string> name() const;
    Volume capacity() const { return further ? further->value.capacity : log.vehicle.value.capacity; }
    const Sender& sender() const { return further ? further->value.sender : log.vehicle.value.sender; }
    const Entry<Calibration>* calibration() const { return log.latestCalibration(name()); }
};
// Errors: as Car::log; notFound, with those that there are.
Result<TankAtHand> tankAtHand(const Car& car, const std::string& tank);
// The zero mark of a calibrated tank, in litres since drained. Without `since` it was stated wrong, and
// the calibration is corrected; with it the gauge was zeroed anew then, and a calibration of the
// same levels comes after that one, whose mark held until then. Errors: as Car::record and revise.
Result<void> restateZero(Car& car, const Entry<Calibration>& calibration, Volume zero, std::optional<Instant> since);
// From now on; nothing is written where it is the same. Errors: as Car::revise.
Result<void> keepSender(Car& car, const TankAtHand& tank, const Sender& sender);

} // namespace undermark
