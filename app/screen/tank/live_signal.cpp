// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/live_signal.h"

#include "app/screen/base/line_source.h"
#include "engine/signals/text_fields.h"

#include <array>

namespace undermark {

namespace {

constexpr int kMomentMs = 250;
constexpr int kShownOfLine = 24; // letters of a refused line

LiveSignal::Seconds steadyNow()
{
    return std::chrono::steady_clock::now().time_since_epoch();
}

} // namespace

LiveSignal::LiveSignal(QObject* parent) : QObject(parent), m_clock(steadyNow)
{
    connect(&m_moments, &QTimer::timeout, this, &LiveSignal::look);
}

bool LiveSignal::follow(const QString& file)
{
    auto* source = new LineSource(this);
    if (!source->open(file))
        return false;
    connect(source, &LineSource::line, this, &LiveSignal::take);
    connect(source, &LineSource::ended, this, &LiveSignal::end);
    m_state = State::waiting;
    m_lastAt = m_clock();
    m_moments.start(kMomentMs);
    return true;
}

void LiveSignal::setCount(int count)
{
    if (count == m_count)
        return;
    m_count = count;
    m_refused = 0;
    m_lastRefused.clear();
    forget();
}

void LiveSignal::take(const QByteArray& line)
{
    m_news = true;
    std::array<double, 2> numbers{};
    const std::string_view text(line.constData(), std::size_t(line.size()));
    if (int(numbersIn(text, numbers)) != m_count) {
        ++m_refused;
        m_lastRefused = QString::fromUtf8(line.trimmed()).left(kShownOfLine);
        return;
    }
    if (quietFor() > kSilentAfter) { // what was gathered before is of another time
        m_first.clear();
        m_second.clear();
    }
    m_lastAt = m_clock();
    m_state = State::live;
    m_first.push_back({m_lastAt, Signal::of(numbers.front())});
    if (m_count == 2)
        m_second.push_back({m_lastAt, Signal::of(numbers.back())});
    trim();
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
