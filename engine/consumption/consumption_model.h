// SPDX-License-Identifier: GPL-3.0-or-later
//
// What driving costs, by kind of driving, learnt from full-to-full stretches. One filter
// (rate_filter.h) follows the rate; a stretch that stands out splits it into branches:
// it was an ordinary one, a slip of the pen, or the car has changed. Each branch goes on by
// itself and is weighed by how well it foretells what comes (a Gaussian sum filter,
// Alspach & Sorenson 1972), so that a rise widens what is promised at once, and two odd
// stretches alike settle it. Factors (coverage.h) keep what is promised true.
//
// Guarantees (each has a test in tests/engine/consumption/consumption_model_test.cpp):
//  * before any stretch the forecast is the prior: stated, or as wide as what people drive;
//  * kilometres that no trip accounts for count as the usual mix, which is learnt from
//    the trips;
//  * heights that trips tell teach what a km of height takes; what is usual of them stays within
//    the rates, so that roads as hilly as ever are told the same as without heights;
//  * rates are positive;
//  * observing costs O(modes^2) for each branch, at most four, whatever was observed before.
#pragma once

#include "engine/consumption/click.h"
#include "engine/consumption/coverage.h"
#include "engine/consumption/interval.h"
#include "engine/consumption/mode_rates.h"
#include "engine/consumption/rate_filter.h"
#include "engine/consumption/rate_worlds.h"
#include "engine/consumption/usual_mix.h"

#include <string>

namespace undermark {


struct ConsumptionSetup {
    std::vector<Mode> modes;                     // at least one; stated rates sharpen the prior of all
    PriorFacts facts;
    FilterConstants constants;
};

// What is known about a stretch besides litres and kilometres.
struct Circumstances {
    std::optional<Instant> begin;                // season; none: that of the last stretch's end
    std::optional<double> days;                  // since the last fill, whole ones, >= 0
    // The user's word on what no stretch has shown yet ("towing", +0.30): what is ahead
    // burns so much more, with the spread of the word.
    std::optional<Estimate<Fraction>> burnsMore;
};

// Whole days between two dates, as the forecast counts them.
double daysBetween(Instant begin, Instant end);

// The rate of one mix of modes.
struct RateForecast {
    // Predictive for a long stretch, without what averages out along the way.
    Estimate<Consumption> rate;
    double tauSquaredPerKm = 0;  // L^2/km, what averages out
};

struct Band {
    Distance low;
    Distance high;
};

// How far given litres go, as one number, as bands and as one-sided promises.
struct DistanceForecast {
    // Makes the expected relative error least: a little below the median, the
    // median of a log-normal law weighted by 1/distance, exp(mu - s^2).
    Distance point;
    std::array<Distance, kPromises.size()> promised;   // where the rate is that of kPromises
    std::array<Band, 3> bands;   // for kBandLevels
    // Made with that probability.
    Distance p99() const { return promised[7]; }
    Distance p90() const { return promised[5]; }
    Distance p10() const { return promised[2]; }
};

// What is held of a stretch.
enum class Belief {
    open,        // as it stands: the model weighs whether it is a slip
    doubtful,    // the same, and flagged for the user to rule on
    ruledTrue,   // no slip: the user says so
    leftOut,     // teaches nothing: the user says so, or it cannot be
};
inline bool isBelieved(Belief belief) { return belief == Belief::open || belief == Belief::ruledTrue; }

class ConsumptionModel {
public:
    explicit ConsumptionModel(ConsumptionSetup setup);

    // Learns from one stretch. A mode that the setup lacks counts as usual mix.
    void observe(const Interval& interval, Belief belief = Belief::open);

    // The rate of `ahead` (its proportions; any total > 0). Empty: usual mix.
    // A mode that the setup lacks counts as usual mix. Where `now` has no time, the
    // season is that of the last stretch's end; so below.
    RateForecast forecast(const Mix& ahead = {}, const Circumstances& now = {}) const;

    ModeRates rates(const Circumstances& now = {}) const;
    LongRunRates longRun() const;
    Volume clickSd() const { return Volume::fromLitres(likeliest().clickSd_l()); }   // of rates()
    std::vector<double> usualMix() const;   // share of each mode; they sum to 1
    double usualClimb() const { return m_climb.perKm(); }   // km of height in a km of usual road

    // Distance of a stretch in the usual mix that burnt these litres (> 0).
    // `clickEnds` as in Interval: 0 where the litres are known without a click.
    // The first form stretches its bands by the model's own factors: those learnt
    // of tanks, or of short stretches; longer horizons bring theirs. O(modes^2).
    DistanceForecast forecastDistance(Volume burnt, const Circumstances& now,
                                      int clickEnds = 2) const;
    // Of several usual tanks in a row.
    DistanceForecast forecastTanks(Volume burnt, const Circumstances& now, int tanks,
                                   const PromiseFactors& factors) const;

    // Whether these litres are at most a fifth of what a stretch usually burns.
    bool isShort(Volume burnt) const;

    // How a stretch stands out from what the likeliest branch expects.
    struct Oddity {
        double error;        // log(litres / expected), above 0: more was burnt
        double probability;  // of standing out at least so far
        double logDensity;
    };
    Oddity oddity(const Interval& stretch) const;
    Volume expectedLitres(const Interval& stretch) const;
    // Law of log(litres / expectedLitres).
    HeavyTail predictLogRatio(const Interval& stretch) const;

    // Law of the trend: log of what is burnt now over the long run.
    HeavyTail trendNow(const Circumstances& now) const;

    // Weight of the likeliest branch, 0 to 1: below 1 it is open whether an odd stretch was
    // a slip or the car has changed.
    double agreement() const { return m_branches.front().weight; }

    std::size_t observed() const { return m_observed; }
    const ConsumptionSetup& setup() const { return m_setup; }

private:
    struct Branch {
        double weight;
        RateFilter filter;
    };
    std::vector<LogLawPart> law(const FilterStretch& ahead) const;
    FilterStretch stretchOf(const Interval& interval) const;
    void observeClimb(const Interval& interval);
    FilterStretch ahead(Volume burnt, const Circumstances& now) const;
    DistanceForecast distances(const FilterStretch& ahead, const PromiseFactors& factors) const;
    void score(const FilterStretch& stretch, std::span<const RateFilter::Surprise> seen);
    Promise promise(const Circumstances& now, double usual_lPerKm) const;
    void split(Branch branch, const FilterStretch& stretch, const RateFilter::Surprise& seen,
               Belief belief, std::vector<Branch>& into) const;
    void prune();
    std::optional<Instant> orLast(const Circumstances& now) const;
    PromiseFactors factorsFor(const FilterStretch& stretch) const;
    std::optional<std::size_t> indexOf(const std::string& mode) const;
    const RateFilter& likeliest() const { return m_branches.front().filter; }

    ConsumptionSetup m_setup;
    RatePrior m_prior;
    std::vector<Branch> m_branches;      // by weight, the likeliest first
    PromiseFactors m_factors;            // of tanks, where the days are known
    PromiseFactors m_aheadFactors;       // of tanks, where they are not
    PromiseFactors m_shortFactors;       // of stretches of at most a fifth of one, over those
    UsualMix m_mix;
    UsualClimb m_climb;
    std::optional<Instant> m_lastEnd;
    std::size_t m_lastFill = 0;
    std::size_t m_observed = 0;
};

} // namespace undermark
