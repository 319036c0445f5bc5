// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reading and count that part slowly: a cumulative sum over innovations, thinned
// until they are nearly independent. Its threshold comes from the false alarms
// wanted; a sum that is certain is told once it also is more than a few decilitres.
#pragma once

#include "engine/tracking/cusum.h"
#include "engine/tracking/moment.h"
#include "engine/tracking/reading_noise.h"
#include "engine/tracking/tracker_types.h"

namespace undermark {

class DriftWatch {
public:
    struct Drift {
        bool up = false;       // the reading went above the count
        double apartL = 0.0;   // of the level that followed it, from the count alone
        Moment onset;          // the last moment without suspicion
    };

    DriftWatch(const TrackerSettings& settings, const Moment& now);

    // `now`: after the block was taken in; `curveSdL` is the curve's own.
    std::optional<Drift> add(const Innovation& seen, const Moment& now, const ReadingNoise& noise,
                             double curveSdL);
    // The level was set anew: nothing before counts.
    void restart(const Moment& now);
    // Suspicion so far is accounted for.
    void clear(const Moment& now);
    // Whatever is suspected began here at the earliest.
    void calm(const Moment& now) { m_calmUp = m_calmDown = now; }

private:
    double m_rangeL;
    Cusum m_cusum;
    double m_sum = 0.0;        // of the innovations not yet in the cumulative sum
    int m_summed = 0;
    Moment m_calmUp, m_calmDown;
};

} // namespace undermark
