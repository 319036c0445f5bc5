// SPDX-License-Identifier: GPL-3.0-or-later
//
// Follows a car's samples: their signals read by its gauge, the level by the tracker, of a
// saddle tank whether its other lobe empties, and the further tanks that are heard. What `replay`
// and a live source both run.
#pragma once

#include "engine/signals/sample.h"
#include "engine/tracking/heard_tank.h"
#include "engine/tracking/level_tracker.h"

#include <vector>

namespace undermark {

class GaugeTracker {
public:
    // `further`: in order of recording; those beyond kMostFurtherTanks are not heard.
    GaugeTracker(Gauge gauge, const TrackerSettings& settings, std::span<const FurtherTank> further = {});

    // As LevelTracker's, and the faults of transfers; valid until the next call. What is pumped over
    // is told by the tank that it leaves, where all that are pumped over are heard.
    std::span<const TrackerEvent> add(const Sample& sample);
    std::span<const TrackerEvent> finish();

    LevelTracker& level() { return m_tracker; } // also to be told of fills
    const LevelTracker& level() const { return m_tracker; }
    std::span<const HeardTank> further() const { return m_further; }

private:
    void take(std::span<const TrackerEvent> events);
    void closeBlock();

    Gauge m_gauge;
    LevelTracker m_tracker;
    TransferWatch m_transfer;
    std::vector<HeardTank> m_further;
    long m_blocks = 0; // that were closed
    EventList m_events;
};

} // namespace undermark
