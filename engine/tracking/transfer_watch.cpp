// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/transfer_watch.h"

#include "engine/tracking/sender_reading.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kSmoothS = 60.0;
constexpr double kFall = 0.06;     // of the total, by the pump's lobe
constexpr double kMoved = 0.012;   // of the total, by the other
// A lobe with less of the total is as good as empty: the play of the arm and a float
// that rests just above the floor let an empty one read so much.
constexpr double kEmpty = 0.03;

} // namespace

bool TransferWatch::add(Seconds time, Volume pumpLobe, const LevelObservation& otherLobe)
{
    const double other = otherLobe.level.mean.litres();
    if (!m_set) {
        m_set = true;
        m_pumpL = m_referenceL = pumpLobe.litres();
        m_otherL = m_otherReferenceL = other;
    }
    const double seconds = std::clamp(time.count() - m_timeS, 0.0, kSmoothS);
    m_timeS = time.count();
    const double gain = 1.0 - std::exp(-seconds / kSmoothS);
    m_pumpL += gain * (pumpLobe.litres() - m_pumpL);
    m_otherL += gain * (other - m_otherL);
    const bool moved = std::abs(m_otherL - m_otherReferenceL) > kMoved * m_totalL;
    const bool empty = otherLobe.kind != ReadingKind::exact || m_otherL < kEmpty * m_totalL;
    if (moved || empty || m_pumpL > m_referenceL) {
        m_referenceL = m_pumpL;
        m_otherReferenceL = m_otherL;
        return false;
    }
    if (m_said || m_referenceL - m_pumpL < kFall * m_totalL)
        return false;
    m_said = true;
    return true;
}

bool TransferWatch::add(Seconds time, const Gauge& gauge, const SenderReading& reading)
{
    if (!gauge.hasTwoSignals() || !reading.other)
        return false;
    return add(time, gauge.lobes()[0].read(reading.signal).added.mean,
               observe(gauge.lobes()[1], *reading.other));
}

} // namespace undermark
