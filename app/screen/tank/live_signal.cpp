// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/live_signal.h"

#include <utility>

namespace undermark {

namespace {

constexpr int kMomentMs = 250;

LiveSignal::Seconds steadyNow()
{
    return std::chrono::steady_clock::now().time_since_epoch();
}

} // namespace

LiveSignal::LiveSignal(QObject* parent) : QObject(parent), m_clock(steadyNow)
{
    connect(&m_moments, &QTimer::timeout, this, &LiveSignal::look);
}

void LiveSignal::follow(LiveFeed& feed)
{
    m_feed = &feed;
    connect(&feed, &LiveFeed::sampled, this, &LiveSignal::hear);
    connect(&feed, &LiveFeed::ended, this, &LiveSignal::end);
    const auto wait = [this] {
        m_moments.stop();
        m_state = m_feed->there() ? State::waiting : State::none;
        m_readingAt.reset();
        m_lastAt = m_clock();
        if (m_feed->there())
            m_moments.start(kMomentMs);
        forget();
    };
    connect(&feed, &LiveFeed::opened, this, wait);
    if (feed.there())
        wait();
}

// A sample repeats what is still good: only a newer value is another reading.
void LiveSignal::hear(const Sample& sample)
{
    m_news = true;
    const Joiner& joiner = m_feed->sources().joiner();
    const std::size_t tank = joiner.age(ofTank(Channel::signal, m_tank), sample.time) ? m_tank : 0;
    if (std::exchange(m_heard, tank) != tank)
        forget();
    const auto age = joiner.age(ofTank(Channel::signal, tank), sample.time);
    const auto reading = sample.get(ofTank(Channel::signal, tank));
    if (!reading || !age || m_readingAt == sample.time - *age)
        return;
    m_readingAt = sample.time - *age;
    const auto second = sample.get(ofTank(Channel::signal2, tank));
    take(Signal::of(*reading), second ? std::optional(Signal::of(*second)) : std::nullopt);
}

void LiveSignal::setTank(std::size_t tank)
{
    if (std::exchange(m_tank, tank) != tank)
        forget();
}

void LiveSignal::setCount(int count)
{
    if (count == m_count)
        return;
    m_count = count;
    m_wrongCount = 0;
    m_firstWrong.clear();
    forget();
}

void LiveSignal::take(Signal first, std::optional<Signal> second)
{
    m_news = true;
    if (second.has_value() != (m_count == 2)) {
        if (m_wrongCount++ == 0)
            m_firstWrong = second ? QStringLiteral("%1,%2").arg(first.value()).arg(second->value())
                                  : QString::number(first.value());
        return;
    }
    if (quietFor() > kSilentAfter) { // what was gathered before is of another time
        m_first.clear();
        m_second.clear();
    }
    m_lastAt = m_clock();
    m_state = State::live;
    m_first.push_back({m_lastAt, first});
    if (second)
        m_second.push_back({m_lastAt, *second});
    trim();
}

long LiveSignal::refused() const
{
    long all = m_wrongCount;
    if (m_feed && m_feed->there())
        for (const LiveSources::Told& told : m_feed->sources().told())
            all += told.counts.garbled;
    return all;
}

QString LiveSignal::firstRefused() const
{
    if (m_feed && m_feed->there())
        for (const LiveSources::Told& told : m_feed->sources().told())
            if (told.counts.garbled > 0)
                return QString::fromStdString(told.counts.firstGarbled);
    return m_firstWrong;
}

void LiveSignal::trim()
{
    std::size_t old = m_first.size() > kMost ? m_first.size() - kMost : 0;
    while (m_first.size() - old > kFewest && m_lastAt - m_first[old].time > kWindow)
        ++old;
    m_first.erase(m_first.begin(), m_first.begin() + std::ptrdiff_t(old));
    if (!m_second.empty())
        m_second.erase(m_second.begin(), m_second.begin() + std::ptrdiff_t(old));
}

void LiveSignal::forget()
{
    m_first.clear();
    m_second.clear();
    m_news = false;
    emit changed();
}

void LiveSignal::end()
{
    m_moments.stop();
    m_state = State::ended;
    forget();
}

void LiveSignal::look()
{
    const bool waits = m_state == State::live || m_state == State::waiting;
    if (waits && quietFor() > kSilentAfter) {
        m_state = State::silent;
        forget();
    } else if (m_news || m_state == State::silent) { // the seconds of a silence are shown
        m_news = false;
        emit changed();
    }
}

LiveSignal::Seconds LiveSignal::quietFor() const
{
    return m_clock() - m_lastAt;
}

LiveSignal::Seconds LiveSignal::gathered() const
{
    return m_first.empty() ? Seconds{} : m_first.back().time - m_first.front().time;
}

} // namespace undermark
