// SPDX-License-Identifier: GPL-3.0-or-later
//
// While the car moves, nothing is typed, unless a passenger says so.
#pragma once

#include "app/screen/base/live_feed.h"

#include <QObject>
#include <optional>
#include <qqmlintegration.h>

namespace undermark {

class DrivingLock : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(bool locked READ locked NOTIFY changed FINAL)

public:
    using QObject::QObject;

    bool locked() const { return m_moving && !m_passenger; }

    // The speed as some receiver gives it; nothing where it is not known, which
    // locks nothing. At a halt the passenger's word is used up.
    void setSpeed(std::optional<Speed> speed);
    Q_INVOKABLE void confirmPassenger();

    // Reads one number of km/h a line from `file`, a pipe or a device, as lines
    // come; a wrong line, or none for 2 s, means not known. Errors: as LiveSources::open.
    Result<void> follow(const QString& file);
    // The speed of the car's own sources.
    void follow(LiveFeed& feed);

signals:
    void changed();

private:
    void listen(LiveFeed& feed, Channel channel);
    void look(const LiveFeed& feed, Seconds valueAt, bool fresh);

    std::optional<Speed> m_heard;
    std::optional<Seconds> m_doubtedAt; // time of the value after which something was not understood
    long m_garbled = 0;
    bool m_moving = false;
    bool m_passenger = false;
};

} // namespace undermark
