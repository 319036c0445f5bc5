// SPDX-License-Identifier: GPL-3.0-or-later
//
// How the car does just now, against what its mode rates say: the logarithm of
// (litres burnt / litres the rates expect) follows
//
//     y = a + b * recent + c * cos(year) + s * sin(year) + p * pace + r * recent pace + noise
//
// recent: exponentially weighted mean of y over the last stretches; recent pace:
// that of pace, so that what the pace explained of those stretches is not
// carried on (as in a regression with autocorrelated errors); year: the
// season at the begin of the stretch, an annual harmonic shrunk to none; pace:
// log of litres burnt per day since the last fill against this driver's usual
// (long days on the road burn less per km than weeks of errands). Conjugate
// regression with forgetting; what one stretch can teach is bounded (Huber), so
// that one odd tank does not carry the level away.
//
// Where the pace is not known, a part of the last stretch's stands in and its
// scatter goes into the variance.
#pragma once

#include "engine/base/records.h"
#include "engine/consumption/conjugate_regression.h"

namespace undermark {

// What is known about a stretch besides litres and kilometres.
struct Circumstances {
    std::optional<Instant> begin;                 // season; none: as if spring or autumn
    std::optional<double> litresPerDay;           // since the last fill, > 0
};

// Litres per day of a stretch; a day is added, because dates are whole days and
// a stretch within one is not infinitely fast.
double litresPerDay(Volume burnt, Instant begin, Instant end);

class Trend {
public:
    Trend();

    // Law of y for a stretch whose noise has this relative variance: variance of
    // litres over litres^2, > 0 (0: the law of the level alone).
    StudentT predict(const Circumstances& now, double relativeVariance) const;

    // Learns y of one stretch. O(1).
    void observe(const Circumstances& then, double y, double relativeVariance);

    // The rates that y is measured against have moved: y of the past is now less
    // by `shift`.
    void rebase(double shift) { m_recent -= shift; }

    // Factor by which the relative variances given are too small or too large.
    double noiseFactor() const;

private:
    std::vector<double> features(const Circumstances& now) const;

    ConjugateRegression m_regression;
    double m_recent = 0;         // mean of y over the last stretches
    double m_lastPace = 0;       // of the last stretch, against the mean
    double m_recentPace = 0;     // mean of it over the last stretches, weighted as m_recent
    double m_paceMean = 0;       // of log litres per day
    double m_paceVariance = 0.5;
    double m_count = 0;
};

} // namespace undermark
