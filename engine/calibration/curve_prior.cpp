// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/curve_prior.h"

#include <algorithm>
#include <cmath>

namespace undermark::calibration {

namespace {

constexpr double kShapeShare = 0.145, kShapePower = 1.75, kOneGap = 1.25;
constexpr double kPriorMisses = 6.0;     // what the prior weighs against misses seen
constexpr double kStopReach = 0.12;      // of the span, litres a stop may hide
constexpr double kStopSdPerReach = 0.42; // so that 2.33 sd are its 99 % point

} // namespace

double shapeSd(double gap, double span)
{
    const double alone = gap < span ? 1.0 : kOneGap;
    return alone * kShapeShare * span * std::pow(gap / span, kShapePower);
}

double shapeScale(std::span<const Miss> misses)
{
    double squares = 0.0;
    for (const Miss& miss : misses)
        squares += std::pow(miss.litres / miss.expected, 2);
    const double n = double(misses.size());
    const double scale = std::sqrt((kPriorMisses + squares) / (kPriorMisses + n));
    return misses.size() < 2 ? std::max(1.0, scale) : scale;
}

double addPrior(std::vector<CurveKnot>& knots, double bends)
{
    const auto litres = [&knots](std::size_t i) { return knots[i].added.litres(); };
    const std::size_t last = knots.size() - 1;
    const double span = litres(last) + knots[last].width.litres() - litres(0);
    for (std::size_t i = 0; i < last; ++i)
        knots[i].between = Volume::fromLitres(bends * shapeSd(litres(i + 1) - litres(i), span));
    const double stop = unseenStopSd(litres(last) - litres(last - 1), span);
    knots[last].sd = Volume::fromLitres(std::hypot(knots[last].sd.litres(), stop));
    return stop;
}

double unseenStopSd(double lastGap, double span)
{
    return kStopSdPerReach * std::min(lastGap, kStopReach * span);
}

} // namespace undermark::calibration
