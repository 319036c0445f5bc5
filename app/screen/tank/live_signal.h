// SPDX-License-Identifier: GPL-3.0-or-later
//
// The sender's signal, live, as the guided calibration gathers it: one signal, or the two of
// a saddle tank.
//
// Guarantees (each has a test in tests/app/screen/tank/live_signal_test.cpp):
//  * what the source says and is no reading is counted and kept to be shown, never guessed;
//  * a reading counts once, however often it is joined to others;
//  * of the readings only the last ones are kept: kWindow of time, kMost in number;
//  * of a further tank its own sender is heard, where there is one;
//  * silence and the end of the source are told, and end what was gathered.
#pragma once

#include "app/screen/base/live_feed.h"
#include "engine/calibration/settled_reading.h"

#include <QString>
#include <functional>
#include <span>
#include <vector>

namespace undermark {

class LiveSignal : public QObject {
    Q_OBJECT

public:
    using Seconds = std::chrono::duration<double>;
    enum class State { none, waiting, live, silent, ended };

    static constexpr Seconds kWindow{30};      // slosh has a memory of some seconds
    static constexpr Seconds kSilentAfter{10};
    static constexpr std::size_t kFewest = 10; // kept from a slow source, however old
    static constexpr std::size_t kMost = 600;

    explicit LiveSignal(QObject* parent = nullptr);

    // `feed` outlives it.
    void follow(LiveFeed& feed);
    void setClock(std::function<Seconds()> clock) { m_clock = std::move(clock); }

    // How many signals a reading must have, 1 or 2.
    void setCount(int count);
    // Whose sender it is, as in ofTank(). Until that of a further tank is heard, what is heard of the
    // vehicle's own is taken for it: it may be what hangs on the wire.
    void setTank(std::size_t tank);
    void take(Signal first, std::optional<Signal> second = {});
    void end();
    void look();   // a moment has passed: has it fallen silent?
    void forget(); // what was gathered; another level begins

    State state() const { return m_state; }
    Seconds quietFor() const; // since the last reading
    Seconds gathered() const; // from the first to the last reading kept
    std::span<const TimedSignal> first() const { return m_first; }
    std::span<const TimedSignal> second() const { return m_second; } // empty with one signal
    long refused() const;
    QString firstRefused() const; // as it came; empty: none

signals:
    void changed(); // some times a second at most

private:
    void hear(const Sample& sample);
    void trim();

    std::function<Seconds()> m_clock;
    const LiveFeed* m_feed = nullptr;
    std::optional<Seconds> m_readingAt; // of the feed's newest reading, by its clock
    QTimer m_moments;
    std::vector<TimedSignal> m_first, m_second;
    Seconds m_lastAt{};
    int m_count = 1;
    std::size_t m_tank = 0;
    std::size_t m_heard = 0; // whose is gathered
    long m_wrongCount = 0; // readings of another number of signals
    QString m_firstWrong;
    State m_state = State::none;
    bool m_news = false;
};

} // namespace undermark
