// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is made of a car's samples while they come: the level that is followed, the way since
// the last refuel, what happened, and when the range is worth asking anew. `watch` and the
// screen stand on it alike.
//
// Guarantees (each has a test in tests/app/car/live_level_test.cpp):
//  * a refuel is asked about as long as it can be spoken of, and once spoken of no longer;
//  * what rises while the question is open is added to it;
//  * what rises within half a minute after a fill was told is taken for that fill's, later it
//    is asked about as another;
//  * a fill told and taken back leaves all as if it had never been told;
//  * what is asked is of every tank whose sender is heard.
#pragma once

#include "app/car/car_answers.h"
#include "engine/tracking/gauge_tracker.h"

#include <map>
#include <string>
#include <vector>

namespace undermark {

class LiveLevel {
public:
    explicit LiveLevel(Observation start)
        : m_now{GaugeTracker(std::move(start.gauge), start.settings, start.further)}
    {
        for (FurtherTank& tank : start.further)
            m_tanks.push_back(std::move(tank.name));
    }

    void take(const Sample& sample);
    void finish();
    // A fill of so many litres by the pump, where it was noticed lately, or not at all: the
    // level is told. Noticed earlier it is in the level already.
    void tellFill(Estimate<Volume> litres);
    // There was no such fill, the one told last: what came since is followed anew from before
    // it. After LevelTracker::kFillWindow nothing, the sender has had its word by then.
    void takeBackFill();
    // A fill of a tank whose level is another.
    void tellOtherFill() { m_now.tracker.level().tellOtherFill(); }
    // No fuel went in where a refuel was noticed lately.
    void denyFill();

    // What happened since this was asked last.
    std::vector<TrackerEvent> takeEvents() { return std::exchange(m_events, {}); }
    const TrackState& state() const { return m_now.tracker.level().state(); }
    bool known() const { return state().mode != TrackerMode::waiting; }
    // What was noticed going in and can still be spoken of; nothing: nothing was.
    std::optional<Estimate<Volume>> refuel() const;
    // Those that are not over, in the order in which they were found, as they were said.
    const std::vector<TrackerEvent>& faults() const { return m_now.faults; }
    // The further tanks, in order of recording: what an event's `tank` means.
    std::span<const std::string> tanks() const { return m_tanks; }
    // Litres since drained in those that are heard, by name.
    std::map<std::string, Estimate<Volume>> tankLevels() const;
    // The question about all that is followed now, `question` about the rest of it.
    Question ask(Question question) const;
    // Driven since the refuel noticed or told last, or the start.
    Distance sinceFill() const { return state().driven - m_now.atFill; }
    // Whether so much has changed since this said so last that the range is worth asking
    // anew (30 s, 0.2 L or 1 km), because an answer costs some ms.
    bool worthAsking();

private:
    struct Noticed {
        Seconds time{};
        Estimate<Volume> litres;
    };
    struct Followed {
        GaugeTracker tracker;
        Distance atFill{};
        std::optional<Noticed> refuel{}; // that nobody has spoken of
        std::vector<TrackerEvent> faults{};
    };
    void follow(const Sample& sample);
    void noticed(const TrackerEvent& refuel);
    void keep(std::span<const TrackerEvent> events);

    Followed m_now;
    std::vector<std::string> m_tanks;
    std::optional<Followed> m_before;  // the fill told last, while it may be taken back
    std::vector<Sample> m_since;       // that
    std::optional<TrackState> m_asked;
    std::vector<TrackerEvent> m_events;
};

} // namespace undermark
