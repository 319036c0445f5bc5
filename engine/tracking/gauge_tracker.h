// SPDX-License-Identifier: GPL-3.0-or-later
//
// Follows a car's samples: their signals read by its gauge, the level by the tracker, and of
// a saddle tank whether its other lobe empties. What `replay` and a live source both run.
#pragma once

#include "engine/signals/sample.h"
#include "engine/tracking/level_tracker.h"
#include "engine/tracking/transfer_watch.h"

namespace undermark {

class GaugeTracker {
public:
    GaugeTracker(Gauge gauge, const TrackerSettings& settings);

    // As LevelTracker's, and the fault of the transfer; valid until the next call.
    std::span<const TrackerEvent> add(const Sample& sample);
    std::span<const TrackerEvent> finish() { return m_tracker.finish(); }

    LevelTracker& level() { return m_tracker; } // also to be told of fills
    const LevelTracker& level() const { return m_tracker; }

private:
    Gauge m_gauge;
    LevelTracker m_tracker;
    TransferWatch m_transfer;
    EventList m_events;
};

} // namespace undermark
