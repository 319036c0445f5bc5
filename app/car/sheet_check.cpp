// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/sheet_check.h"

#include "engine/calibration/circuit.h"
#include "engine/tank/reserve_prior.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

Volume mostPoured(const CarKnowledge& car)
{
    Volume most;
    for (const CalibrationPoint& point : car.gauge.points())
        most = std::max(most, point.added);
    return most;
}

std::optional<Notice> doubtOfCapacity(const Vehicle& sheet, const CarKnowledge& car)
{
    if (sheet.capacity < mostPoured(car))
        return Notice{Severity::warning,
                      Sentence::of("%1 to the first click is less than the %2 that were poured in "
                                   "while it was calibrated.",
                                   amount(sheet.capacity), amount(mostPoured(car)))};
    if (const auto poured = pouredCapacity(sheet, car))
        return Notice{Severity::info,
                      Sentence::of("By what was poured into the drained tank it takes %1 to the "
                                   "first click; the car's sheet says %2.",
                                   amount(*poured), amount(sheet.capacity))};
    return std::nullopt;
}

std::optional<Notice> doubtOfReadings(const Vehicle& sheet, const CarKnowledge& car)
{
    for (const CalibrationPoint& point : car.gauge.points())
        if (circuitFault(point.signal, sheet.sender) == CircuitFault::impossible)
            return Notice{Severity::warning,
                          Sentence::of("The calibration read %1, which this circuit cannot give.",
                                       amount(point.signal.value(), Digits::significant(4),
                                              sheet.sender.unit))};
    return std::nullopt;
}

} // namespace

std::optional<Volume> pouredCapacity(const Vehicle& sheet, const CarKnowledge& car)
{
    const Volume most = mostPoured(car);
    if (most <= Volume())
        return std::nullopt;
    const Volume poured = most + leftBehindOf(sheet).mean;
    if (std::abs(poured / sheet.capacity - 1.0) <= kStatedCapacitySd.ratio())
        return std::nullopt;
    return poured;
}

std::vector<Notice> doubtsOf(const Vehicle& sheet, const CarKnowledge& car)
{
    std::vector<Notice> doubts;
    if (auto doubt = doubtOfCapacity(sheet, car))
        doubts.push_back(std::move(*doubt));
    if (auto doubt = doubtOfReadings(sheet, car))
        doubts.push_back(std::move(*doubt));
    const auto notBelow = [&](const std::optional<Volume>& litres, Sentence text) {
        if (litres && *litres >= sheet.capacity)
            doubts.push_back({Severity::warning, std::move(text)});
    };
    notBelow(sheet.lamp, Sentence::of("The lamp would light in a full tank."));
    notBelow(sheet.zeroMark, Sentence::of("The zero mark would lie above a full tank."));
    if (sheet.leftBehind)
        notBelow(sheet.leftBehind->mean, Sentence::of("More would be left behind than the tank takes."));
    return doubts;
}

} // namespace undermark
