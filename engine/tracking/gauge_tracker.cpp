// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/gauge_tracker.h"

#include "engine/tracking/sender_reading.h"

#include <utility>

namespace undermark {

GaugeTracker::GaugeTracker(Gauge gauge, const TrackerSettings& settings)
    : m_gauge(std::move(gauge)), m_tracker(settings), m_transfer(settings.highest - settings.lowest)
{
}

std::span<const TrackerEvent> GaugeTracker::add(const Sample& sample)
{
    std::optional<SenderReading> reading;
    if (sample.signal)
        reading = {*sample.signal, sample.signal2};
    m_events.clear();
    for (const TrackerEvent& event :
         m_tracker.add({sample.time, reading ? observe(m_gauge, *reading) : std::nullopt, sample.speed,
                        sample.fuelRate, sample.distance}))
        m_events.add(event);
    if (reading && m_transfer.add(sample.time, m_gauge, *reading))
        m_events.add({.kind = TrackerEventKind::fault,
                      .time = sample.time,
                      .onset = sample.time,
                      .litres = {m_transfer.fallen(), {}},
                      .distance = {},
                      .fault = FaultCode::transfer});
    return m_events.all();
}

} // namespace undermark
