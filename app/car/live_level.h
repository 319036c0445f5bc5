// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is made of a car's samples while they come: the level that is followed, the way since
// the last refuel, what happened, and when the range is worth asking anew. `watch` and the
// screen stand on it alike.
#pragma once

#include "app/car/car_answers.h"
#include "engine/tracking/gauge_tracker.h"

#include <vector>

namespace undermark {

class LiveLevel {
public:
    explicit LiveLevel(Observation start)
        : m_tracker(std::move(start.gauge), start.settings)
    {
    }

    void take(const Sample& sample);
    void finish() { keep(m_tracker.finish()); }
    // A fill of so many litres by the pump, where it was noticed lately, or not at all: the
    // level is told. Noticed earlier it is in the level already.
    void tellFill(Estimate<Volume> litres);
    // No fuel went in where a refuel was noticed lately.
    void denyFill();

    // What happened since this was asked last.
    std::vector<TrackerEvent> takeEvents() { return std::exchange(m_events, {}); }
    const TrackState& state() const { return m_tracker.level().state(); }
    bool known() const { return state().mode != TrackerMode::waiting; }
    // Driven since the refuel noticed or told last, or the start.
    Distance sinceFill() const { return state().driven - m_atFill; }
    // Whether so much has changed since this said so last that the range is worth asking
    // anew (30 s, 0.2 L or 1 km), because an answer costs some ms.
    bool worthAsking();

private:
    void keep(std::span<const TrackerEvent> events);

    GaugeTracker m_tracker;
    Distance m_atFill;
    std::optional<Seconds> m_refuelled; // when one was noticed that nobody has spoken of
    std::optional<TrackState> m_asked;
    std::vector<TrackerEvent> m_events;
};

} // namespace undermark
