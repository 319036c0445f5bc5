// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fuel card: a plan on one page of paper, for the door pocket. Drawn with
// libharu, which needs no display and loads in well under a millisecond.
#pragma once

#include "engine/planning/plan.h"

#include <filesystem>
#include <string>
#include <vector>

namespace undermark {

enum class Paper { a5, a4 };

// Where the tank stands along the way, for the strip: sawtooth of the even level
// and of the sure one (99 %), litres by km. Until the card is given the horizon
// of engine/range, this is the plan's own picture of the same thing.
struct StripPoint {
    Distance at;
    Volume even;
    Volume sure;
};
std::vector<StripPoint> stripOf(const PlanRequest& request, const Plan& plan);

// Writes the PDF. The plan must be feasible. Rows are every point, or, where
// these do not fit, the stops and the finish. Errors: badInput if even those do
// not fit the page; fileAccess if the file cannot be written. Names are set in
// Latin-1; other letters become '?'.
Result<void> writePlanCard(const PlanRequest& request, const Plan& plan, Paper paper,
                           const std::filesystem::path& file);

} // namespace undermark
