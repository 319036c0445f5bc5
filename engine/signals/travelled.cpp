// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/travelled.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr Speed kFastestCounted = Speed::fromKmPerHour(300.0);
constexpr Distance kCoarsestStep = Distance::fromKm(1.0); // counts may come in whole km

Distance gone(Speed speed, Seconds time)
{
    return Distance::fromKm(speed.kmPerHour() * time.count() / 3600.0);
}

} // namespace

void Travelled::takeCount(Distance count, Seconds time)
{
    const Distance step = m_count ? count - *m_count : Distance();
    const Seconds passed = m_countTime ? std::max(time - *m_countTime, Seconds(0)) : Seconds(0);
    const bool goesOn = m_count && step >= Distance() && step <= gone(kFastestCounted, passed) + kCoarsestStep;
    m_countTime = time;
    if (goesOn && step == Distance())
        return;
    // Speed may have run ahead of a coarse count, but what was shown stays.
    m_atCount = goesOn ? m_atCount + step : m_shown;
    m_since = Distance();
    m_count = count;
    show();
}

void Travelled::takeSpeed(Speed speed, Seconds time, Seconds goodFor)
{
    if (m_speed) {
        const Seconds passed = time - m_speedTime;
        if (passed > Seconds(0) && passed <= goodFor)
            m_since += gone(0.5 * (*m_speed + speed), passed);
        else if (passed > goodFor)
            m_since += gone(*m_speed, goodFor);
    }
    m_speed = speed;
    m_speedTime = time;
    show();
}

void Travelled::clockJumped()
{
    m_speed.reset();
    m_countTime.reset();
}

void Travelled::show()
{
    m_shown = std::max(m_shown, m_atCount + m_since);
}

} // namespace undermark
