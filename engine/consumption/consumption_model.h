// SPDX-License-Identifier: GPL-3.0-or-later
//
// What driving costs, by kind of driving, learnt from full-to-full stretches in
// two layers. The rates say what a kind of driving costs:
//
//     litres = sum of rate_m * km_m + idle * hours + start * cold starts + noise
//     Var(noise) = s2 * (click^2 + omega^2 * km^2) + tau^2 * km
//
// by conjugate regression (normal-inverse-gamma, see conjugate_regression.h).
// The three terms of the noise are the scatter of the click (fill to fill, does
// not grow), trip-to-trip noise (independent along the way) and the drift of
// day, season and driver (common to a stretch, so it grows like the distance).
// Without the first and the last, intervals are wrong away from one tank. Full
// tanks say next to nothing of tau, so it stays as stated while s2 is learnt. Old
// evidence fades over `memory`. The trend (trend.h) says how the car does just
// now against those rates, and learns s2; its factor applies to all modes.
// Band factors (coverage.h) keep what is shown calibrated.
//
// Guarantees (each has a test in tests/engine/consumption/consumption_model_test.cpp):
//  * before any stretch the forecast is the stated prior, wide;
//  * kilometres that no trip accounts for count as the usual mix, which is
//    learnt from the trips and carries its own uncertainty;
//  * rates read off the model are positive, with the covariance that goes with
//    that condition;
//  * observing costs O(modes^3), whatever was observed before.
#pragma once

#include "engine/consumption/click.h"
#include "engine/consumption/conjugate_regression.h"
#include "engine/consumption/coverage.h"
#include "engine/consumption/interval.h"
#include "engine/consumption/mode_rates.h"
#include "engine/consumption/noise_split.h"
#include "engine/consumption/trend.h"
#include "engine/consumption/usual_mix.h"

#include <string>

namespace undermark {

// Spread of the noise before anything is learnt. Sources: the click repeats to
// some tenths of a litre up to one (common practice); omega, a day's deviation as
// a share of the rate; tau^2 is 8.4e-4 for the cars of one set of real trips
// (measured on them), taken as the middle of a factor of two either way in tau
// (judgement), over which its mean is 1.35 times that.
struct NoiseSetup {
    Volume clickSd = kUsualClickSd;
    double tauSquared_l2PerKm = 1.14e-3;
    Fraction omega = Fraction::fromPercent(8);
};

struct ConsumptionSetup {
    std::vector<Mode> modes;     // at least one; stated rates sharpen the prior of all
    NoiseSetup noise;
    Distance memory = Distance::fromKm(15000);   // evidence fades by 1/e over this
};

// The rate of one mix of modes, for the range law.
struct RateForecast {
    // Predictive for a long stretch: posterior of the rates and omega, without
    // what averages out along the way. sd is the standard deviation of the t.
    Estimate<Consumption> rate;
    Consumption scale;           // scale of that t; scale < sd
    double degreesOfFreedom = 0; // above 2
    double tauSquaredPerKm = 0;  // L^2/km, what averages out
};

struct Band {
    Distance low;
    Distance high;
};

// How far given litres go, as one number and as bands.
struct DistanceForecast {
    // Makes the expected relative error least: a little below the median, the
    // median of a log-normal law weighted by 1/distance, exp(mu - s^2).
    Distance point;
    std::array<Band, 3> bands;   // for kBandLevels
};

class ConsumptionModel {
public:
    explicit ConsumptionModel(ConsumptionSetup setup);

    // Learns from one stretch. A mode that the setup lacks counts as usual mix.
    void observe(const Interval& interval);

    // The rate of `ahead` (its proportions; any total > 0). Empty: usual mix.
    // A mode that the setup lacks counts as usual mix. Where `now` has no time, the
    // season is that of the last stretch's end; so below.
    RateForecast forecast(const Mix& ahead = {}, const Circumstances& now = {}) const;

    ModeRates rates(const Circumstances& now = {}) const;

    // Distance of a stretch in the usual mix that burnt these litres (> 0).
    // `clickEnds` as in Interval: 0 where the litres are known without a click.
    // The first form stretches its bands by the model's own factors: those learnt
    // of tanks, or of short stretches; longer horizons bring theirs. O(modes^2).
    DistanceForecast forecastDistance(Volume burnt, const Circumstances& now,
                                      int clickEnds = 2) const;
    DistanceForecast forecastDistance(Volume burnt, const Circumstances& now, int clickEnds,
                                      const BandFactors& factors) const;

    // Whether these litres are at most a fifth of what a stretch usually burns.
    bool isShort(Volume burnt) const;

    // Law of log(litres / expectedLitres) of a stretch like this one.
    StudentT predictLogRatio(const Interval& stretch) const;
    Volume expectedLitres(const Interval& stretch) const;

    // Law of the trend: log of what is burnt now over what the rates expect.
    StudentT trendNow(const Circumstances& now) const { return m_trend.predict(orLast(now), 0); }

    std::size_t observed() const { return m_observed; }
    const ConsumptionSetup& setup() const { return m_setup; }

private:
    Circumstances orLast(Circumstances now) const;
    double unknownKm(const Interval& interval) const;
    std::vector<double> regressors(const Interval& interval) const;
    double expectedLitres(std::span<const double> x) const;
    double clickVariance(const Interval& interval) const;   // L^2, as learnt
    double noiseVariance(const Interval& interval, std::span<const double> x) const;
    double relativeVariance(const Interval& interval, std::span<const double> x) const;
    const BandFactors& bandsFor(const Circumstances& now) const;
    std::optional<std::size_t> indexOf(const std::string& mode) const;

    ConsumptionSetup m_setup;
    ConjugateRegression m_regression;
    Trend m_trend;
    BandFactors m_bands;             // of tanks, where the pace is known
    BandFactors m_aheadBands;        // of tanks, where it is not
    BandFactors m_shortBands;        // of stretches of at most a fifth of one, over those
    double m_usual_l = 0;            // mean of the last tanks
    NoiseSplit m_split;
    UsualMix m_mix;
    std::optional<Instant> m_lastEnd;
    std::size_t m_observed = 0;
};

} // namespace undermark
