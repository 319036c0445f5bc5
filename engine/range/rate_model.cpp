// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/range/rate_model.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

bool isSpread(double value)
{
    return std::isfinite(value) && value >= 0;
}

bool averageToOne(const std::vector<RateWorld>& worlds)
{
    double weights = 0.0, factors = 0.0;
    for (const RateWorld& world : worlds) {
        if (!(world.weight > 0 && world.factorMean > 0 && isSpread(world.factorSd)))
            return false;
        weights += world.weight;
        factors += world.weight * world.factorMean;
    }
    return std::fabs(weights - 1) < 1e-6 && std::fabs(factors - 1) < 1e-6;
}

} // namespace

RateModel RateModel::single(Estimate<Consumption> rate, double legNoiseSd)
{
    const double sd = rate.sd.litresPerKm();
    RateModel model;
    model.mean = {rate.mean};
    model.covariance = {sd * sd};
    model.legNoiseSd = legNoiseSd;
    return model;
}

RateModel withRatesTimes(RateModel rates, double factor)
{
    for (Consumption& rate : rates.mean)
        rate = rate * factor;
    for (double& covariance : rates.covariance)
        covariance *= factor * factor;
    return rates;
}

RateModel withRatesPlus(RateModel rates, Consumption more)
{
    for (Consumption& rate : rates.mean)
        rate += more;
    return rates;
}

std::optional<std::size_t> RateModel::indexOf(const std::string& mode) const
{
    if (modes.empty())
        return 0;
    const auto found = std::ranges::find(modes, mode);
    if (found == modes.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - modes.begin());
}

Estimate<Consumption> RateModel::rateOf(std::size_t mode) const
{
    const double variance = covariance[mode * mean.size() + mode];
    const LevelSpread perKm{0.0, variance, mean[mode].litresPerKm()};
    return {mean[mode], Consumption::fromLitresPerKm(std::sqrt(varianceOf(perKm, worlds)))};
}

LevelSpread RateModel::spreadAfter(Volume levelSd, std::span<const RouteLeg> road) const
{
    const std::size_t n = mean.size();
    LevelSpread spread;
    spread.own = levelSd.litres() * levelSd.litres();
    double climbed = 0.0;
    for (const RouteLeg& a : road) {
        climbed += climbKm(a);
        spread.own += legNoiseSd * legNoiseSd * a.length.km();
        for (const RouteLeg& b : road)
            spread.residual += a.length.km() * covariance[a.mode * n + b.mode] * b.length.km();
    }
    spread.residual = std::max(spread.residual, 0.0) + std::pow(climbed * climb.sd.litresPerKm(), 2);
    spread.burnt = burntOver(road).litres();
    return spread;
}

Volume RateModel::burntOver(std::span<const RouteLeg> road) const
{
    Volume burnt;
    for (const RouteLeg& leg : road)
        burnt += mean[leg.mode] * leg.length + climb.mean * Distance::fromKm(climbKm(leg));
    return burnt;
}

double RateModel::climbKm(const RouteLeg& leg) const
{
    const double perKm = climb.mean.litresPerKm();
    if (!(perKm > 0))
        return 0.0;
    return std::max(leg.climb.km(), -(mean[leg.mode] * leg.length).litres() / perKm);
}

Result<void> checkRates(const RateModel& rates)
{
    const std::size_t n = rates.mean.size();
    if (n != std::max<std::size_t>(rates.modes.size(), 1) || rates.covariance.size() != n * n)
        return failInput(Sentence::of("every mode needs one rate and its covariances"));
    for (const Consumption rate : rates.mean) {
        if (!(isFinite(rate) && rate > Consumption()))
            return failInput(Sentence::of("a rate must be above 0"),
                             Sentence::of("L/100 km above 0"));
    }
    for (std::size_t i = 0; i < n * n; ++i) {
        const double value = rates.covariance[i];
        if (!std::isfinite(value) || (i % (n + 1) == 0 && value < 0))
            return failInput(Sentence::of("the variance of a rate must be 0 or more"));
    }
    if (!(isFinite(rates.climb.mean) && rates.climb.mean >= Consumption() && isSpread(rates.climb.sd.litresPerKm())))
        return failInput(Sentence::of("what a climb takes must be 0 or more"));
    if (!averageToOne(rates.worlds))
        return failInput(Sentence::of("the weights of what the rates may be must sum to 1"));
    if (!(isSpread(rates.legNoiseSd) && rates.legNoiseSd <= 1e6 && rates.idling >= FlowRate()))
        return failInput(Sentence::of("leg noise and idling rate must be 0 or more"));
    return {};
}

} // namespace undermark
