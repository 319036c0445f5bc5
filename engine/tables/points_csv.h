// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reads a calibration from a CSV file: one row per step of pouring in (or
// draining out), in the order in which it was done.
#pragma once

#include "engine/base/error.h"
#include "engine/base/records.h"

#include <filesystem>
#include <string>
#include <vector>

namespace undermark {

struct PointsFile {
    std::vector<CalibrationPoint> points;   // at least two, in file order, lowest litres = 0
    std::vector<CalibrationPoint> loaded;   // readings taken with electrical load switched on
    std::vector<Sentence> warnings;         // unknown columns, litres counted from another row
};

// Columns: signal (the sender's unit), and exactly one of total_l (litres since the tank was
// drained, 0 or more) and poured_l (litres put in at this step, negative where they were
// taken out; the drained row says 0) required;
// signal2, signal_sd (of one reading, 0 or more), readings (whole, 1 or more)
// and load (0 or 1: lamps, fan and heater on) optional. Litres count from the
// row with the fewest, the drained state: the first row when pouring in, the
// last when draining down. The old added_l could be read as either and is refused. Rows with load 1 are kept apart.
// Errors: fileAccess; badInput with line and column for anything malformed,
// for fewer than two rows, and where every row has the same litres.
Result<PointsFile> readPoints(const std::filesystem::path& file);

// Levels of a tank that is calibrated already, in the same columns: total_l as it stands, and
// poured_l counted from `start`, the litres since drained before the first row. One row is
// enough. Errors: as above for anything malformed; badInput where there is no row without load.
Result<PointsFile> readLevels(const std::filesystem::path& file, Volume start);

} // namespace undermark
