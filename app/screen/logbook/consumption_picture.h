// SPDX-License-Identifier: GPL-3.0-or-later
//
// Consumption over time: what each stretch burnt, and the band in which it was
// expected before it was driven.
#pragma once

#include "app/screen/base/plot_picture.h"
#include "engine/outlook/car_knowledge.h"

namespace undermark {

// One stretch as it was foreseen from the stretches before it.
struct ForeseenStretch {
    Instant end{};
    Consumption burnt;
    Consumption expected;
    Consumption low;  // 90 % of such stretches lie between low and high
    Consumption high;
    bool learnt = true;
};

// The last `most` stretches, oldest first. O(stretches * modes^3).
std::vector<ForeseenStretch> foreseenStretches(const CarKnowledge& car, std::size_t most);

// Empty with fewer than two stretches.
PlotPicture consumptionPicture(const std::vector<ForeseenStretch>& stretches,
                               const UnitFormat& format);

} // namespace undermark
