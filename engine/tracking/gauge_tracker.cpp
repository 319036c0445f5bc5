// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/gauge_tracker.h"

#include "engine/tracking/sender_reading.h"

#include <algorithm>
#include <utility>

namespace undermark {

GaugeTracker::GaugeTracker(Gauge gauge, const TrackerSettings& settings, std::span<const FurtherTank> further)
    : m_gauge(std::move(gauge)), m_tracker(settings),
      m_transfer(TransferLimits::ofSaddle(settings.highest - settings.lowest))
{
    for (const FurtherTank& tank : further.first(std::min(further.size(), kMostFurtherTanks)))
        m_further.emplace_back(tank, m_further.size() + 1, settings.highest - settings.lowest);
}

std::span<const TrackerEvent> GaugeTracker::add(const Sample& sample)
{
    std::optional<SenderReading> reading;
    if (sample.signal)
        reading = {*sample.signal, sample.signal2};
    m_events.clear();
    take(m_tracker.add({sample.time, reading ? observe(m_gauge, *reading) : std::nullopt, sample.speed,
                        sample.fuelRate, sample.distance}));
    for (HeardTank& tank : m_further)
        tank.take(sample);
    const auto found = reading ? m_transfer.add(sample.time, m_gauge, *reading) : TransferWatch::Found::nothing;
    if (found != TransferWatch::Found::nothing)
        m_events.add({.kind = found == TransferWatch::Found::stopped ? TrackerEventKind::fault
                                                                     : TrackerEventKind::faultCleared,
                      .time = sample.time,
                      .onset = sample.time,
                      .litres = {m_transfer.fallen(), {}},
                      .distance = {},
                      .fault = FaultCode::transfer});
    return m_events.all();
}

std::span<const TrackerEvent> GaugeTracker::finish()
{
    m_events.clear();
    take(m_tracker.finish());
    return m_events.all();
}

// The tracker's events; with a block of it ends one of each tank.
void GaugeTracker::take(std::span<const TrackerEvent> events)
{
    const auto unheard = [](const HeardTank& tank) { return tank.isPumpedOver() && !tank.level(); };
    const bool measured = std::ranges::any_of(m_further, &HeardTank::isPumpedOver)
        && std::ranges::none_of(m_further, unheard);
    for (const TrackerEvent& event : events)
        if (event.kind != TrackerEventKind::transfer || !measured)
            m_events.add(event);
    const TrackState& state = m_tracker.state();
    if (std::exchange(m_blocks, state.blocks) == state.blocks)
        return;
    for (HeardTank& tank : m_further)
        tank.closeBlock(state.time, state.reading, m_events);
}

} // namespace undermark
