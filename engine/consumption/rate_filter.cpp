// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/rate_filter.h"

#include <Eigen/Core>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

constexpr std::size_t kLevel = 0, kFast = 1, kClick = 2, kFeature = 3, kFeatures = 6;
constexpr std::size_t kItem = kFeature + kFeatures;

// Coefficients of the features before anything is learnt, and their spreads: long days
// on the road burn less than weeks of errands, winter more than summer.
constexpr std::array<double, kFeatures> kBeta{0.06, 0.03, 0, 0, 0.02, 0};
constexpr std::array<double, kFeatures> kBetaSd{0.04, 0.06, 0.05, 0.10, 0.04, 0.03};
constexpr double kDaysPerYear = 365.2425;
constexpr double kLeastSize = 1e-3;      // of a stretch, in usual ones: keeps 1 / size finite
constexpr double kShort = 0.25;          // stretches of less than that are judged in litres
constexpr double kLongMemory = 0.02;     // least weight of the newest in running means
constexpr std::size_t kPaceFeatures = 3;
constexpr double kPacePersists = 0.3;    // of the last stretch's days, where the next are unknown
// However alike the tanks of a log are, two clicks of a few tenths of a litre and the
// pump's own error remain (common practice, no source).
constexpr double kLeastScale = 0.01;
// Tanks in a row are more alike than the fast part makes them: their noise averages out with
// this power of their number (by simulated cars and three real logs).
constexpr double kAlone = 0.75;
constexpr double kMostGivenBack = 0.5;   // of the road's litres, by a tank that led down
constexpr double kMostSeen = 2.5;        // scores beyond which the scale grows no more

using Vector = Eigen::Map<Eigen::VectorXd>;
using Square = Eigen::Map<Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>>;
using ConstVector = Eigen::Map<const Eigen::VectorXd>;
using ConstSquare = Eigen::Map<const Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>>;

Vector vector(std::vector<double>& v) { return {v.data(), Eigen::Index(v.size())}; }
ConstVector vector(const std::vector<double>& v) { return {v.data(), Eigen::Index(v.size())}; }

// n * n entries, row by row.
Square square(std::vector<double>& v, std::size_t n)
{
    return {v.data(), Eigen::Index(n), Eigen::Index(n)};
}
ConstSquare square(const std::vector<double>& v, std::size_t n)
{
    return {v.data(), Eigen::Index(n), Eigen::Index(n)};
}

// Of one state, and what it shares with the others.
void multiply(Square covariance, std::size_t i, double factor)
{
    covariance.row(Eigen::Index(i)) *= factor;
    covariance.col(Eigen::Index(i)) *= factor;
}

// Evidence on coefficients and items fades, but never past the prior; what is known no
// better than by the prior goes back to it.
void fadeEvidence(Vector mean, Square covariance, const std::vector<double>& priorMean,
                  const std::vector<double>& priorVariance, double fade)
{
    for (std::size_t i = kFeature; i < priorMean.size(); ++i) {
        const auto at = Eigen::Index(i);
        const double unknown = covariance(at, at) / priorVariance[i];
        mean[at] -= (fade - 1) / 2 * std::min(unknown, 1.0) * (mean[at] - priorMean[i]);
        if (unknown * fade <= 1)
            multiply(covariance, i, std::sqrt(fade));
    }
}

double yearAngle(Instant time)
{
    const double days = std::chrono::duration<double, std::ratio<86400>>(time.time_since_epoch()).count();
    return 2 * std::numbers::pi * days / kDaysPerYear;
}

} // namespace

RateFilter::RateFilter(const RatePrior& prior, const FilterConstants& constants)
    : m_constants(constants), m_base(prior.base), m_scale(constants.scale),
      m_scaleSum(constants.scaleWeight * constants.scale * constants.scale),
      m_scaleWeights(constants.scaleWeight), m_usual_l(prior.usual_l)
{
    const std::size_t items = prior.base.size(), n = kItem + items;
    const double s2 = m_scale * m_scale;
    m_mean.assign(n, 0.0);
    m_covariance.assign(n * n, 0.0);
    Square covariance = square(m_covariance, n);
    // The prior's order is level, own...: the level first, the rest from kItem on.
    const auto at = [](std::size_t i) { return i == 0 ? kLevel : kItem + i - 1; };
    for (std::size_t i = 0; i <= items; ++i) {
        m_mean[at(i)] = prior.mean[i];
        for (std::size_t j = 0; j <= items; ++j)
            m_covariance[at(i) * n + at(j)] = prior.covariance[i * (items + 1) + j];
    }
    covariance(kFast, kFast) = constants.fast * s2;
    covariance(kClick, kClick) = clickVariance();
    for (std::size_t i = 0; i < kFeatures; ++i) {
        m_mean[kFeature + i] = kBeta[i];
        m_covariance[(kFeature + i) * (n + 1)] = kBetaSd[i] * kBetaSd[i];
    }
    for (std::size_t i = 0; i < n; ++i)
        m_priorVariance.push_back(m_covariance[i * (n + 1)]);
    m_priorMean = m_mean;
}

