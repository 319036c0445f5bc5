// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/tracking/tracker_types.h"

namespace undermark {

// A float that reached a stop is said once, and again only after it was off it for
// twenty minutes: fuel that sloshes lifts it now and then.
class StopNotice {
public:
    // `stop`: upperStop or lowerStop; true where it is to be said.
    bool rests(TrackerMode stop)
    {
        m_off = 0;
        const bool say = m_said != stop;
        m_said = stop;
        return say;
    }
    void off()
    {
        if (++m_off > kOffStopBlocks)
            m_said = TrackerMode::level;
    }

private:
    static constexpr int kOffStopBlocks = 40;
    TrackerMode m_said = TrackerMode::waiting;
    int m_off = 0;     // blocks since the float left its stop
};

} // namespace undermark
