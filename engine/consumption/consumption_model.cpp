// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/consumption_model.h"

#include "engine/consumption/rate_prior.h"
#include "engine/consumption/student_worlds.h"
#include "engine/consumption/truncation.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace undermark {

namespace {

// Degrees of freedom 2a of the prior noise: about four tanks' worth.
constexpr double kModelPriorShape = 2.5;
// Scales beyond which a stretch counts less (Huber).
constexpr double kModelBound = 2;
constexpr double kLeastLitres = 1e-6;
constexpr double kShortShare = 0.2;
constexpr std::size_t kUsualTanks = 20;   // that the usual litres are the mean of
// What a rate may not fall below, L/km.
constexpr double kLeastRate = 0.002;

ConjugateRegression ratePriorRegression(const RatePrior& prior)
{
    // Prior mean of s2 is 1: the noise setup is believed as it stands.
    return {prior.mean, prior.covariance, kModelPriorShape, kModelPriorShape - 1};
}

Circumstances circumstancesOf(const Interval& stretch)
{
    Circumstances known;
    known.begin = stretch.begin;
    known.litresPerDay = litresPerDay(stretch.burnt.mean, stretch.begin, stretch.end);
    return known;
}

// Which bands of a law held the outcome.
std::array<bool, 3> bandHits(const StudentT& law, double outcome, const BandFactors& factors)
{
    const StudentT standard{0, 1, law.degreesOfFreedom};
    const double away = std::abs(outcome - law.location) / law.scale;
    std::array<bool, 3> hit{};
    for (std::size_t k = 0; k < hit.size(); ++k)
        hit[k] = standard.cdf(away / factors[k]) <= 0.5 + kBandLevels[k] / 2;   // cheaper than a quantile
    return hit;
}

} // namespace

ConsumptionModel::ConsumptionModel(ConsumptionSetup setup)
    : m_setup(std::move(setup)), m_regression(ratePriorRegression(ratePrior(m_setup.modes))),
      m_mix(ratePrior(m_setup.modes).usualMixKm)
{
}

std::optional<std::size_t> ConsumptionModel::indexOf(const std::string& mode) const
{
    const auto found = std::ranges::find(m_setup.modes, mode, &Mode::name);
    if (found == m_setup.modes.end())
        return std::nullopt;
    return std::size_t(found - m_setup.modes.begin());
}

Circumstances ConsumptionModel::orLast(Circumstances now) const
{
    if (!now.begin)
        now.begin = m_lastEnd;
    return now;
}

double ConsumptionModel::unknownKm(const Interval& interval) const
{
    double unknown_km = interval.distance.km();
    for (const auto& [mode, distance] : interval.byMode)
        if (indexOf(mode))
            unknown_km -= distance.km();
    return std::max(unknown_km, 0.0);
}

std::vector<double> ConsumptionModel::regressors(const Interval& interval) const
{
    std::vector<double> x(m_regression.size(), 0.0);
    for (const auto& [mode, distance] : interval.byMode)
        if (const auto index = indexOf(mode))
            x[*index] += distance.km();
    const double unknown_km = unknownKm(interval);
    const std::vector<double> mix = m_mix.shares();
    for (std::size_t i = 0; i < mix.size(); ++i)
        x[i] += unknown_km * mix[i];
    x[mix.size()] = interval.idleHours;
    x[mix.size() + 1] = interval.coldStarts;
    return x;
}

double ConsumptionModel::clickVariance(const Interval& interval) const
{
    const double click_l = m_setup.noise.clickSd.litres();
    return m_split.clickFactor() * interval.clickEnds * click_l * click_l;
}

double ConsumptionModel::noiseVariance(const Interval& interval, std::span<const double> x) const
{
    const NoiseSetup& noise = m_setup.noise;
    const double km = interval.distance.km();
    const double level_l = interval.burnt.sd.litres();
    double driving_l = 0;   // what the stretch burns as far as is known
    for (std::size_t i = 0; i < m_setup.modes.size(); ++i)
        driving_l += x[i] * m_regression.mean()[i];
    const double drift_l = noise.omega.ratio() * driving_l;
    const double unknown_km = unknownKm(interval);
    const double mix_l2 = unknown_km * unknown_km * m_mix.variance(m_regression.mean());
    return clickVariance(interval) + level_l * level_l
        + noise.tauSquared_l2PerKm / m_trend.noiseFactor() * km + drift_l * drift_l + mix_l2;
}

