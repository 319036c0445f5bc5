// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <atomic>
#include <string>
#include <thread>

namespace undermark::test {

// Watches over the event loop of the thread it is made on: one that does not come round
// within a second ends the program with a message, because a test that hangs says nothing.
// The second is of the thread's own processor time, so that a busy machine is no failure.
class LoopWatch {
public:
    explicit LoopWatch(std::string journey);
    ~LoopWatch();

    // The longest time it took so far, s of processor time.
    double longest() const { return m_longest; }

private:
    void watch(const std::stop_token& stop);

    std::string m_journey;
    clockid_t m_clock{}; // processor time of the watched thread
    QTimer m_beat;
    std::atomic<double> m_lastBeat = 0.0;
    std::atomic<double> m_longest = 0.0;
    std::jthread m_watcher;
};

} // namespace undermark::test
