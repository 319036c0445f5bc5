// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/tracking/fuel_filter.h"

namespace undermark {

// The level and the counts at one moment of a drive: enough to start again from it.
struct Moment {
    FuelFilter filter;
    double timeS = 0.0;
    double usedL = 0.0;   // by the source since the start, not scaled
    double km = 0.0;      // since the start
};

} // namespace undermark
