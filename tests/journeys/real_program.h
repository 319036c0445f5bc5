// SPDX-License-Identifier: GPL-3.0-or-later
//
// The program `undermark` itself in a real window: on a display of its own (Xvfb), touched
// by xdotool, looked at through the display's memory.
#pragma once

#include <QImage>
#include <QLine>
#include <QProcess>
#include <QTemporaryDir>

namespace undermark::test {

class RealProgram {
public:
    // Why it cannot be tried on this machine; empty: it can.
    static QString missing();

    // Starts the display and the program with these arguments.
    RealProgram(const QStringList& arguments, QSize size);
    ~RealProgram();

    // A touch there, or a slide; never a double tap. False where a touch does not change the picture before the
    // program has worked for a second, or a minute is over: it is frozen. (A page that is
    // whole in sight is not moved by a slide.)
    bool move(const QLine& gesture);
    // Until the picture has not changed for a while. False as above.
    bool atRest();
    QImage picture() const; // of the window
    QByteArray printed(); // as errors
    bool end();             // asks it to, as a session does

private:
    double worked() const; // s of processor time of its first thread
    bool sleeps() const;   // all of its threads wait for something

    QTemporaryDir m_folder;
    QSize m_size;
    QProcess m_display;
    QProcess m_program;
    QString m_number; // of the display
    QLine m_last;     // gesture
};

// Starts the program, does this (Hand::gestures) in turn and ends it. Empty: it came to rest after
// each of them and warned of no page; else what went wrong.
QString walk(const QStringList& arguments, QSize size, const QList<QLine>& gestures);

} // namespace undermark::test
