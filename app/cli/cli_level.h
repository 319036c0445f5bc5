// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a tracker starts from, for `replay` and `watch`: a calibration or the tank's shape
// given as flags, else the logbook's car.
#pragma once

#include "app/car/car_answers.h"
#include "app/cli/cli_shape.h"

#include <filesystem>

namespace undermark {

struct LevelFlags {
    std::filesystem::path calibration;
    ShapeFlags shape;                        // instead of a calibration
    std::optional<double> lobe1, lobe2;

    bool given() const { return shape.given() || !calibration.empty(); }
};
void addLevelFlags(CLI::App& command, LevelFlags& flags);

struct FollowedLevel {
    Observation start;
    Knowledge car; // that it is of; none where flags gave the level
};
// From the calibration or the shape, where findings become warnings; else from the car.
Result<FollowedLevel> levelFrom(const LevelFlags& flags, const CliContext& context);

} // namespace undermark
