// SPDX-License-Identifier: GPL-3.0-or-later
//
// The parts of `watch`: the loop (cli_watch.cpp), how far it goes by the car's law
// (LiveRange), and how a second is printed (cli_watch_print.cpp).
#pragma once

#include "app/cli/cli_level.h"
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_sources.h"
#include "engine/tracking/gauge_tracker.h"

namespace undermark {

struct WatchOptions {
    SourceOptions sources;
    LevelFlags level;
    std::filesystem::path record;
    std::optional<double> seconds, speedUp;
    std::string mode;
};

// How far, from the level as it is followed: asked anew only once something has changed that
// counts (30 s, 0.2 L, 1 km), because an answer costs some ms.
class LiveRange {
public:
    struct Answer {
        Estimate<Volume> usable;
        Distances toZero, toDry;
    };
    // By the car's knowledge; none: no law, only litres since drained.
    LiveRange(Knowledge car, std::string mode) : m_car(std::move(car)), m_mode(std::move(mode)) {}
    // The newest answer; nothing where there is no car, or it cannot say.
    const std::optional<Answer>& at(const TrackState& state);

private:
    Knowledge m_car;
    std::string m_mode;
    std::optional<TrackState> m_asked;
    std::optional<Answer> m_answer;
};

// One second of a watch.
struct WatchMoment {
    Sample sample;                                // the newest
    const TrackState& state;
    const std::optional<LiveRange::Answer>& range;
    Distance sinceFill;                           // driven since the refuel noticed last, or the start
    std::span<const TrackerEvent> events;         // since the last one printed
    const LiveSources& sources;
};
void printWatchJson(const WatchMoment& now);
void printWatchText(const WatchMoment& now);
// What the sources could not read, and who was left out, each thing once.
class WatchNotices {
public:
    void tell(const LiveSources& sources);

private:
    std::vector<std::string> m_said;
    void once(const std::string& text);
};

} // namespace undermark
