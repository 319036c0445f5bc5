// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/range/range_law.h"

#include "engine/base/normal_law.h"

#include <algorithm>
#include <boost/math/tools/roots.hpp>
#include <cassert>
#include <limits>

namespace undermark {

namespace {

bool notNegative(double x)
{
    return std::isfinite(x) && x >= 0.0;
}

Result<void> check(const RangeBasis& basis)
{
    if (!isFinite(basis.fuel.mean) || !notNegative(basis.fuel.sd.litres()))
        return failInput(
            Sentence::of("the fuel above the limit must be finite, its spread 0 or more"));
    if (const auto sound = checkRates(basis.rates); !sound)
        return sound;
    const std::size_t modes = basis.rates.mean.size();
    for (const auto* legs : {&basis.driven, &basis.legs}) {
        for (const RouteLeg& leg : *legs) {
            if (leg.mode >= modes || !notNegative(leg.length.km()) || !isFinite(leg.climb))
                return failInput(
                    Sentence::of("a leg must have a known mode and a length of 0 or more"));
        }
    }
    if (!basis.surge.empty() && basis.surge.size() != modes)
        return failInput(Sentence::of("surge must be told of every mode or of none"));
    return {};
}

} // namespace

Result<RangeLaw> RangeLaw::make(RangeBasis basis)
{
    if (const auto sound = check(basis); !sound)
        return fail(sound.error());
    RangeLaw law;
    law.m_fuel = basis.fuel;
    law.m_routeVarianceL2PerKm = basis.rates.legNoiseSd * basis.rates.legNoiseSd;
    law.m_segments = segmentsOf(basis);
    for (const RateWorld& world : basis.rates.worlds)
        law.m_worlds.push_back({world, {}});
    for (const RouteLeg& leg : basis.legs)
        law.m_positive = std::min(law.m_positive, law.positive(basis.rates, leg.mode));
    if (basis.legs.empty())
        law.m_positive = law.positive(basis.rates, 0);
    law.findPeaks();
    return law;
}

Result<RangeLaw> RangeLaw::make(Estimate<Volume> fuel, Estimate<Consumption> rate)
{
    if (!notNegative(rate.sd.litresPerKm()))
        return failInput(Sentence::of("the spread of the consumption must be 0 or more"));
    return make(RangeBasis{fuel, RateModel::single(rate)});
}

// Of the road ahead. The last mode goes on for ever: one more segment after the last leg.
std::vector<RangeLaw::Segment> RangeLaw::segmentsOf(const RangeBasis& basis)
{
    const RateModel& rates = basis.rates;
    const std::size_t n = rates.mean.size();
    const auto covariance = [&](std::size_t i, std::size_t j) {
        return 0.5 * (rates.covariance[i * n + j] + rates.covariance[j * n + i]);
    };
    const double climbVariance = std::pow(rates.climb.sd.litresPerKm(), 2);
    std::vector<double> km(n, 0.0);   // driven so far, by mode
    double climbed = 0.0;             // km
    Segment segment;
    const auto drive = [&](const RouteLeg& leg) {
        km[leg.mode] += leg.length.km();
        climbed += rates.climbKm(leg);
        segment.noiseKm += leg.length.km();
        segment.useL += rates.burntOver({&leg, 1}).litres();
    };
    for (const RouteLeg& leg : basis.driven)
        drive(leg);
    std::vector<RouteLeg> legs = basis.legs;
    legs.push_back({Distance(), legs.empty() ? 0 : legs.back().mode});
    std::vector<Segment> segments;
    for (const RouteLeg& leg : legs) {
        const double slope = leg.length > Distance() ? rates.climbKm(leg) / leg.length.km() : 0.0;
        segment.rateLPerKm = rates.mean[leg.mode].litresPerKm() + slope * rates.climb.mean.litresPerKm();
        segment.surgeL = basis.surge.empty() ? 0.0 : basis.surge[leg.mode].litres();
        segment.squareL2PerKm2 = covariance(leg.mode, leg.mode) + slope * slope * climbVariance;
        segment.linearL2PerKm = 2.0 * climbed * slope * climbVariance;
        segment.constantL2 = climbed * climbed * climbVariance;
        for (std::size_t i = 0; i < n; ++i) {
            segment.linearL2PerKm += 2.0 * covariance(i, leg.mode) * km[i];
            for (std::size_t j = 0; j < n; ++j)
                segment.constantL2 += km[i] * covariance(i, j) * km[j];
        }
        segments.push_back(segment);
        drive(leg);
        segment.startKm += leg.length.km();
    }
    return segments;
}

double RangeLaw::positive(const RateModel& rates, std::size_t mode) const
{
    const double rate = rates.mean[mode].litresPerKm();
    const double rateSd = std::sqrt(rates.covariance[mode * rates.mean.size() + mode]);
    double sum = 0.0;
    for (const World& world : m_worlds) {
        const double f = world.factor.factorMean;
        const double sd = std::hypot(f * rateSd, world.factor.factorSd * rate);
        sum += world.factor.weight * (sd > 0 ? normalCdf(f * rate / sd) : 1.0);
    }
    return sum;
}

RangeLaw RangeLaw::withFuel(Estimate<Volume> fuel) const
{
    assert(isFinite(fuel.mean) && notNegative(fuel.sd.litres()));
    RangeLaw law = *this;
    law.m_fuel = fuel;
    law.findPeaks();
    return law;
}

void RangeLaw::findPeaks()
{
    for (World& world : m_worlds) {
        world.peakBefore.assign(m_segments.size(), -std::numeric_limits<double>::infinity());
        for (std::size_t i = 1; i < m_segments.size(); ++i) {
            const double length = m_segments[i].startKm - m_segments[i - 1].startKm;
            world.peakBefore[i] =
                std::max(world.peakBefore[i - 1],
                         courseOf(m_segments[i - 1], world.factor).peakWithin(length));
        }
    }
}

RangeLaw::Course RangeLaw::courseOf(const Segment& segment, const RateWorld& factor) const
{
    const double f = factor.factorMean, f2 = f * f;
    const double useSdL = factor.factorSd * segment.useL;
    const double rateSd = factor.factorSd * segment.rateLPerKm;
    const double fuelSdL = m_fuel.sd.litres();
    Course course;
    course.a = f * segment.useL + segment.surgeL - m_fuel.mean.litres();
    course.b = f * segment.rateLPerKm;
    course.p = fuelSdL * fuelSdL + m_routeVarianceL2PerKm * segment.noiseKm
        + std::max(f2 * segment.constantL2, 0.0) + useSdL * useSdL;
    course.q = m_routeVarianceL2PerKm + f2 * segment.linearL2PerKm + 2 * useSdL * rateSd;
    course.r = f2 * segment.squareL2PerKm2 + rateSd * rateSd;
    return course;
}

// (use - fuel) / sd at t km into the segment; without any spread the sign of
// the difference, where nothing left means dry.
double RangeLaw::Course::argument(double t) const
{
    const double missingL = a + b * t;
    const double varianceL2 = p + t * (q + t * r);
    if (varianceL2 > 0.0)
        return missingL / std::sqrt(varianceL2);
    return missingL >= 0.0 ? std::numeric_limits<double>::infinity()
                           : -std::numeric_limits<double>::infinity();
}

// Highest argument from the segment's start to t. With (a + b t)/sqrt(p + q t +
// r t^2) the derivative's sign is that of b p - a q/2 + t (b q/2 - a r), linear
// in t: at most one stationary point, so three candidates are enough.
double RangeLaw::Course::peakWithin(double t) const
{
    double peak = std::max(argument(0.0), argument(t));
    const double turn = -(b * p - a * q / 2.0) / (b * q / 2.0 - a * r);
    if (turn > 0.0 && turn < t)   // false for NaN
        peak = std::max(peak, argument(turn));
    return peak;
}

Probability RangeLaw::dryBefore(Distance d) const
{
    assert(d >= Distance());
    const auto next = std::upper_bound(m_segments.begin(), m_segments.end(), d.km(),
                                       [](double km, const Segment& s) { return km < s.startKm; });
    const std::size_t index = static_cast<std::size_t>(next - m_segments.begin()) - 1;
    const Segment& segment = m_segments[index];
    double sum = 0.0;
    for (const World& world : m_worlds) {
        const double here = courseOf(segment, world.factor).peakWithin(d.km() - segment.startKm);
        sum += world.factor.weight * normalCdf(std::max(world.peakBefore[index], here));
    }
    return Probability::of(std::min(1.0, sum / m_positive));
}

bool RangeLaw::startsBelow(Probability p) const
{
    return dryBefore(Distance()) > Probability::of(1.0 - p.value());
}

Distance RangeLaw::madeWith(Probability p) const
{
    assert(p > Probability() && p < Probability::of(1.0));
    const double risk = 1.0 - p.value();
    const auto excess = [&](double km) {
        return dryBefore(Distance::fromKm(km)).value() - risk;
    };
    if (excess(0.0) > 0.0)
        return Distance();
    double low = 0.0;
    const Segment& first = m_segments.front();
    const double left = m_fuel.mean.litres() - first.useL;
    double high = first.rateLPerKm > 0 ? std::clamp(left / first.rateLPerKm, 1.0, kFarthest.km()) : 1.0;
    while (excess(high) <= 0.0) {
        if (high >= kFarthest.km())
            return kFarthest;
        low = high;
        high = std::min(2.0 * high, kFarthest.km());
    }
    if (excess(low) == 0.0)
        return Distance::fromKm(low);
    std::uintmax_t steps = 200;
    const auto closeEnough = [](double a, double b) { return b - a <= 1e-9 + 1e-12 * b; };
    const auto [below, above] = boost::math::tools::toms748_solve(excess, low, high, closeEnough,
                                                                  steps);
    return Distance::fromKm(0.5 * (below + above));
}

Distances distances(const RangeLaw& law)
{
    const auto made = [&](double p) { return law.madeWith(Probability::of(p)); };
    return {made(0.99), made(0.90), made(0.50), made(0.10), law.startsBelow(Probability::of(0.99))};
}

} // namespace undermark
