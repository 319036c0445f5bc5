// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/live_feed.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::chrono::milliseconds kLookEvery{100};

} // namespace

LiveFeed::LiveFeed(QObject* parent)
    : QObject(parent), m_clock([]() -> Seconds { return std::chrono::steady_clock::now().time_since_epoch(); })
{
    connect(&m_looks, &QTimer::timeout, this, &LiveFeed::look);
}

Result<void> LiveFeed::follow(const SourceOptions& options)
{
    Result<LiveSources> sources = LiveSources::open(options);
    if (!sources)
        return fail(sources.error());
    m_sources = std::move(*sources);
    if (!m_begin || m_sources->recorded())
        m_begin = m_clock();
    m_openedAt = m_clock() - *m_begin;
    m_newest = {};
    m_looks.start(kLookEvery);
    emit opened();
    return {};
}

void LiveFeed::leave()
{
    m_looks.stop();
    if (!m_sources)
        return;
    m_sources.reset();
    emit opened();
    emit looked();
}

Seconds LiveFeed::now() const
{
    return m_sources->recorded() ? m_newest : m_sources->now();
}

std::optional<Seconds> LiveFeed::age(Channel channel) const
{
    return m_sources ? m_sources->joiner().age(channel, now()) : std::nullopt;
}

Seconds LiveFeed::quietFor() const
{
    Seconds quiet = now() - m_openedAt;
    for (const Channel channel : kChannels)
        quiet = std::min(quiet, age(channel).value_or(quiet));
    return quiet;
}

void LiveFeed::look()
{
    if (m_sources->ended()) { // (a look after the last sample)
        m_looks.stop();
        emit ended();
        return;
    }
    m_sources->take(m_clock() - *m_begin);
    while (const auto sample = m_sources->next()) {
        m_newest = sample->time;
        emit sampled(*sample);
    }
    emit looked();
}

} // namespace undermark
