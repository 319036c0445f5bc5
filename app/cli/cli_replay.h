// SPDX-License-Identifier: GPL-3.0-or-later
//
// The parts of `replay`: the run itself (cli_replay.cpp), and how it is printed
// (cli_replay_print.cpp). Where the level comes from: cli_level.h.
#pragma once

#include "app/cli/cli_level.h"
#include "app/cli/cli_replay_plot.h"
#include "engine/tables/samples_csv.h"

#include <filesystem>

namespace undermark {

struct ReplayOptions {
    std::filesystem::path samples, track, plot;
    LevelFlags level;
    std::optional<double> rate, rateSd;
};

struct Replay {
    long samples = 0;
    long equalTimes = 0;                     // rows at the time of the row before: averaged
    std::optional<double> firstL;
    TrackState last;
    std::vector<TrackerEvent> events;
    bool prior = false;
    std::vector<std::string> tanks;          // further ones, in order of recording
    PlotPoints plot;
};

void printReplayJson(const Replay& replay);
void printReplayText(const Replay& replay);

} // namespace undermark
