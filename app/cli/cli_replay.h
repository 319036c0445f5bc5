// SPDX-License-Identifier: GPL-3.0-or-later
//
// The parts of `replay`: where the level comes from (cli_replay_source.cpp), the
// run itself (cli_replay.cpp), and how it is printed (cli_replay_print.cpp).
#pragma once

#include "app/car/car_answers.h"
#include "app/cli/cli_replay_plot.h"
#include "app/cli/cli_shape.h"
#include "engine/tables/samples_csv.h"

#include <filesystem>

namespace undermark {

struct ReplayOptions {
    std::filesystem::path samples, calibration, track, plot;
    ShapeFlags shape;                        // instead of a calibration; neither: the logbook's car
    std::optional<double> rate, rateSd, lobe1, lobe2;
};

// From the calibration or the shape, where findings become warnings; else from the car.
Result<Observation> observationFrom(const ReplayOptions& options, const CliContext& context);

struct Replay {
    long samples = 0;
    long equalTimes = 0;                     // rows at the time of the row before: averaged
    std::optional<double> firstL;
    TrackState last;
    std::vector<TrackerEvent> events;
    bool prior = false;
    PlotPoints plot;
};

void printReplayJson(const Replay& replay);
void printReplayText(const Replay& replay);

} // namespace undermark
