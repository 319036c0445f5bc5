// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/loop_watch.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <pthread.h>

namespace undermark::test {

namespace {

constexpr double kPatience = 1.0; // s

double secondsOf(clockid_t clock)
{
    timespec now{};
    clock_gettime(clock, &now);
    return double(now.tv_sec) + double(now.tv_nsec) * 1e-9;
}

} // namespace

LoopWatch::LoopWatch(std::string journey) : m_journey(std::move(journey))
{
    pthread_getcpuclockid(pthread_self(), &m_clock);
    m_lastBeat = secondsOf(m_clock);
    QObject::connect(&m_beat, &QTimer::timeout, [this] {
        const double now = secondsOf(m_clock);
        m_longest = std::max(m_longest.load(), now - m_lastBeat);
        m_lastBeat = now;
    });
    m_beat.start(10);
    m_watcher = std::jthread([this](const std::stop_token& stop) { watch(stop); });
}

LoopWatch::~LoopWatch() = default;

void LoopWatch::watch(const std::stop_token& stop)
{
    while (!stop.stop_requested()) {
        std::this_thread::sleep_for(std::chrono::milliseconds(50));
        if (secondsOf(m_clock) - m_lastBeat <= kPatience)
            continue;
        std::fprintf(stderr, "%s: the window does not answer within a second\n", m_journey.c_str());
        std::_Exit(1);
    }
}

} // namespace undermark::test
