// SPDX-License-Identifier: GPL-3.0-or-later
//
// While the car moves, nothing is typed, unless a passenger says so.
#pragma once

#include "engine/base/quantity.h"

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
    // come; an empty or wrong line means not known. False: it cannot be opened.
    bool follow(const QString& file);

signals:
    void changed();

private:
    bool m_moving = false;
    bool m_passenger = false;
};

} // namespace undermark
