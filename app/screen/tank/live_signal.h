// SPDX-License-Identifier: GPL-3.0-or-later
//
// The sender's signal, live: one number a line with a decimal point, or two
// separated by a comma where a saddle tank has two signals.
//
// Guarantees (each has a test in tests/app/screen/tank/live_signal_test.cpp):
//  * a line that is anything else is counted and kept to be shown, never guessed;
//  * of the readings only the last ones are kept: kWindow of time, kMost in number;
//  * silence and the end of the source are told, and end what was gathered.
#pragma once

#include "engine/calibration/settled_reading.h"

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QTimer>
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

    // Reads from `file` (line_source.h). False: it cannot be opened.
    bool follow(const QString& file);
    void setClock(std::function<Seconds()> clock) { m_clock = std::move(clock); }

    // How many numbers a line must have, 1 or 2.
    void setCount(int count);
    void take(const QByteArray& line);
    void end();
    void look();   // a moment has passed: has it fallen silent?
    void forget(); // what was gathered; another level begins

    State state() const { return m_state; }
    Seconds quietFor() const; // since the last reading
    Seconds gathered() const; // from the first to the last reading kept
    std::span<const TimedSignal> first() const { return m_first; }
    std::span<const TimedSignal> second() const { return m_second; } // empty with one signal
    int refused() const { return m_refused; }
    QString lastRefused() const { return m_lastRefused; }

signals:
    void changed(); // some times a second at most

private:
    void trim();

    std::function<Seconds()> m_clock;
    QTimer m_moments;
    std::vector<TimedSignal> m_first, m_second;
    Seconds m_lastAt{};
    int m_count = 1;
    int m_refused = 0;
    QString m_lastRefused;
    State m_state = State::none;
    bool m_news = false;
};

} // namespace undermark
