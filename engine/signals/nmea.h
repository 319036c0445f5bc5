// SPDX-License-Identifier: GPL-3.0-or-later
//
// Speed and place from a satellite receiver (NMEA 0183, from memory): RMC and VTG of any
// talker. A sentence without its checksum, or with a wrong one, is garbled; others, and
// fixes that the receiver itself calls void, are nothing.
#pragma once

#include "engine/signals/sample.h"

#include <optional>
#include <string_view>

namespace undermark {

inline constexpr double kKmhPerKnot = 1.852; // exact: a nautical mile is 1,852 m

struct NmeaFix {
    struct Place {
        double latitude, longitude; // degrees, north and east positive
    };
    std::optional<Seconds> utc; // since 1970, of RMC with its date; years are 2000 to 2099
    std::optional<Speed> speed;
    std::optional<Place> place; // of RMC
};

// A receiver at rest shows some km/h: what to do with them is the reader's business.
Heard parseNmea(std::string_view line, NmeaFix& out);

} // namespace undermark
