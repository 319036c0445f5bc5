// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a plan changes when the road or the car turns out otherwise.
#pragma once

#include "engine/planning/plan.h"

namespace undermark {

struct WhatIf {
    Sentence words;      // "Alder pump closed"
    PlanRequest request; // as changed
    Plan plan;
};

// Each returns the changed request, planned anew; notFound for a name that the
// route does not have, badInput for an amount that leaves no tank.
Result<WhatIf> whatIfClosed(const PlanRequest& request, const std::string& name);
Result<WhatIf> whatIfRepeated(const PlanRequest& request, const std::string& name);
// Every rate (and its spread) higher by so much.
Result<WhatIf> whatIfRateUp(const PlanRequest& request, Fraction by);
// Every fill ends so many litres earlier: a full tank holds less, limits are lower.
Result<WhatIf> whatIfFillsLess(const PlanRequest& request, Volume by);

using WhatIfQuestion = std::function<Result<WhatIf>(const PlanRequest&)>;
// All of these at once; its words are theirs, in a list. At least one. Errors: the first's.
Result<WhatIf> whatIfTogether(const PlanRequest& request,
                              const std::vector<WhatIfQuestion>& questions);

} // namespace undermark
