// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where `calibrate --save` meets the logbook.
#pragma once

#include "app/cli_command.h"
#include "engine/records.h"

#include <vector>

namespace undermark {

// Stores the points as they were read, with the zero mark (litres since drained),
// for the vehicle that the command line names. Success only once it is stored.
Result<void> saveCalibration(CliContext& context, std::vector<CalibrationPoint> points,
                             Volume zeroMark);

} // namespace undermark
