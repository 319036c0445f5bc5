// SPDX-License-Identifier: GPL-3.0-or-later
//
// How far the fuel goes, as a probability. With fuel V ~ N(v, sv^2) above a
// limit (the zero mark, or dry), consumption c ~ N(mc, sc^2) and route noise of
// variance tau^2 per km,
//
//     P(D <= d) = P(V <= c d + noise)
//               = Phi((mc d - v) / sqrt(sv^2 + d^2 sc^2 + tau^2 d)).
//
// It is not mean/mean with added variances: a rate's error grows with the distance.
// Along a route of modes, c d is the sum over the legs, with the covariance of the
// modes' rates; over several worlds (rate_model.h) it is the weighted sum.
//
// Where the level was known some road ago, v is what was there then, and that road's use
// is taken off with the same rates: x' c d runs over the road behind and the road ahead, so
// that both share the rates' error. This is one law of (level now, rates), and wider
// than a level that were independent of the rates.
//
//     const auto law = RangeLaw::make(fuel, rate);
//     if (law) show(law->madeWith(Probability::of(0.99)));
//
// Guarantees (each has a test in tests/engine/range/range_law_test.cpp):
//  * dryBefore never falls with distance: where the formula above would (fuel
//    below 0, or a leg of doubtful consumption), its running maximum is taken,
//    which is still at most the probability of having run dry on the way;
//  * more fuel never raises dryBefore and never shortens madeWith;
//  * rates are positive: the law is divided by P(rate > 0), so everything runs
//    dry in the end. The exact truncation would also take away
//    P(V <= c d + noise and c <= 0) <= P(c <= 0) P(V <= noise): the risk shown
//    errs to the safe side by less than that product of two small numbers;
//  * p99 <= p90 <= p50 <= p10, all within 0 and kFarthest.
//
// Simplifications: the fuel, when it was known, and the rates are independent of each
// other; route noise is normal. Fixed uncertainty at the end (crossing, reading) belongs
// in fuel.sd. Where surge asks for more in the middle of the road than at its end, the
// risk told is that of the likeliest place, not of all together.
#pragma once

#include "engine/range/rate_model.h"

#include <vector>

namespace undermark {

struct RangeBasis {
    // Litres above the limit when the level was last known; the mean may be negative
    // (the limit is passed).
    Estimate<Volume> fuel;
    RateModel rates;
    // The road since then: it used fuel, and its share of the rates' error is known.
    std::vector<RouteLeg> driven = {};
    // The road ahead; after the last leg its mode continues. Empty: mode 0.
    std::vector<RouteLeg> legs = {};
    // By mode, what more than the limit must be there while driving in it (what surge
    // keeps from the pump); empty: nothing.
    std::vector<Volume> surge = {};
};

class RangeLaw {
public:
    // Distances are not sought beyond this.
    static constexpr Distance kFarthest = Distance::fromKm(1e6);

    // badInput as checkRates, and where the fuel is not finite, a spread is negative, or a
    // leg has no known mode.
    static Result<RangeLaw> make(RangeBasis basis);

    // One mode for ever.
    static Result<RangeLaw> make(Estimate<Volume> fuel, Estimate<Consumption> rate);

    // The same road and rates with other fuel: from zero to dry, or past zero.
    RangeLaw withFuel(Estimate<Volume> fuel) const;

    // Probability that the limit is reached within `d` >= 0. Under 1 us for one
    // world, a few for ten.
    Probability dryBefore(Distance d) const;

    // Largest distance made with probability `p`, 0 < p < 1; 0 where not even
    // the start is that sure (see startsBelow). Bracketing root find, to 1e-9.
    Distance madeWith(Probability p) const;

    // True where madeWith(p) is a distance below 0 shown as 0: the limit may be
    // passed already with more than 1 - p.
    bool startsBelow(Probability p) const;

    const Estimate<Volume>& fuel() const { return m_fuel; }

private:
    // Consumption along one leg at the mean rates, t km after its start: use + rate t, and
    // x'Sx = constant + linear t + square t^2. A leg's climb is spread evenly over it.
    struct Segment {
        double startKm = 0.0;    // from here
        double noiseKm = 0.0;    // at its start, since the level was known
        double useL = 0.0;       // since then
        double rateLPerKm = 0.0;
        double surgeL = 0.0;
        double constantL2 = 0.0;
        double linearL2PerKm = 0.0;
        double squareL2PerKm2 = 0.0;
    };
    // A segment in one world: missing a + b t, of variance p + q t + r t^2.
    struct Course {
        double a, b, p, q, r;
        double argument(double t) const;
        double peakWithin(double t) const;
    };
    // One normal law of the mixture, and the highest argument of Phi before each segment.
    struct World {
        RateWorld factor;
        std::vector<double> peakBefore;
    };

    RangeLaw() = default;
    static std::vector<Segment> segmentsOf(const RangeBasis& basis);
    double positive(const RateModel& rates, std::size_t mode) const;   // P(rate > 0)
    void findPeaks();
    Course courseOf(const Segment& segment, const RateWorld& factor) const;

    Estimate<Volume> m_fuel;
    double m_routeVarianceL2PerKm = 0.0;
    double m_positive = 1.0;   // P(rate > 0) on the flat, of the mode where it is least
    std::vector<Segment> m_segments;
    std::vector<World> m_worlds;
};

// The four distances shown everywhere; pNN is made with probability NN/100.
struct Distances {
    Distance p99;              // "sure"
    Distance p90;
    Distance p50;              // "even"
    Distance p10;              // "hopeful"
    bool sureIsNegative = false;   // p99 would be below 0 and is shown as 0
    friend bool operator==(const Distances&, const Distances&) = default;
};

Distances distances(const RangeLaw& law);

} // namespace undermark
