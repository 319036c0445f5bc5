// SPDX-License-Identifier: GPL-3.0-or-later
//
// A plan as rows that a navigator follows with a finger: the same for terminal, screen and
// card. Numbers are left to be formatted where they are shown.
#pragma once

#include "engine/planning/plan.h"

#include <string>
#include <vector>

namespace undermark {

struct PlanRow {
    std::size_t point = 0; // of the route
    Distance at;
    Distance leg;                      // since the row before
    Volume needs;                      // mean use to the next row; 0 in the last
    Estimate<Volume> climb;            // of that, what heights take; below 0 downhill
    std::vector<std::string> modes;    // driven to the next row, each once, in their order
    Volume sure;                       // on arrival with 99 %, 0 or more
    Volume even;                       // on arrival, mean, 0 or more
    const PlannedStop* stop = nullptr; // of the plan, where one buys here
    Volume leave;
    std::optional<Volume> goPast; // where fuel can be had: not without a stop with less
    std::string note; // what else matters here, short, maybe empty
};

// One row for each of `points` (ascending), or for every point of the route where
// none are given. Rows point into `plan`, which must outlive them.
std::vector<PlanRow> planRows(const PlanRequest& request, const Plan& plan,
                              const std::vector<std::size_t>& points = {},
                              const SentenceWriter& write = english);

// What the gauge shows with so many usable litres, 0 at the zero mark and 1 when full; nothing
// without a zero mark, or below it.
std::optional<Fraction> gaugeAt(const Tank& tank, Volume usable);

// The start, the stops and the finish: what a page has to show at least.
std::vector<std::size_t> stopsAndEnds(const Plan& plan);

} // namespace undermark
