// SPDX-License-Identifier: GPL-3.0-or-later
//
// How far the fuel goes, as a probability. With fuel V ~ N(v, sv^2) above a
// limit (the zero mark, or dry), consumption c and route noise of variance
// tau^2 per km,
//
//     P(D <= d) = P(V <= c d + noise)
//               = Phi((c d - v) / sqrt(sv^2 + d^2 sc^2 + tau^2 d)),
//
// the normal law of design 4.5. It is not mean/mean with added variances: a
// rate's error grows with the distance. A Student-t rate is the same law
// averaged over the t's random precision; that integrand is smooth however
// sharp the law is, so the trapezoidal rule over the logarithm of the precision
// meets 1e-8 with about 60 points. Along a route of modes, c d is the sum over
// the legs, with the covariance of the modes' rates.
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
// Simplifications: fuel and rate are independent of each other; route noise is
// normal. Fixed uncertainty at the end (crossing, reading) belongs in fuel.sd.
#pragma once

#include "engine/base/error.h"
#include "engine/base/quantity.h"

#include <optional>
#include <vector>

namespace undermark {

// A piece of road in one mode; `mode` indexes RangeBasis::rates.
struct RouteLeg {
    Distance length;        // >= 0
    std::size_t mode = 0;
};

struct RangeBasis {
    // Litres above the limit; the mean may be negative (the limit is passed).
    Estimate<Volume> fuel;
    // Mean rate of each mode, > 0; at least one.
    std::vector<Consumption> rates;
    // Covariance of the rates, (L/km)^2, row-major, rates.size() squared. It is
    // the predictive one (posterior and drift), not the error of the mean.
    std::vector<double> rateCovariance;
    // Student-t with this many degrees of freedom, > 2; normal when absent. The
    // covariance is the t's own (not its scale matrix); one random precision is
    // common to all modes, as in a regression with one unknown noise.
    std::optional<double> degreesOfFreedom;
    // Noise that grows like the square root of the distance: tau^2, L^2/km.
    double routeVarianceL2PerKm = 0.0;
    // The road ahead; after the last leg its mode continues. Empty: mode 0.
    std::vector<RouteLeg> legs;
};

class RangeLaw {
public:
    // Distances are not sought beyond this.
    static constexpr Distance kFarthest = Distance::fromKm(1e6);

    // badInput where a number is not finite, a rate is not above 0, a spread is
    // negative, the matrix has another size or a mode is not in it.
    static Result<RangeLaw> make(RangeBasis basis);

    // One mode for ever.
    static Result<RangeLaw> make(Estimate<Volume> fuel, Estimate<Consumption> rate,
                                 std::optional<double> degreesOfFreedom = std::nullopt,
                                 double routeVarianceL2PerKm = 0.0);

    // The same road and rates with other fuel: from zero to dry, or past zero.
    RangeLaw withFuel(Estimate<Volume> fuel) const;

    // The same law seen from `driven` >= 0 down its road: distances count from
    // there, fuel() stays that of the start. What was burnt on the way and what
    // will be share the rates' common error, so this is wider than a new law from
    // an independent level would be.
    RangeLaw after(Distance driven) const;

    // Probability that the limit is reached within `d` >= 0. Under 1 us for the
    // normal, a few for the t.
    Probability dryBefore(Distance d) const;

    // Largest distance made with probability `p`, 0 < p < 1; 0 where not even
    // the start is that sure (see startsBelow). Bracketing root find, to 1e-9.
    Distance madeWith(Probability p) const;

    // True where madeWith(p) is a distance below 0 shown as 0: the limit may be
    // passed already with more than 1 - p.
    bool startsBelow(Probability p) const;

    const Estimate<Volume>& fuel() const { return m_fuel; }

private:
    // Consumption along one leg, t km after its start: mean use + rate t, and
    // variance constant + linear t + square t^2 (without route noise).
    struct Segment {
        double startKm = 0.0;
        double useL = 0.0;
        double rateLPerKm = 0.0;
        double constantL2 = 0.0;
        double linearL2PerKm = 0.0;
        double squareL2PerKm2 = 0.0;
    };
    // One normal law of the mixture: its weight, what it multiplies the rate
    // variance with, and the highest argument of Phi before each segment.
    struct Component {
        double weight = 1.0;
        double stretch = 1.0;
        std::vector<double> peakBefore;
    };

    RangeLaw() = default;
    static std::vector<Segment> segmentsOf(const RangeBasis& basis);
    double positive(const Segment& segment) const;   // P(rate > 0)
    void findPeaks();
    double argument(const Segment& segment, double stretch, double t) const;
    double peakWithin(const Segment& segment, double stretch, double t) const;

    Estimate<Volume> m_fuel;
    double m_routeVarianceL2PerKm = 0.0;
    Distance m_driven;
    double m_positive = 1.0;   // P(rate > 0), of the mode where it is least
    std::vector<Segment> m_segments;
    std::vector<Component> m_components;
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
