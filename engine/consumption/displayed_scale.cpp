// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/displayed_scale.h"

#include <cmath>

namespace undermark {

namespace {

constexpr double kPriorFactor = 1.05;
constexpr double kPriorSpread = 0.10;
// One reading scatters by about 3 %: click, and the display's own rounding.
constexpr double kReadingSpread = 0.03;
constexpr double kPriorShape = 2.5;

} // namespace

std::optional<DisplayedScale> learnDisplayedScale(std::span<const Fill> fills,
                                                  std::span<const Interval> intervals,
                                                  const std::vector<Belief>& beliefs)
{
    // Normal-inverse-gamma (K. P. Murphy 2007): mean, readings it is worth, shape, rate.
    double mean = std::log(kPriorFactor);
    double worth = std::pow(kReadingSpread / kPriorSpread, 2);
    double shape = kPriorShape;
    double rate = kReadingSpread * kReadingSpread * (kPriorShape - 1);
    DisplayedScale scale;
    for (std::size_t i = 0; i < intervals.size(); ++i) {
        const Interval& stretch = intervals[i];
        if (i < beliefs.size() && !isBelieved(beliefs[i]))
            continue;
        const auto& displayed = fills[stretch.lastFill].displayed;
        // The figure counts from the fill before, so the stretch must be that one.
        if (!displayed || displayed->litresPerKm() <= 0 || stretch.lastFill != stretch.firstFill + 1)
            continue;
        const Consumption pump = stretch.burnt.mean / stretch.distance;
        const double away = std::log(pump / *displayed) - mean;
        rate += 0.5 * worth / (worth + 1) * away * away;
        shape += 0.5;
        worth += 1;
        mean += away / worth;
        ++scale.readings;
    }
    if (scale.readings == 0)
        return std::nullopt;
    scale.factor = std::exp(mean);
    scale.relativeSd = std::sqrt(rate / (shape - 1) / worth);
    scale.nextRelativeSd = std::sqrt(rate / (shape - 1) * (1 / worth + 1));
    return scale;
}

} // namespace undermark
