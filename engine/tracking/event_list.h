// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/tracking/tracker_types.h"

#include <array>
#include <span>

namespace undermark {

// What one sample made happen, in fixed memory: what is more than eight is left out.
class EventList {
public:
    void clear() { m_count = 0; }
    void add(const TrackerEvent& event)
    {
        if (m_count < m_events.size())
            m_events[m_count++] = event;
    }
    std::span<const TrackerEvent> all() const { return {m_events.data(), m_count}; }

private:
    std::array<TrackerEvent, 8> m_events;
    std::size_t m_count = 0;
};

} // namespace undermark