Estimate<Volume> RateFilter::lastClick() const
{
    return {Volume::fromLitres(m_mean[kClick] * m_usual_l),
            Volume::fromLitres(std::sqrt(m_covariance[kClick * (m_mean.size() + 1)]) * m_usual_l)};
}

double RateFilter::clickVariance() const { return m_constants.click * m_split.clickVariance(); }

double RateFilter::clickSd_l() const { return std::sqrt(clickVariance()) * m_usual_l; }

std::array<double, 6> RateFilter::features(const FilterStretch& stretch, double size) const
{
    std::array<double, kFeatures> x{};
    if (stretch.days && m_constants.days) {
        const double days = *stretch.days / stretch.tanks;
        x[0] = m_daysKnown > 0 ? std::clamp(std::log(days + 2) - m_logDays, -1.0, 1.0) : 0;
        x[1] = m_daysKnown > 0 ? std::min(2.0, days / (size * std::max(m_days, 0.25))) - 1 : 0;
        x[2] = *stretch.days == 0 ? 1 : 0;
    } else if (m_constants.days) {
        for (std::size_t i = 0; i < kPaceFeatures; ++i)
            x[i] = m_paceMean[i] + kPacePersists * (m_lastPace[i] - m_paceMean[i]);
    }
    // Of a tank over unusual hills the size is theirs, and would explain them away.
    if (m_constants.size && stretch.quantity.back() == 0)
        x[3] = std::clamp(std::log(size), -1.0, 1.0);
    if (stretch.middle && m_constants.season) {
        x[4] = std::cos(yearAngle(*stretch.middle));
        x[5] = std::sin(yearAngle(*stretch.middle));
    }
    return x;
}

// What the items cost, and the share of each in the logarithm's derivative.
double RateFilter::logCost(const FilterStretch& stretch, std::vector<double>& h) const
{
    const std::size_t climb = m_base.size() - 1;   // the last item
    double cost = 0;   // at level 0
    for (std::size_t j = 0; j < climb; ++j)
        if (stretch.quantity[j] > 0)
            cost += h[kItem + j] = m_base[j] * std::exp(m_mean[kItem + j]) * stretch.quantity[j];
    if (stretch.quantity[climb] != 0) {
        const double height = m_base[climb] * std::exp(m_mean[kItem + climb] - m_mean[kLevel]) * stretch.quantity[climb];
        h[kItem + climb] = std::max(height, -kMostGivenBack * cost);
        cost += h[kItem + climb];
    }
    for (std::size_t j = 0; j < m_base.size(); ++j)
        h[kItem + j] /= cost;
    h[kLevel] = 1 - h[kItem + climb];
    return std::log(cost) + m_mean[kLevel];
}

RateFilter::Prediction RateFilter::predict(const FilterStretch& stretch, double size) const
{
    const FilterConstants& c = m_constants;
    const double s2 = m_scale * m_scale;
    const double tanks = std::round(std::max(stretch.tanks, 1.0));
    const double whole = size * tanks;
    const double days = stretch.days.value_or(m_days * tanks) / tanks;
    const double keep = std::pow(c.fastKeep, std::clamp((days + 1) / (m_days + 1), 0.3, 4.0));
    // Mean over the tanks of the fast part (AR(1)) and of the walk of the level.
    double kept = 0, fresh = 0, walk = 0, power = 1;
    for (int tank = 1; tank <= static_cast<int>(tanks); ++tank) {
        const double share = tank / tanks;
        power *= keep;
        kept += power / tanks;
        fresh += std::pow((1 - power) / (1 - keep) / tanks, 2) * (1 - keep * keep);
        walk += share * share;
    }
    const bool follows = stretch.follows && stretch.clickEnds > 0;
    Prediction p{std::vector<double>(m_mean.size(), 0.0), size, keep, 0, 0, 0, 0};
    p.h[kFast] = kept;
    p.h[kClick] = follows ? -1 / whole : 0;
    const auto x = features(stretch, size);
    std::ranges::copy(x, p.h.data() + kFeature);
    p.mean = logCost(stretch, p.h) + kept * m_mean[kFast] + p.h[kClick] * m_mean[kClick];
    for (std::size_t i = kFeature; i < kItem; ++i)
        p.mean += p.h[i] * m_mean[i];
    const double spread = vector(p.h).dot((square(m_covariance, m_mean.size()) * vector(p.h)).eval());
    p.state = std::max(spread, 0.0)   // rounding
        + s2 * (c.levelWalk * walk + c.fast * fresh);
    const int newClicks = stretch.clickEnds - (follows ? 1 : 0);
    const double level = stretch.levelSd_l / m_usual_l;
    p.noise = m_split.variance(s2, size) / std::pow(tanks, kAlone)
        + (newClicks * clickVariance() + level * level) / (whole * whole);
    p.fromShortness = m_split.roadVariance(s2) * std::max(1 / size - 1, 0.0) / tanks;
    for (std::size_t i = 0; i < kPaceFeatures && !stretch.days && c.days; ++i)
        p.noise += m_mean[kFeature + i] * m_mean[kFeature + i] * m_paceVariance[i] / tanks;
    return p;
}

