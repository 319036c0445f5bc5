// SPDX-License-Identifier: GPL-3.0-or-later
//
// Between the two halves of `calibrate`: what was asked and what came out
// (cli_calibrate.cpp), and how it is printed (cli_calibrate_print.cpp).
#pragma once

#include "app/cli/cli_shape.h"
#include "engine/calibration/gauge.h"
#include "engine/calibration/gauge_table.h"
#include "engine/calibration/verification.h"
#include "engine/tables/points_csv.h"

namespace undermark {

struct CalibrateOptions {
    std::string file, verify, note, tank, zeroSince;
    std::optional<double> at, noise, zeroLitres, fullLitres;
    std::optional<int> tablePoints, decimals;
    std::string tableUnit = "percent", circuit, signalUnit;
    std::optional<double> supplyVolts, pullUpOhms, resolution;
    ShapeFlags shape;                    // instead of a file
    std::optional<double> at2, lobe1, lobe2;   // of a saddle tank
    bool save = false;
    bool kept = false;                   // the logbook's calibration, instead of a file
    bool overKept = false;               // the file's levels over those of the logbook
    std::optional<int> step;             // of the logbook's: one level as it should have been
    std::optional<double> stepLitres, stepSignal, stepSignal2;
    bool leaveOut = false;

    bool ofTheLogbook() const { return kept || step || (!verify.empty() && file.empty() && !shape.given()); }
};

struct CalibrateAnswer {
    PointsFile file;
    Sender sender;
    Gauge gauge;
    std::optional<LobeVolumes> lobes; // in series
    Volume zero;
    std::string zeroReason;
    std::optional<LevelReading> at;
    std::optional<GaugeTable> table;
    std::optional<Verification> verified;
};

// Levels of a CSV that were tried afterwards, against the gauge. Errors: badInput for what
// cannot be read, and as verify().
Result<Verification> verifyLevels(const Gauge& gauge, const std::string& file);
inline constexpr const char* kVerifyHelp =
    "levels tried afterwards, as points: total_l since drained, or poured_l (negative) from full";

void printCalibrationJson(const CalibrateAnswer& answer, const CalibrateOptions& options);
void printCalibrationText(const CalibrateAnswer& answer, const CalibrateOptions& options);

} // namespace undermark
