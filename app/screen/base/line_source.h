// SPDX-License-Identifier: GPL-3.0-or-later
//
// Lines from a file, pipe or serial device as they come; nothing waits for them.
//
// Guarantees (each has a test in tests/app/screen/tank/live_signal_test.cpp):
//  * a pipe may be opened and closed by any number of writers, it does not end;
//  * a file is a recording: it is played at kLinesPerSecond, then it has ended;
//  * a line without end takes no memory: past kLongest it counts as an empty one.
#pragma once

#include <QByteArray>
#include <QObject>
#include <QSocketNotifier>
#include <QTimer>
#include <memory>

namespace undermark {

class LineSource : public QObject {
    Q_OBJECT

public:
    static constexpr int kLinesPerSecond = 10;
    static constexpr int kLongest = 256; // bytes

    using QObject::QObject;
    ~LineSource() override;

    // Once. False: it cannot be opened. (The speed of a serial line is whatever
    // stty has set.)
    bool open(const QString& file);

signals:
    void line(const QByteArray& text); // without its end
    void ended();

private:
    void read();
    void playLine();
    bool passLine(); // whether there was a whole one

    int m_handle = -1;
    std::unique_ptr<QSocketNotifier> m_notifier;   // not of a recording
    QByteArray m_waiting;      // not passed on yet
    bool m_tooLong = false;    // what is waiting is the rest of such a line
    bool m_ended = false;
    QTimer m_play;
};

} // namespace undermark
