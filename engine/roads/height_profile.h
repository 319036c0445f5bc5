// SPDX-License-Identifier: GPL-3.0-or-later
//
// Heights along a track.
#pragma once

#include "engine/base/error.h"
#include "engine/tables/gpx_line.h"

#include <filesystem>
#include <vector>

namespace undermark {

struct HeightPoint {
    Distance at;        // along the track; never falls
    double metres = 0;  // above the sea
    bool afterGap = false; // nothing is known of the way from the point before
};
using HeightProfile = std::vector<HeightPoint>;

// From what the track's own places tell (GPX `ele`); empty where none does.
HeightProfile profileOf(const GeoLine& line);

// From a height grid: a folder of SRTM tiles (N47E009.hgt: rows from north to south of big-endian
// 16-bit metres, 1201 or 3601 a side, edges shared; -32768 is unknown), between whose points is
// interpolated linearly both ways. The track is sampled every 90 m (three arc seconds). Where a
// tile is missing or unknown nothing is known. Errors: badInput for a file that is no such tile,
// fileAccess for one that cannot be read or a folder that is none.
Result<HeightProfile> profileFromGrid(const GeoLine& line, const std::filesystem::path& folder);

// Without ups and downs below `ripple` metres, which are mostly noise of the receiver or the
// grid (10 m: common practice, no source): between the turning points that are left the heights
// rise or fall throughout, and the turning points keep their height. Cost: linear.
HeightProfile withoutRipples(const HeightProfile& profile, double ripple = 10);

// By the grid in `folder`, or where none is named by the track itself; without ripples.
Result<HeightProfile> heightsAlong(const GeoLine& line, const std::filesystem::path& folder = {});

} // namespace undermark
