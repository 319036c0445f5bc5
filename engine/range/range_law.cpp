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

struct MixturePoint {
    double weight;
    double stretch;
};

// Student-t of variance 1 as a mixture of normals: the precision L is
// Gamma(nu/2, nu/2), the variance of a component (nu - 2)/(nu L). With L = exp y
// the density of y is exp(nu/2 (y - exp y)): it is summed at equal steps. The
// integrand is analytic for |Im y| < pi/2, so the error is about
// exp(-pi^2/step) (Trefethen and Weideman, SIAM Review 56 (2014), 385).
std::vector<MixturePoint> studentMixture(double degreesOfFreedom)
{
    constexpr double kNegligible = -30.0;   // exp: 1e-13 of the peak
    const double half = degreesOfFreedom / 2.0;
    const double step = std::min(0.35, 0.5 / std::sqrt(half));
    std::vector<MixturePoint> points;
    double total = 0.0;
    const auto add = [&](double y) {
        const double exponent = half * (y - std::exp(y) + 1.0);
        if (exponent < kNegligible)
            return false;
        const double weight = std::exp(exponent);
        const double stretch = (degreesOfFreedom - 2.0) / degreesOfFreedom * std::exp(-y);
        points.push_back({weight, stretch});
        total += weight;
        return true;
    };
    for (int i = 0; add(i * step); ++i) { }
    for (int i = -1; add(i * step); --i) { }
    for (MixturePoint& point : points)
        point.weight /= total;
    return points;
}

Result<void> check(const RangeBasis& basis)
{
    const std::size_t n = basis.rates.size();
    if (!isFinite(basis.fuel.mean) || !notNegative(basis.fuel.sd.litres()))
        return failInput(
            Sentence::of("the fuel above the limit must be finite, its spread 0 or more"));
    if (n == 0 || basis.rateCovariance.size() != n * n)
        return failInput(Sentence::of("the rates' covariance does not match the number of rates"));
    for (const Consumption rate : basis.rates) {
        if (!(isFinite(rate) && rate > Consumption()))
            return failInput(Sentence::of("consumption must be above 0"));
    }
    for (std::size_t i = 0; i < n * n; ++i) {
        const double value = basis.rateCovariance[i];
        if (!std::isfinite(value) || (i % (n + 1) == 0 && value < 0.0))
            return failInput(Sentence::of("the rates' covariance is not a covariance"));
    }
    if (!notNegative(basis.routeVarianceL2PerKm))
        return failInput(Sentence::of("the route noise must be 0 or more"));
    if (const auto df = basis.degreesOfFreedom; df && !(std::isfinite(*df) && *df > 2.0))
        return failInput(Sentence::of("a spread needs more than 2 degrees of freedom"));
    for (const RouteLeg& leg : basis.legs) {
        if (leg.mode >= n || !notNegative(leg.length.km()))
            return failInput(
                Sentence::of("a leg must have a known mode and a length of 0 or more"));
    }
    return {};
}

} // namespace

Result<RangeLaw> RangeLaw::make(RangeBasis basis)
{
    if (const auto sound = check(basis); !sound)
        return fail(sound.error());
    RangeLaw law;
    law.m_fuel = basis.fuel;
    law.m_routeVarianceL2PerKm = basis.routeVarianceL2PerKm;
    law.m_segments = segmentsOf(basis);
    if (basis.degreesOfFreedom) {
        for (const MixturePoint& point : studentMixture(*basis.degreesOfFreedom))
            law.m_components.push_back({point.weight, point.stretch, {}});
    } else {
        law.m_components = {Component{}};
    }
    for (const Segment& segment : law.m_segments)
        law.m_positive = std::min(law.m_positive, law.positive(segment));
    law.findPeaks();
    return law;
}

// The last mode goes on for ever: one more segment after the last leg.
std::vector<RangeLaw::Segment> RangeLaw::segmentsOf(const RangeBasis& basis)
{
    const std::size_t n = basis.rates.size();
    const auto covariance = [&](std::size_t i, std::size_t j) {
        return 0.5 * (basis.rateCovariance[i * n + j] + basis.rateCovariance[j * n + i]);
    };
    std::vector<RouteLeg> legs = basis.legs;
    legs.push_back({Distance(), legs.empty() ? 0 : legs.back().mode});
    std::vector<Segment> segments;
    std::vector<double> km(n, 0.0);   // driven so far, by mode
    Segment segment;
    for (const RouteLeg& leg : legs) {
        segment.rateLPerKm = basis.rates[leg.mode].litresPerKm();
        segment.squareL2PerKm2 = covariance(leg.mode, leg.mode);
        segment.linearL2PerKm = 0.0;
        segment.constantL2 = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            segment.linearL2PerKm += 2.0 * covariance(i, leg.mode) * km[i];
            for (std::size_t j = 0; j < n; ++j)
                segment.constantL2 += km[i] * covariance(i, j) * km[j];
        }
        segments.push_back(segment);
        km[leg.mode] += leg.length.km();
        segment.startKm += leg.length.km();
        segment.useL += segment.rateLPerKm * leg.length.km();
    }
    return segments;
}