// Variance of log(litres / expected): noise and what is not known of the rates.
double ConsumptionModel::relativeVariance(const Interval& interval, std::span<const double> x) const
{
    const StudentT line = m_regression.predict(x, 0);
    const double expected_l = std::max(line.location, kLeastLitres);
    // Spread of the rates, but for the noise scale, which the trend learns.
    const double posterior_l2 = line.scale * line.scale * m_regression.shape() / m_regression.rate();
    return (noiseVariance(interval, x) + posterior_l2) / (expected_l * expected_l);
}

double ConsumptionModel::expectedLitres(std::span<const double> x) const
{
    return std::max(std::inner_product(x.begin(), x.end(), m_regression.mean().begin(), 0.0),
                    kLeastLitres);
}

Volume ConsumptionModel::expectedLitres(const Interval& stretch) const
{
    return Volume::fromLitres(expectedLitres(regressors(stretch)));
}

StudentT ConsumptionModel::predictLogRatio(const Interval& stretch) const
{
    return m_trend.predict(circumstancesOf(stretch),
                           relativeVariance(stretch, regressors(stretch)));
}

void ConsumptionModel::observe(const Interval& interval)
{
    const double keep = std::exp(-(interval.distance / m_setup.memory));
    const std::vector<double> x = regressors(interval);
    const double before_l = expectedLitres(x);
    const double y = std::log(interval.burnt.mean.litres() / before_l);
    const double noise_l2 = noiseVariance(interval, x);
    const double relative = relativeVariance(interval, x);
    const Circumstances known = circumstancesOf(interval);
    const StudentT expected = m_trend.predict(known, relative);
    if (isShort(interval.burnt.mean))
        m_shortBands.observe(bandHits(expected, y, m_shortBands.over(m_bands)));
    else {
        m_bands.observe(bandHits(expected, y, m_bands));
        const StudentT ahead = m_trend.predict({known.begin, std::nullopt}, relative);
        m_aheadBands.observe(bandHits(ahead, y, m_aheadBands));
    }
    m_trend.observe(known, y, relative);
    const double click = clickVariance(interval) / m_split.clickFactor() / (before_l * before_l);
    m_split.observe(y - expected.location, click, relative - click * m_split.clickFactor());

    // In litres, as the regression is: on a log scale the low side would count less.
    const double awayInLitres = std::abs(std::exp(y - expected.location) - 1) / expected.scale;
    const double excess = std::max(1.0, awayInLitres / kModelBound);
    m_regression.forget(keep);
    m_regression.observe(x, interval.burnt.mean.litres(), noise_l2 * excess * excess);
    m_trend.rebase(std::log(expectedLitres(x) / before_l));
    m_mix.fade(keep);
    for (const auto& [mode, distance] : interval.byMode)
        if (const auto index = indexOf(mode))
            m_mix.observe(*index, distance);
    m_lastEnd = interval.end;
    ++m_observed;
    m_usual_l += (interval.burnt.mean.litres() - m_usual_l) / double(std::min(m_observed, kUsualTanks));
}

const BandFactors& ConsumptionModel::bandsFor(const Circumstances& now) const
{
    return now.litresPerDay ? m_bands : m_aheadBands;
}

bool ConsumptionModel::isShort(Volume burnt) const
{
    return burnt.litres() <= kShortShare * m_usual_l;
}

DistanceForecast ConsumptionModel::forecastDistance(Volume burnt, const Circumstances& now,
                                                    int clickEnds) const
{
    const BandFactors& tank = bandsFor(now);
    return forecastDistance(burnt, now, clickEnds, isShort(burnt) ? m_shortBands.over(tank) : tank);
}

DistanceForecast ConsumptionModel::forecastDistance(Volume burnt, const Circumstances& now,
                                                    int clickEnds, const BandFactors& factors) const
{
    Interval stretch;
    stretch.clickEnds = clickEnds;
    stretch.burnt.mean = burnt;
    stretch.distance = Distance::fromKm(1);
    const double rate_lPerKm = expectedLitres(stretch).litres();
    stretch.distance = Distance::fromKm(burnt.litres() / rate_lPerKm);
    const StudentT law = m_trend.predict(now, relativeVariance(stretch, regressors(stretch)));
    const double median = std::log(stretch.distance.km()) - law.location;
    DistanceForecast forecast;
    const double scale = law.scale * factors[1];   // as the outcomes have shown it to be
    forecast.point = Distance::fromKm(std::exp(median - scale * scale));
    const StudentT standard{0, 1, law.degreesOfFreedom};
    for (std::size_t k = 0; k < kBandLevels.size(); ++k) {
        const double half = standard.quantile(0.5 + kBandLevels[k] / 2) * law.scale * factors[k];
        forecast.bands[k] = {Distance::fromKm(std::exp(median - half)),
                             Distance::fromKm(std::exp(median + half))};
    }
    return forecast;
}

