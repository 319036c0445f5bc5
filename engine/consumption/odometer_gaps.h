// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where the kilometres of a log do not join up: for the logbook's health check.
#pragma once

#include "engine/base/sentence.h"
#include "engine/consumption/interval.h"

#include <string>

namespace undermark {

enum class GapKind {
    distanceUnknown,   // neither odometers nor the trip meter tell the way to this fill
    metersDisagree,    // odometer and trip meter tell different ways
    tripsExceed,       // the trips logged are longer than the way between two fills
};

// "distance unknown", as printed.
const char* gapName(GapKind kind);

struct OdometerGap {
    std::size_t fill = 0;                // position of the fill that ends the gap
    GapKind kind = GapKind::distanceUnknown;
    std::optional<Distance> unexplained; // odometer less trip meter, trips less odometer; may be < 0
    Sentence text;                       // one sentence for people, without full stop
};

// In order of the fills. Differences up to 5 km and 3 % are the meters' own
// (common practice, no source) and no gap. An odometer that goes backward is a
// suspect fill (screening.h), not a gap. `intervals` are those of these fills.
// O(fills + intervals).
std::vector<OdometerGap> odometerGaps(std::span<const Fill> fills,
                                      std::span<const Interval> intervals);

} // namespace undermark
