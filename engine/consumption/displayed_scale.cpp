// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/displayed_scale.h"

#include "engine/consumption/conjugate_regression.h"

#include <array>
#include <cmath>

namespace undermark {

namespace {

constexpr double kPriorFactor = 1.05;
constexpr double kPriorSpread = 0.10;
// One reading scatters by about 3 %: click, and the display's own rounding.
constexpr double kReadingSpread = 0.03;
constexpr double kScalePriorShape = 2.5;

} // namespace

std::optional<DisplayedScale> learnDisplayedScale(std::span<const Fill> fills,
                                                  std::span<const Interval> intervals,
                                                  const std::vector<bool>& learnt)
{
    const double spread2 = kReadingSpread * kReadingSpread;
    ConjugateRegression regression({std::log(kPriorFactor)},
                                   {kPriorSpread * kPriorSpread / spread2}, kScalePriorShape,
                                   spread2 * (kScalePriorShape - 1));
    DisplayedScale scale;
    for (std::size_t i = 0; i < intervals.size(); ++i) {
        const Interval& stretch = intervals[i];
        if (i < learnt.size() && !learnt[i])
            continue;
        const auto& displayed = fills[stretch.lastFill].displayed;
        // The figure counts from the fill before, so the stretch must be that one.
        if (!displayed || displayed->litresPerKm() <= 0 || stretch.lastFill != stretch.firstFill + 1)
            continue;
        const Consumption pump = stretch.burnt.mean / stretch.distance;
        regression.observe(std::array{1.0}, std::log(pump / *displayed), 1);
        ++scale.readings;
    }
    if (scale.readings == 0)
        return std::nullopt;
    scale.factor = std::exp(regression.mean()[0]);
    scale.relativeSd = regression.predict(std::array{1.0}, 0).sd();
    scale.nextRelativeSd = regression.predict(std::array{1.0}, 1).sd();
    return scale;
}

} // namespace undermark
