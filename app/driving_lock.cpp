// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/driving_lock.h"

#include <QFile>
#include <QSocketNotifier>
#include <cmath>
#include <fcntl.h>
#include <unistd.h>

namespace undermark {

namespace {

constexpr double kMovingKmh = 5.0; // a receiver at rest shows some km/h

} // namespace

void DrivingLock::setSpeed(std::optional<Speed> speed)
{
    const bool moving = speed && speed->kmPerHour() > kMovingKmh;
    if (moving == m_moving)
        return;
    m_moving = moving;
    m_passenger = false;
    emit changed();
}

void DrivingLock::confirmPassenger()
{
    if (!m_moving)
        return;
    m_passenger = true;
    emit changed();
}

bool DrivingLock::follow(const QString& file)
{
    // Read and write, so that a pipe does not end when its writer does.
    int handle = ::open(QFile::encodeName(file).constData(), O_RDWR | O_NONBLOCK);
    if (handle < 0)
        handle = ::open(QFile::encodeName(file).constData(), O_RDONLY | O_NONBLOCK);
    if (handle < 0)
        return false;
    auto* notifier = new QSocketNotifier(handle, QSocketNotifier::Read, this);
    connect(notifier, &QSocketNotifier::activated, this, [this, handle, notifier] {
        char text[256];
        const ssize_t length = ::read(handle, text, sizeof text);
        if (length <= 0) { // a plain file at its end: the speed is not known any more
            notifier->setEnabled(false);
            return;
        }
        const QList<QByteArray> lines = QByteArray(text, int(length)).trimmed().split('\n');
        bool ok = false;
        const double kmh = lines.last().trimmed().toDouble(&ok);
        setSpeed(ok && std::isfinite(kmh) ? std::optional(Speed::fromKmPerHour(kmh)) : std::nullopt);
    });
    return true;
}

} // namespace undermark