double RateFilter::sizeOf(const FilterStretch& stretch) const
{
    return std::max(stretch.litres / m_usual_l / stretch.tanks, kLeastSize);
}

double RateFilter::expectedLitres(const FilterStretch& stretch) const
{
    return std::exp(predict(stretch, sizeOf(stretch)).mean);
}

HeavyTail RateFilter::law(const FilterStretch& ahead) const
{
    const Prediction p = predict(ahead, sizeOf(ahead));
    return {p.mean, m_constants.promisedMore * p.sd()};
}

double RateFilter::fromShortness(const FilterStretch& ahead) const
{
    const Prediction p = predict(ahead, sizeOf(ahead));
    return p.fromShortness / (p.state + p.noise);
}

RateFilter::Surprise RateFilter::surprise(const FilterStretch& stretch) const
{
    const double burnt = sizeOf(stretch);
    Surprise seen{predict(stretch, burnt), 0, false};
    // A slip of a digit must not decide how closely the stretch is looked at: then its
    // size is what was expected of a usual one over the same way.
    const auto given = features(stretch, burnt), usual = features(stretch, 1);
    double expected = seen.expected.mean - std::log(m_usual_l);
    for (std::size_t i = 0; i < kFeatures; ++i)
        expected += m_mean[kFeature + i] * (usual[i] - given[i]);
    expected = std::max(std::exp(expected), kLeastSize);
    seen.isShort = expected < kShort;
    if (seen.isShort || burnt < expected / 2)
        seen.expected = predict(stretch, expected);
    seen.error = std::log(stretch.litres) - seen.expected.mean;
    if (seen.isShort)
        seen.error = std::expm1(seen.error);
    return seen;
}

void RateFilter::advance(const FilterStretch& stretch, double fastKeep)
{
    const double s2 = m_scale * m_scale;
    const std::size_t n = m_mean.size();
    Square covariance = square(m_covariance, n);
    m_mean[kFast] *= fastKeep;
    multiply(covariance, kFast, fastKeep);
    covariance(kFast, kFast) += m_constants.fast * s2 * (1 - fastKeep * fastKeep);
    covariance(kLevel, kLevel) += m_constants.levelWalk * s2;
    if (!stretch.follows)
        forgetClick();
}

void RateFilter::forgetClick()
{
    Square covariance = square(m_covariance, m_mean.size());
    m_mean[kClick] = 0;
    covariance.row(kClick).setZero();
    covariance.col(kClick).setZero();
    covariance(kClick, kClick) = clickVariance();
}

void RateFilter::remember(const FilterStretch& stretch, const Surprise& seen)
{
    const double size = seen.expected.size;
    const double weight = seen.isShort ? size : std::min(1.0, size);
    const double bounded = std::min(std::abs(seen.score()), kMostSeen);
    const double keep = 1 - (1 - m_constants.scaleKeep) * weight;
    m_scaleSum = keep * m_scaleSum + weight * bounded * bounded * m_scale * m_scale;
    m_scaleWeights = keep * m_scaleWeights + weight;
    m_scale = std::max(std::sqrt(m_scaleSum / m_scaleWeights), kLeastScale);
    m_lastScore = seen.score();
    const auto towards = [weight](double& mean, double value, std::size_t before) {
        mean += weight * std::max(1.0 / double(before + 1), kLongMemory) * (value - mean);
    };
    double logUsual = std::log(m_usual_l);
    towards(logUsual, std::log(stretch.litres), m_learnt);
    m_usual_l = std::exp(logUsual);
    ++m_learnt;
    if (!stretch.days)
        return;
    for (std::size_t i = 0; i < kPaceFeatures; ++i) {
        const double x = seen.expected.h[kFeature + i];
        m_lastPace[i] += weight * (x - m_lastPace[i]);
        towards(m_paceVariance[i], std::pow(x - m_paceMean[i], 2), m_daysKnown);
        towards(m_paceMean[i], x, m_daysKnown);
    }
    towards(m_logDays, std::log(*stretch.days + 2), m_daysKnown);
    towards(m_days, *stretch.days, m_daysKnown);
    ++m_daysKnown;
}

