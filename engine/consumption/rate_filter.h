// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a car burns, followed from stretch to stretch: an extended Kalman filter over the
// logarithm of the rate. Of a stretch of `litres` the filter expects
//
//     log(litres) = log(sum of base_j * exp(level + own_j) * quantity_j)
//                   + fast + x'b + (click of this fill - click of the last) / u
//
// quantity: km by mode, idle hours, cold starts, and km of height beyond the usual, which the level
// is not on and which may be below 0; level: a random walk (the car, the
// driver, a roof box); fast: what lasts some weeks, fading by time (AR(1)); x: days since
// the last fill, size of the stretch, season; u: its litres over the usual ones. The click
// of a nozzle that closes the tank late makes this stretch longer and the next shorter.
// All noise but the click's is in proportion to one scale s^2, which is learnt, as is what
// of it is the road's (noise_split.h).
//
// Constants are round numbers measured on real logs; what each is worth is printed by
// tests/accuracy/consumption_accuracy (DEVELOPERS.md).
//
// Guarantees (each has a test in tests/engine/consumption/rate_filter_test.cpp):
//  * a stretch no larger than the click teaches next to nothing, and short stretches are
//    judged in litres, not by the logarithm;
//  * what one stretch can teach is bounded; two that stand out to the same side running
//    are a change, and followed;
//  * learning costs O((modes + 11)^2), whatever was learnt before.
#pragma once

#include "engine/base/records.h"
#include "engine/consumption/log_law.h"
#include "engine/consumption/noise_split.h"
#include "engine/consumption/rate_prior.h"

#include <array>
#include <cmath>
#include <optional>
#include <vector>

namespace undermark {

struct FilterConstants {
    double scale = 0.075;         // s before anything is learnt
    double scaleWeight = 2;       // of that, in stretches
    double scaleKeep = 0.95;      // of what was learnt of s^2, per stretch
    double levelWalk = 0.01;      // variance per stretch, over s^2
    double fast = 0.469;          // variance of the fast part, over s^2
    double fastKeep = 0.6;        // of it, over the usual days between two fills
    double click = 1;             // factor on the variance of the click
    double fade = 1.005;          // of the variance of coefficients and items, per stretch
    double bound = 2;             // scores beyond which a stretch teaches less
    double turn = 2.5;            // scores that two stretches running make a change with
    double turnSpread = 0.25;     // of such a change, over score^2 * variance
    double promisedMore = 1.05;   // factor on the spread that is promised
    bool days = true;             // use the days since the last fill
    bool season = true;
    bool size = true;
};

// One stretch, or driving ahead, as the filter sees it.
struct FilterStretch {
    std::vector<double> quantity;     // by item of the prior; any scale where litres are given
    double litres = 0;                // burnt, > 0
    double levelSd_l = 0;             // beyond the click
    int clickEnds = 2;                // ends at a first click
    bool follows = true;              // begins at the click that ended the last stretch
    double tanks = 1;                 // >= 1: usual stretches in a row, each of litres / tanks
    std::optional<double> days;       // since the last fill
    std::optional<Instant> middle;    // none: as if spring or autumn
};

class RateFilter {
public:
    RateFilter(const RatePrior& prior, const FilterConstants& constants);

    // Of log(litres): mean + h * (state's error) + noise.
    struct Prediction {
        std::vector<double> h;
        double size;         // of each of the tanks, in usual stretches
        double fastKeep;     // over one of them
        double mean;
        double state;        // variance of h * state, with what it walks until then
        double noise;        // variance of the rest
    double fromShortness; // of that, what a whole tank's road would have averaged out
        double sd() const { return std::sqrt(state + noise); }
    };
    // How a stretch of known litres and quantities stands out.
    struct Surprise {
        Prediction expected;
        double error;        // log(litres / expected); for short stretches (litres - expected) / expected
        bool isShort;
        double score() const { return error / expected.sd(); }
    };
    Surprise surprise(const FilterStretch& stretch) const;

    // Law of log(litres per unit of quantity) for given litres.
    HeavyTail law(const FilterStretch& ahead) const;
    // Share of its variance that a whole tank's road would have averaged out, 0 to 1.
    double fromShortness(const FilterStretch& ahead) const;
    double expectedLitres(const FilterStretch& stretch) const;   // median

    // `seen` is this filter's surprise at the stretch.
    void learn(const FilterStretch& stretch, const Surprise& seen);
    // An entry that is not believed: time passes, the last click is not known.
    void skip(const FilterStretch& stretch, const Surprise& seen);
    // The car has changed by about `spread` of the logarithm.
    void change(double spread);

    // The level's road has so many km of height more in each km (less, below 0); `road` is a km of it
    // without.
    void addHills(FilterStretch road, double perKm);

    double scale() const { return m_scale; }                     // s
    // Of a usual stretch's litres over their square.
    double roadVariance() const { return m_split.roadVariance(m_scale * m_scale); }
    Estimate<Volume> lastClick() const;                          // poured beyond the usual full
    double clickSd_l() const;
    double usual_l() const { return m_usual_l; }                 // litres of a usual stretch
    double usualDays() const { return m_days; }
    std::size_t learnt() const { return m_learnt; }

    // What the rates share and what is each item's own, for driving at `middle`, days
    // unknown: log(unit cost_j / base_j) = common + own_j.
    struct Rates {
        HeavyTail trend;               // of fast + x'b: what is only now
        std::vector<double> longRun;   // by item: level + own
        std::vector<double> longRunCovariance;   // row by row
        std::vector<double> now;       // by item: level + own + fast + x'b
        std::vector<double> nowCovariance;
    };
    Rates rates(std::optional<Instant> middle) const;

private:
    Prediction predict(const FilterStretch& stretch, double size) const;
    double sizeOf(const FilterStretch& stretch) const;
    std::array<double, 6> features(const FilterStretch& stretch, double size) const;
    double logCost(const FilterStretch& stretch, std::vector<double>& h) const;   // with the level
    void advance(const FilterStretch& stretch, double fastKeep);
    void remember(const FilterStretch& stretch, const Surprise& seen);
    void forgetClick();
    double clickVariance() const;      // over (usual litres)^2

    FilterConstants m_constants;
    std::vector<double> m_base;
    std::vector<double> m_mean;            // level, fast, click, coefficients, own of each item
    std::vector<double> m_covariance;      // of those, row by row
    std::vector<double> m_priorMean, m_priorVariance;
    double m_scale;
    double m_scaleSum, m_scaleWeights;
    double m_lastScore = 0;
    NoiseSplit m_split;
    double m_usual_l;                  // geometric mean
    double m_logDays = 0;              // mean of log(days + 2)
    double m_days = 7;                 // mean
    // What the days say (three features): their mean, mean square, and the last one's.
    std::array<double, 3> m_paceMean{}, m_paceVariance{}, m_lastPace{};
    std::size_t m_learnt = 0;
    std::size_t m_daysKnown = 0;
};

} // namespace undermark
