// SPDX-License-Identifier: GPL-3.0-or-later
//
// Second thoughts about a calibration of the logbook, for `calibrate`: one of its levels as it
// should have been, and a later session laid over it.
#pragma once

#include "app/cli/cli_command.h"
#include "engine/calibration/gauge.h"

#include <optional>
#include <vector>

namespace undermark {

struct StepCorrection {
    int step = 1; // from 1, in the order in which they were taken
    std::optional<double> litres, signal, signal2;
    bool leaveOut = false;
};
// badInput: no such level, or it has no second signal.
Result<Calibration> withStep(Calibration kept, const StepCorrection& correction);

struct LaidOver {
    std::vector<CalibrationPoint> points; // by rising litres
    std::vector<Sentence> said;           // how far the two sessions agree
};
// The later levels, and of the earlier those at other litres (0.05 L). Errors: badInput where the
// kept one has no points, or one session has two signals and the other one.
Result<LaidOver> laidOver(const Calibration& kept, const std::vector<CalibrationPoint>& later, const Sender& sender);

} // namespace undermark
