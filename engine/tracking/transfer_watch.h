// SPDX-License-Identifier: GPL-3.0-or-later
//
// Saddle tank: does the lobe without the pump empty? Its level standing still
// above its stop while the pump's lobe falls means that nothing is transferred,
// and that fuel cannot be reached. (The other way round is how a jet pump works.)
// Less than 3 % of the tank in it is not told from none.
#pragma once

#include "engine/calibration/gauge.h"
#include "engine/tracking/tracker_types.h"

namespace undermark {

class TransferWatch {
public:
    // `total` is the tank's range; a fault takes a fall of 6 % of it.
    explicit TransferWatch(Volume total) : m_totalL(total.litres()) {}

    // Levels of both lobes at one time; true once when the fault is found.
    bool add(Seconds time, Volume pumpLobe, const LevelObservation& otherLobe);
    // By a gauge and what it reads; never with one signal.
    bool add(Seconds time, const Gauge& gauge, const SenderReading& reading);
    // The pump lobe's fall since the other one last moved.
    Volume fallen() const { return Volume::fromLitres(m_referenceL - m_pumpL); }

private:
    double m_totalL;
    bool m_set = false, m_said = false;
    double m_timeS = 0.0, m_pumpL = 0.0, m_otherL = 0.0;       // smoothed over a minute
    double m_referenceL = 0.0, m_otherReferenceL = 0.0;
};

} // namespace undermark
