// SPDX-License-Identifier: GPL-3.0-or-later
//
// The flags of a tank's shape and of its lobes, shared by `calibrate`, `range` and
// `replay`. A shape gives a level before anything was poured: every answer that
// rests on it says "prior".
#pragma once

#include "app/cli/cli_options.h"
#include "engine/calibration/tank_shape.h"

#include <optional>
#include <string>

namespace undermark {

struct ShapeFlags {
    std::string form;                    // box, cylinder, ellipse; empty: not given
    std::optional<double> widthM, heightM, lengthM, radiusM, tiltDegrees;
    std::optional<double> emptySignal, fullSignal;

    bool given() const { return !form.empty(); }
};

// --shape, --width-m, --height-m, --length-m, --radius-m, --tilt-deg,
// --empty-signal, --full-signal.
void addShapeFlags(CLI::App& command, ShapeFlags& flags);

// badInput: a dimension missing or impossible, or one given without --shape.
Result<void> checkShapeFlags(const ShapeFlags& flags);
// The shape and the signals at its floor and roof, as they are kept.
Result<StatedShape> statedShapeFrom(const ShapeFlags& flags);
Result<TankShape> shapeFrom(const ShapeFlags& flags);
Result<LevelCurve> priorCurveFrom(const ShapeFlags& flags);

// Two lobes wired in series into one signal: --lobe1-l, --lobe2-l, both or none;
// their unequal emptying spreads the level (seriesSpread, calibration/lobes.h).
void addSeriesFlags(CLI::App& command, std::optional<double>& lobe1, std::optional<double>& lobe2);
Result<Volume> seriesSpreadFrom(std::optional<double> lobe1, std::optional<double> lobe2);

inline constexpr const char* kPriorText =
    "A prior from the tank's shape, not a calibration: pour and read to replace it.";

} // namespace undermark