void RateFilter::skip(const FilterStretch& stretch, const Surprise& seen)
{
    advance(stretch, seen.expected.fastKeep);
    forgetClick();
    m_lastScore = 0;
}

void RateFilter::addHills(FilterStretch road, double perKm)
{
    const std::size_t n = m_mean.size();
    std::vector<double> without(n, 0.0), with(n, 0.0);
    const double before = logCost(road, without);
    road.quantity.back() += perKm;
    m_mean[kLevel] += logCost(road, with) - before;
    Eigen::MatrixXd shift = Eigen::MatrixXd::Identity(Eigen::Index(n), Eigen::Index(n));
    shift.row(kLevel) += (vector(with) - vector(without)).transpose();
    Square covariance = square(m_covariance, n);
    covariance = (shift * covariance * shift.transpose()).eval();
}

void RateFilter::change(double spread) { m_covariance[kLevel] += spread * spread; }

void RateFilter::learn(const FilterStretch& stretch, const Surprise& seen)
{
    const FilterConstants& c = m_constants;
    advance(stretch, seen.expected.fastKeep);
    const double score = seen.score();
    if (std::min(std::abs(score), std::abs(m_lastScore)) > c.turn && score * m_lastScore > 0)
        change(std::sqrt(c.turnSpread) * seen.expected.sd()
               * std::min(std::abs(score), std::abs(m_lastScore)));
    Square covariance = square(m_covariance, m_mean.size());
    fadeEvidence(vector(m_mean), covariance, m_priorMean, m_priorVariance, c.fade);
    Eigen::VectorXd h = vector(seen.expected.h);
    h[kFast] = 1;   // the covariance is that of the moment now
    const Eigen::VectorXd along = covariance * h;
    const double state = h.dot(along);
    const double noise = seen.expected.noise;
    const double excess = std::max(1.0, std::abs(seen.error) / std::sqrt(state + noise) / c.bound);
    const double total = state + noise * excess * excess;
    // The last click counts as any other here: what is known of it rests on the split.
    const double withoutClick = state - h[kClick] * (2 * along[kClick] - h[kClick] * covariance(kClick, kClick));
    vector(m_mean) += along * (seen.error / total);
    covariance.noalias() -= along * (along.transpose() / total);
    if (stretch.clickEnds == 2) {
        // The click that ended this stretch, from prior 0: its share of the innovation.
        const double share = clickVariance() / (seen.expected.size * total);
        m_mean[kClick] = share * seen.error;
        covariance.row(kClick) = -share * along.transpose();
        covariance.col(kClick) = -share * along;
        covariance(kClick, kClick) = clickVariance() - share * share * total;
    } else {
        forgetClick();
    }
    // Rounding would grow: without this by a factor of ten in 500 alike stretches.
    covariance = ((covariance + covariance.transpose()) / 2).eval();
    // Not before: until here the noise is that of the prediction.
    m_split.observe(seen.error, withoutClick, m_scale * m_scale, seen.expected.size,
                    stretch.clickEnds);
    remember(stretch, seen);
}

RateFilter::Rates RateFilter::rates(std::optional<Instant> middle) const
{
    const std::size_t items = m_base.size(), n = m_mean.size();
    FilterStretch one;
    one.quantity.assign(items, 0.0);
    one.quantity[0] = 1;
    one.litres = m_usual_l;
    one.middle = middle;
    one.clickEnds = 0;
    const Prediction p = predict(one, 1);
    const ConstSquare covariance = square(m_covariance, n);
    const double walked = p.state - vector(p.h).dot((covariance * vector(p.h)).eval());
    Eigen::VectorXd trend = vector(p.h);
    trend[kLevel] = 0;
    trend.tail(Eigen::Index(items)).setZero();
    // Rows that pick level + own_j (of a climb own_j alone), and with the trend.
    Eigen::MatrixXd longRun = Eigen::MatrixXd::Zero(Eigen::Index(items), Eigen::Index(n));
    longRun.col(kLevel).head(Eigen::Index(items) - 1).setOnes();
    longRun.rightCols(Eigen::Index(items)).setIdentity();
    const Eigen::MatrixXd now = longRun.rowwise() + trend.transpose();
    Rates rates{{trend.dot(vector(m_mean)), std::sqrt(trend.dot((covariance * trend).eval()) + walked)},
                std::vector<double>(items), std::vector<double>(items * items),
                std::vector<double>(items), std::vector<double>(items * items)};
    vector(rates.longRun) = longRun * vector(m_mean);
    vector(rates.now) = now * vector(m_mean);
    square(rates.longRunCovariance, items) = longRun * covariance * longRun.transpose();
    square(rates.nowCovariance, items) = now * covariance * now.transpose();
    square(rates.nowCovariance, items).array() += walked;
    return rates;
}

} // namespace undermark
