// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibration_doubt.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kHardlyMoved = 0.05; // of the signal's sweep so far

// Signal by litre, from the lowest to the highest level so far, sign and all; and the sweep.
struct Slope {
    double signalPerLitre = 0.0;
    double sweep = 0.0;
};

std::optional<Slope> slopeOf(std::span<const CalibrationPoint> points)
{
    if (points.size() < 2)
        return std::nullopt;
    const auto [low, high] = std::ranges::minmax_element(points, {}, &CalibrationPoint::added);
    const double litres = (high->added - low->added).litres();
    const double sweep = (high->signal - low->signal).value();
    if (!(litres > 0.0) || !(std::abs(sweep) > 0.0))
        return std::nullopt;
    return Slope{sweep / litres, std::abs(sweep)};
}

std::optional<Sentence> doubtOfStep(const Slope& slope, const CalibrationPoint& last,
                                    const CalibrationPoint& level)
{
    const double step = (level.signal - last.signal).value();
    if (std::abs(step) < kHardlyMoved * slope.sweep)
        return std::nullopt;
    const Volume told = level.added - last.added;
    const Volume byReading = Volume::fromLitres(step / slope.signalPerLitre);
    if (told.litres() * byReading.litres() < 0.0)
        return Sentence::of("The reading moves against the fuel. Is it right?");
    const double ratio = told / byReading;
    if (ratio > kFarFromCurve || ratio < 1.0 / kFarFromCurve)
        return Sentence::of("By the readings so far this step is about %1, not %2. Is it right?",
                            amount(abs(byReading)), amount(abs(told)));
    return std::nullopt;
}

} // namespace

std::optional<Sentence> doubtOf(std::span<const CalibrationPoint> before,
                                const CalibrationPoint& level, Volume capacity)
{
    if (level.added > capacity * kMostOfCapacity)
        return Sentence::of("That makes %1 in a tank that takes %2 to the first click. Is it right?",
                            amount(level.added), amount(capacity));
    if (level.added < Volume())
        return Sentence::of("That is %1 more than was poured in. Is it right?",
                            amount(abs(level.added)));
    if (level.signal2)
        return std::nullopt; // a lobe may well stand still while the other fills
    const auto slope = slopeOf(before);
    return slope ? doubtOfStep(*slope, before.back(), level) : std::nullopt;
}

} // namespace undermark
