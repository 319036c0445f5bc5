// SPDX-License-Identifier: GPL-3.0-or-later
//
// Taking the correction that the screening proposes for a flagged fill. Only
// when the user says so; the record as it was stays in the logbook's history.
#pragma once

#include "engine/consumption/screening.h"

namespace undermark {

// The fill as proposed: litres, odometer or distance of the flag. Nothing where
// the flag proposes none of them (a forgotten fill has to be logged as one).
//  * A wrong unit is mended exactly (NIST SP 811), so the stretch counts again.
//  * A figure that was worked out from the expected consumption mends the record
//    but teaches nothing, so the fill is ruled to be left out of the learning.
std::optional<Fill> corrected(const Fill& fill, const FillFlag& flag);

} // namespace undermark