double RangeLaw::positive(const Segment& segment) const
{
    if (segment.squareL2PerKm2 == 0.0)
        return 1.0;
    double sum = 0.0;
    for (const Component& part : m_components) {
        const double sd = std::sqrt(part.stretch * segment.squareL2PerKm2);
        sum += part.weight * normalCdf(segment.rateLPerKm / sd);
    }
    return sum;
}

Result<RangeLaw> RangeLaw::make(Estimate<Volume> fuel, Estimate<Consumption> rate,
                                std::optional<double> degreesOfFreedom,
                                double routeVarianceL2PerKm)
{
    const double sd = rate.sd.litresPerKm();
    if (!notNegative(sd))
        return failInput(Sentence::of("the spread of the consumption must be 0 or more"));
    return make(
        RangeBasis{fuel, {rate.mean}, {sd * sd}, degreesOfFreedom, routeVarianceL2PerKm, {}});
}

RangeLaw RangeLaw::withFuel(Estimate<Volume> fuel) const
{
    assert(isFinite(fuel.mean) && notNegative(fuel.sd.litres()));
    RangeLaw law = *this;
    law.m_fuel = fuel;
    law.findPeaks();
    return law;
}

RangeLaw RangeLaw::after(Distance driven) const
{
    assert(driven >= Distance());
    RangeLaw law = *this;
    law.m_driven = m_driven + driven;
    return law;
}

void RangeLaw::findPeaks()
{
    for (Component& part : m_components) {
        part.peakBefore.assign(m_segments.size(), -std::numeric_limits<double>::infinity());
        for (std::size_t i = 1; i < m_segments.size(); ++i) {
            const double length = m_segments[i].startKm - m_segments[i - 1].startKm;
            part.peakBefore[i] = std::max(part.peakBefore[i - 1],
                                          peakWithin(m_segments[i - 1], part.stretch, length));
        }
    }
}

// (use - fuel) / sd at t km into the segment; without any spread the sign of
// the difference, where nothing left means dry.
double RangeLaw::argument(const Segment& segment, double stretch, double t) const
{
    const double missingL = segment.useL + segment.rateLPerKm * t - m_fuel.mean.litres();
    const double fuelSdL = m_fuel.sd.litres();
    const double rateL2 = segment.constantL2 + t * (segment.linearL2PerKm
                                                    + t * segment.squareL2PerKm2);
    const double varianceL2 = fuelSdL * fuelSdL
        + m_routeVarianceL2PerKm * (segment.startKm + t) + stretch * std::max(rateL2, 0.0);
    if (varianceL2 > 0.0)
        return missingL / std::sqrt(varianceL2);
    return missingL >= 0.0 ? std::numeric_limits<double>::infinity()
                           : -std::numeric_limits<double>::infinity();
}

// Highest argument from the segment's start to t. With (a + b t)/sqrt(p + q t +
// r t^2) the derivative's sign is that of b p - a q/2 + t (b q/2 - a r), linear
// in t: at most one stationary point, so three candidates are enough.
double RangeLaw::peakWithin(const Segment& segment, double stretch, double t) const
{
    const double a = segment.useL - m_fuel.mean.litres();
    const double b = segment.rateLPerKm;
    const double fuelSdL = m_fuel.sd.litres();
    const double p = fuelSdL * fuelSdL + m_routeVarianceL2PerKm * segment.startKm
        + stretch * segment.constantL2;
    const double q = m_routeVarianceL2PerKm + stretch * segment.linearL2PerKm;
    const double r = stretch * segment.squareL2PerKm2;
    double peak = std::max(argument(segment, stretch, 0.0), argument(segment, stretch, t));
    const double turn = -(b * p - a * q / 2.0) / (b * q / 2.0 - a * r);
    if (turn > 0.0 && turn < t)   // false for NaN
        peak = std::max(peak, argument(segment, stretch, turn));
    return peak;
}

Probability RangeLaw::dryBefore(Distance d) const
{
    assert(d >= Distance());
    const double atKm = (m_driven + d).km();
    const auto next = std::upper_bound(m_segments.begin(), m_segments.end(), atKm,
                                       [](double km, const Segment& s) { return km < s.startKm; });
    const std::size_t index = static_cast<std::size_t>(next - m_segments.begin()) - 1;
    const Segment& segment = m_segments[index];
    double sum = 0.0;
    for (const Component& part : m_components) {
        const double here = peakWithin(segment, part.stretch, atKm - segment.startKm);
        sum += part.weight * normalCdf(std::max(part.peakBefore[index], here));
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
    const double evenKm = m_fuel.mean.litres() / m_segments.front().rateLPerKm;
    double high = std::clamp(evenKm, 1.0, kFarthest.km());
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
