// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/joiner.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr Seconds kSameInstant{1.0};
constexpr double kLatest = 1e11; // s, either way: beyond is no time

} // namespace

void Joiner::startAt(Seconds time)
{
    m_origin = time;
    m_tick = 0.0;
    m_newest = time;
    for (Newest& one : m_heard)
        one.value.reset();
}

void Joiner::put(const TimedValue& value)
{
    if (!isPossible(value.channel, value.value) || !(std::abs(value.time.count()) <= kLatest)) {
        ++m_impossible;
        return;
    }
    Newest& one = m_heard[indexOf(value.channel)];
    if (one.sender.value_or(value.sender) != value.sender) {
        ++one.leftOut;
        return;
    }
    one.sender = value.sender;
    if (!m_ever) {
        startAt(value.time);
    } else if (value.time < m_newest - kSameInstant) {
        startAt(value.time);
        m_travelled.clockJumped();
    }
    m_ever = true;
    m_newest = std::max(m_newest, value.time);
    if (!m_running) // silent until now
        m_tick = std::max(m_tick, std::ceil((m_newest - m_origin) / kStep));
    m_running = true;
    one.value = value;
    one.value->time = m_newest;
    if (value.channel == Channel::speed)
        m_travelled.takeSpeed(Speed::fromKmPerHour(value.value), m_newest, value.goodFor);
    else if (value.channel == Channel::distance)
        m_travelled.takeCount(Distance::fromKm(value.value), m_newest);
}

bool Joiner::isGood(Channel channel, Seconds now) const
{
    const auto& value = m_heard[indexOf(channel)].value;
    return value && now - value->time <= value->goodFor;
}

std::optional<Sample> Joiner::next(Seconds until)
{
    if (!m_running || !(tickTime() < until))
        return std::nullopt;
    Sample sample;
    sample.time = tickTime();
    bool any = false;
    for (const Channel channel : kChannels) {
        if (!isGood(channel, sample.time))
            continue;
        any = true;
        sample.set(channel, m_heard[indexOf(channel)].value->value);
    }
    if (!any) { // until the next value
        m_running = false;
        return std::nullopt;
    }
    if (sample.speed || sample.distance)
        sample.distance = m_travelled.distance();
    ++m_tick;
    return sample;
}

std::optional<Seconds> Joiner::age(Channel channel, Seconds now) const
{
    const auto& value = m_heard[indexOf(channel)].value;
    return value ? std::optional(now - value->time) : std::nullopt;
}

} // namespace undermark
