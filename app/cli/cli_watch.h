// SPDX-License-Identifier: GPL-3.0-or-later
//
// The parts of `watch`: the loop (cli_watch.cpp) and how a second is printed
// (cli_watch_print.cpp).
#pragma once

#include "app/car/drive_keeper.h"
#include "app/car/live_level.h"
#include "app/cli/cli_level.h"
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_sources.h"

namespace undermark {

struct WatchOptions {
    SourceFlags sources;
    LevelFlags level;
    std::filesystem::path record;
    std::optional<double> seconds, speedUp;
    std::string mode;
    bool keepTrips = false;
};

// How far, from the level as it is followed.
struct WatchRange {
    Estimate<Volume> usable;
    Distances toZero, toDry;
};

// One second of a watch.
struct WatchMoment {
    Sample sample;                                // the newest
    const TrackState& state;
    const std::optional<WatchRange>& range;       // nothing where there is no car, or it cannot say
    Distance sinceFill;                           // driven since the refuel noticed last, or the start
    std::span<const TrackerEvent> events;         // since the last one printed
    const LiveSources& sources;
    std::span<const std::string> tanks;           // further ones, in order of recording
    const std::map<std::string, Estimate<Volume>>& tankLevels; // litres since drained, of those heard
};
void printWatchJson(const WatchMoment& now);
void printWatchText(const WatchMoment& now);
// What the sources could not read, and who was left out, each thing once.
class WatchNotices {
public:
    void tell(const LiveSources& sources);

private:
    std::vector<std::string> m_said;
};

} // namespace undermark
