// SPDX-License-Identifier: GPL-3.0-or-later
//
// The car's own consumption figure against the pump: often low, by a factor that
// is steady for one car (pump litres were 1.1 to 1.2 times the displayed ones in
// one open data set).
#pragma once

#include "engine/consumption/consumption_model.h"

namespace undermark {

struct DisplayedScale {
    double factor = 1;           // pump over displayed, median
    double relativeSd = 0;       // of that factor, as a share of it
    double nextRelativeSd = 0;   // of one more reading: what a displayed figure is worth
    std::size_t readings = 0;
};

// Learns the factor from the stretches whose fill carries the displayed figure:
// conjugate normal-inverse-gamma on its logarithm, prior 1.05 with a spread of
// 10 %. Nothing where no stretch carries one. Stretches that are not believed
// teach nothing here; `beliefs` may be shorter. O(intervals).
std::optional<DisplayedScale> learnDisplayedScale(std::span<const Fill> fills,
                                                  std::span<const Interval> intervals,
                                                  const std::vector<Belief>& beliefs = {});

} // namespace undermark
