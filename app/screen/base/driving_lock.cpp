// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/driving_lock.h"

#include "app/screen/base/line_source.h"

#include <cmath>

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
    auto* source = new LineSource(this);
    if (!source->open(file))
        return false;
    connect(source, &LineSource::line, this, [this](const QByteArray& line) {
        bool ok = false;
        const double kmh = line.trimmed().toDouble(&ok);
        setSpeed(ok && std::isfinite(kmh) ? std::optional(Speed::fromKmPerHour(kmh)) : std::nullopt);
    });
    connect(source, &LineSource::ended, this, [this] { setSpeed(std::nullopt); });
    return true;
}

} // namespace undermark
