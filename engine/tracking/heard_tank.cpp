// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/heard_tank.h"

#include "engine/tracking/sender_reading.h"

#include <cmath>
#include <utility>

namespace undermark {

namespace {

constexpr Seconds kSilentAfter{120.0};
constexpr Seconds kMemory{60.0};
constexpr double kTilt = 0.015;  // of the range, as of the own tank (reading_noise.cpp)
constexpr double kSlosh = 0.01;

Volume rangeOf(const Gauge& gauge) { return gauge.full() - gauge.lowest(); }

std::optional<TransferWatch> watchOf(const FurtherTank& tank, Volume own)
{
    if (tank.feed == TankFeed::chosen)
        return std::nullopt;
    const Volume range = rangeOf(tank.gauge);
    TransferLimits limits = tank.feed == TankFeed::shared ? TransferLimits::ofLevel(own, range)
                                                          : TransferLimits::ofPumped(own, range);
    // What surely can be had of it.
    limits.empty = std::max(limits.empty, 2.0 * tank.offset.sd - tank.offset.mean);
    return TransferWatch(limits);
}

ReadingKind observed(BlockKind kind)
{
    return kind == BlockKind::exact ? ReadingKind::exact
        : kind == BlockKind::atMost ? ReadingKind::atMost
                                    : ReadingKind::atLeast;
}

} // namespace

HeardTank::HeardTank(const FurtherTank& tank, std::size_t place, Volume own)
    : m_gauge(tank.gauge), m_feed(tank.feed), m_place(place), m_offset(tank.offset), m_smoothed(kMemory)
{
    if (!m_gauge.isKnown())
        return;
    m_block.emplace(m_gauge.lowest(), m_gauge.full());
    m_watch = watchOf(tank, own);
}

void HeardTank::take(const Sample& sample)
{
    const std::size_t at = 2 * (m_place - 1);
    if (!m_block || !sample.further[at])
        return;
    if (const auto level = observe(m_gauge, {*sample.further[at], sample.further[at + 1]}))
        m_block->add(sample.time.count(), *level);
}

// On a stop anything beyond it is as likely as anything else.
Estimate<Volume> HeardTank::levelOf(const BlockSummary& block) const
{
    const double range = rangeOf(m_gauge).litres();
    const double sd = std::hypot(block.curveSdL, kTilt * range, kSlosh * range);
    const double end = (block.kind == BlockKind::atLeast ? m_gauge.full() : m_gauge.lowest()).litres();
    const double width = block.kind == BlockKind::exact ? 0.0 : end - block.levelL;
    const double flat = block.kind == BlockKind::exact ? block.flatL : width;
    return {Volume::fromLitres(block.levelL + 0.5 * width), Volume::fromLitres(std::hypot(sd, flat / std::sqrt(12.0)))};
}

void HeardTank::closeBlock(Seconds time, std::optional<Volume> own, EventList& events)
{
    if (!m_block)
        return;
    const BlockSummary block = m_block->take();
    const bool readable = block.kind == BlockKind::exact || block.kind == BlockKind::atMost
        || block.kind == BlockKind::atLeast;
    if (!readable) {
        if (time - m_heardAt >= kSilentAfter)
            m_level.reset();
        return;
    }
    const double seconds = (time - std::exchange(m_heardAt, time)).count();
    if (!m_level)
        m_smoothed = Smoothed(kMemory);
    const Estimate<Volume> read = levelOf(block);
    m_smoothed.add(read.mean.litres(), seconds);
    m_level = {Volume::fromLitres(m_smoothed.litres()), read.sd};
    if (m_watch && own)
        watch(time, *own, block, events);
}

void HeardTank::watch(Seconds time, Volume own, const BlockSummary& block, EventList& events)
{
    const auto found = m_watch->add(time, own, {observed(block.kind), {Volume::fromLitres(block.levelL), {}}, Volume::fromLitres(block.flatL)});
    if (m_feed == TankFeed::pumpedOver)
        if (const auto litres = m_watch->flowEnded())
            say(TrackerEventKind::transfer, *litres, events);
    if (found == TransferWatch::Found::stopped)
        say(TrackerEventKind::fault, m_watch->fallen(), events);
    else if (found == TransferWatch::Found::goesOn)
        say(TrackerEventKind::faultCleared, {}, events);
}

void HeardTank::say(TrackerEventKind kind, Volume litres, EventList& events)
{
    const bool ended = kind == TrackerEventKind::transfer || kind == TrackerEventKind::fault;
    events.add({.kind = kind,
                .time = m_heardAt,
                .onset = ended ? m_watch->movedAt() : m_heardAt,
                .litres = {litres, m_level->sd},
                .distance = {},
                .fault = m_feed == TankFeed::shared ? FaultCode::transfer : FaultCode::transferStopped,
                .tank = m_place,
                .cameOver = m_watch->cameOver(),
                .left = std::max(Volume(), m_level->mean + m_offset.mean)});
}

} // namespace undermark
