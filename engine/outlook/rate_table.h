// SPDX-License-Identifier: GPL-3.0-or-later
//
// The rates of all modes and of the usual mix in one table, as the range law takes them.
// Only for the files of engine/outlook.
#pragma once

#include "engine/consumption/consumption_model.h"
#include "engine/range/range_law.h"

#include <string>
#include <vector>

namespace undermark {

// The usual mix is one more mode at the end; its name is empty.
struct RateTable {
    std::vector<std::string> names;
    RangeBasis basis;   // rates, covariance, degrees of freedom, route noise

    // Of the usual mix where the name is not known.
    std::size_t indexOf(const std::string& mode) const;
};

// The usual mix's covariance with each mode follows from its shares. O(modes²).
RateTable rateTable(const ModeRates& rates);

} // namespace undermark
