// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/driving_lock.h"

#include <utility>

namespace undermark {

namespace {

constexpr double kMovingKmh = 5.0; // a receiver at rest shows some km/h
constexpr Seconds kKnownFor{2.0};

} // namespace

void DrivingLock::setSpeed(std::optional<Speed> speed)
{
    const bool moving = speed && speed->kmPerHour() > kMovingKmh;
    if (moving == m_moving)
        return;
    m_moving = moving;
    m_passenger = false;
    emit changed();
}

void DrivingLock::confirmPassenger()
{
    if (!m_moving)
        return;
    m_passenger = true;
    emit changed();
}

Result<void> DrivingLock::follow(const QString& file)
{
    auto* feed = new LiveFeed(this);
    SourceOptions options;
    options.sources = {"lines:" + file.toStdString()};
    listen(*feed, Channel::signal);
    return feed->follow(options);
}

void DrivingLock::follow(LiveFeed& feed) { listen(feed, Channel::speed); }

void DrivingLock::listen(LiveFeed& feed, Channel channel)
{
    connect(&feed, &LiveFeed::sampled, this, [this, channel](const Sample& sample) {
        if (const auto kmh = sample.get(channel))
            m_heard = Speed::fromKmPerHour(*kmh);
    });
    connect(&feed, &LiveFeed::looked, this, [this, &feed, channel] {
        if (const auto age = feed.age(channel))
            look(feed, feed.now() - *age, *age <= kKnownFor);
    });
    const auto unknown = [this] { setSpeed(std::nullopt); };
    connect(&feed, &LiveFeed::ended, this, unknown);
    connect(&feed, &LiveFeed::opened, this, unknown);
}

void DrivingLock::look(const LiveFeed& feed, Seconds valueAt, bool fresh)
{
    long garbled = 0;
    for (const LiveSources::Told& told : feed.sources().told())
        garbled += told.counts.garbled;
    if (std::exchange(m_garbled, garbled) != garbled)
        m_doubtedAt = valueAt;
    setSpeed(fresh && m_doubtedAt != valueAt ? m_heard : std::nullopt);
}

} // namespace undermark
