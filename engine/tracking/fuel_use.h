// SPDX-License-Identifier: GPL-3.0-or-later
//
// From one sample to the next: how many litres the source counts, how far the
// car went and how it moved. The best source at hand is taken for every step:
// fuel rate, else distance, else speed (both times the stated rate), else time.
#pragma once

#include "engine/tracking/tracker_types.h"

namespace undermark {

// What happened between two samples; numbers in s, L, km, m/s^2.
struct UseStep {
    double seconds = 0.0;
    double usedL = 0.0;          // by the source, before scaling
    double unknownL2 = 0.0;      // variance of what a gap may have burnt besides
    double km = 0.0;
    double acceleration = 0.0;   // absolute, 0 where speed is unknown
    bool moving = false;         // faster than walking at either end, or unknown
    bool motionKnown = false;    // the sample has a speed
    bool gap = false;            // no samples for more than a minute
    bool clockJump = false;      // time went back: the step counts as no time
};

class FuelUse {
public:
    explicit FuelUse(const TrackerSettings& settings);
    UseStep step(const TrackerSample& sample);

    // How well the source is known before it was compared with the level: a
    // measured fuel rate 15 %, a stated rate what was stated and 10 % for the
    // odometer, a guessed rate 60 %, time alone 60 %.
    double scaleSd() const;
    // A guess must never be called implausible, and nothing may be blamed on it.
    bool guessed() const { return !m_measured && !(m_stated && m_km); }
    bool measured() const { return m_measured; }
    // Nothing but the clock: litres per hour.
    bool timeAlone() const { return !m_measured && !m_km; }
    // Litres the source counts per km; nothing where it does not count km.
    std::optional<double> litresPerKm() const;

private:
    double gapLitres2(const TrackerSample& sample, UseStep& step) const;
    double counted(const TrackerSample& sample, UseStep& step);

    double m_litresPerKm;
    double m_idleLPerS;
    double m_rateSd;             // relative
    bool m_stated;
    bool m_measured = false;     // fuel rate seen
    bool m_km = false;           // distance or speed seen
    bool m_first = true;
    double m_time = 0.0;
    std::optional<double> m_speed;       // km/h, of the sample before
    std::optional<double> m_distance;    // km
};

} // namespace undermark
