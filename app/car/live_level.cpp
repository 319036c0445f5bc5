// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/live_level.h"

#include <utility>

namespace undermark {

void LiveLevel::take(const Sample& sample) { keep(m_tracker.add(sample)); }

void LiveLevel::keep(std::span<const TrackerEvent> events)
{
    for (const TrackerEvent& event : events) {
        if (event.kind == TrackerEventKind::refuel) {
            m_atFill = state().driven;
            m_refuelled = event.time;
        }
        m_events.push_back(event);
    }
}

void LiveLevel::tellFill(Estimate<Volume> litres)
{
    const auto noticed = std::exchange(m_refuelled, std::nullopt);
    if (!known() || (noticed && state().time - *noticed >= LevelTracker::kFillWindow))
        return;
    m_tracker.level().tellFill(litres);
    m_atFill = state().driven;
    m_asked.reset();
}

void LiveLevel::denyFill()
{
    m_refuelled.reset();
    keep(m_tracker.level().denyFill());
    m_asked.reset();
}

bool LiveLevel::worthAsking()
{
    const TrackState& now = state();
    const bool stands = m_asked && m_asked->mode == now.mode && std::abs((now.time - m_asked->time).count()) < 30.0
        && abs(now.level.mean - m_asked->level.mean) < Volume::fromLitres(0.2)
        && now.driven - m_asked->driven < Distance::fromKm(1.0);
    if (stands)
        return false;
    m_asked = now;
    return true;
}

} // namespace undermark