ModeRates ConsumptionModel::rates(const Circumstances& now) const
{
    const std::size_t count = m_setup.modes.size();
    const std::size_t n = m_regression.size();
    std::vector<double> mean = m_regression.mean();
    std::vector<double> covariance = m_regression.relativeCovariance();
    for (double& entry : covariance)
        entry *= m_regression.noiseVariance();
    for (std::size_t i = 0; i < n; ++i)
        conditionAbove(mean, covariance, i, i < count ? kLeastRate : 0.0);

    // What the trend adds is common to all modes: its factor, and its spread.
    const double omega = m_setup.noise.omega.ratio();
    const StudentT trend = m_trend.predict(orLast(now), omega * omega);
    const double factor = std::exp(trend.location);
    const double common = trend.sd() * trend.sd();
    const double bands = std::pow(bandsFor(now)[kBandLevels.size() - 1], 2);
    const std::vector<double> mix = m_mix.shares();
    ModeRates rates;
    for (std::size_t i = 0; i < count; ++i) {
        rates.modes.push_back(m_setup.modes[i].name);
        rates.mean.push_back(Consumption::fromLitresPerKm(mean[i] * factor));
        rates.longRun.push_back(Consumption::fromLitresPerKm(mean[i]));
        rates.usualMix.push_back(Fraction::fromRatio(mix[i]));
        for (std::size_t j = 0; j < count; ++j) {
            const double posterior = covariance[i * n + j];
            rates.posterior.push_back(posterior);
            rates.residual.push_back(bands * factor * factor * posterior);
            rates.covariance.push_back(
                bands * factor * factor * (posterior + common * mean[i] * mean[j]));
        }
    }
    const auto sdOf = [&](std::size_t i) { return std::sqrt(std::max(covariance[i * n + i], 0.0)); };
    rates.idle = {FlowRate::fromLitresPerHour(mean[count]),
                  FlowRate::fromLitresPerHour(sdOf(count))};
    rates.coldStart = {Volume::fromLitres(mean[count + 1]), Volume::fromLitres(sdOf(count + 1))};
    rates.degreesOfFreedom = trend.degreesOfFreedom;
    rates.worlds = studentWorlds(trend.degreesOfFreedom, std::sqrt(bands * common));
    rates.clickSd = m_setup.noise.clickSd * std::sqrt(m_split.clickFactor());
    const double noise = m_trend.noiseFactor() * bands;
    rates.usualMixVariance = noise * m_mix.variance(std::span(mean).first(count)) * factor * factor;
    rates.tauSquaredPerKm = bands * m_setup.noise.tauSquared_l2PerKm;
    return rates;
}

RateForecast ConsumptionModel::forecast(const Mix& ahead, const Circumstances& now) const
{
    const ModeRates all = rates(now);
    const std::size_t count = all.modes.size();
    std::vector<double> share(count, 0.0);
    double total_km = 0;
    double unknown_km = 0;
    for (const auto& [mode, distance] : ahead) {
        total_km += distance.km();
        if (const auto index = indexOf(mode))
            share[*index] += distance.km();
        else
            unknown_km += distance.km();
    }
    if (!(total_km > 0))
        total_km = unknown_km = 1;
    for (std::size_t i = 0; i < count; ++i)
        share[i] = (share[i] + unknown_km * all.usualMix[i].ratio()) / total_km;
    double mean = 0;
    double variance = std::pow(unknown_km / total_km, 2) * all.usualMixVariance;
    for (std::size_t i = 0; i < count; ++i) {
        mean += share[i] * all.mean[i].litresPerKm();
        for (std::size_t j = 0; j < count; ++j)
            variance += share[i] * share[j] * all.covariance[i * count + j];
    }
    const double sd = std::sqrt(variance);
    const double df = all.degreesOfFreedom;
    return {{Consumption::fromLitresPerKm(mean), Consumption::fromLitresPerKm(sd)},
            Consumption::fromLitresPerKm(sd * std::sqrt((df - 2) / df)), df, all.tauSquaredPerKm};
}

} // namespace undermark
