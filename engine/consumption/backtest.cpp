// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/backtest.h"

#include <algorithm>
#include <cmath>
#include <deque>

namespace undermark {

namespace {

constexpr double kOverPromise = 1.10;
constexpr std::size_t kLong = 3;   // tanks of the long horizon
std::array<bool, 3> hits(const DistanceForecast& forecast, Distance actual)
{
    std::array<bool, 3> hit{};
    for (std::size_t k = 0; k < hit.size(); ++k)
        hit[k] = actual >= forecast.bands[k].low && actual <= forecast.bands[k].high;
    return hit;
}

// Sums over outcomes, then means.
class Scorer {
public:
    void add(const DistanceForecast& forecast, Distance actual)
    {
        const auto hit = hits(forecast, actual);
        ++m_sum.count;
        for (std::size_t k = 0; k < hit.size(); ++k) {
            const Band& band = forecast.bands[k];
            m_sum.coverage[k] += hit[k] ? 1 : 0;
            m_sum.width[k] += band.high - band.low;
            m_sum.intervalScore[k] += Distance::fromKm(intervalScore(
                band.low.km(), band.high.km(), actual.km(), kBandLevels[k]));
        }
    }

    BandScores mean() const
    {
        BandScores scores = m_sum;
        const double n = std::max(double(scores.count), 1.0);
        for (std::size_t k = 0; k < kBandLevels.size(); ++k) {
            scores.coverage[k] /= n;
            scores.width[k] = scores.width[k] / n;
            scores.intervalScore[k] = scores.intervalScore[k] / n;
        }
        return scores;
    }

private:
    BandScores m_sum;
};

double relativeError(Distance forecast, Distance actual)
{
    return std::abs(forecast / actual - 1);
}

Circumstances circumstances(Instant begin, Instant end, bool pace)
{
    Circumstances known;
    known.begin = begin;
    if (pace)
        known.days = daysBetween(begin, end);
    return known;
}

// A stretch of several tanks, forecast at its begin and judged at its end. Its
// bands have factors of their own.
// Whether the rate was below that of each of kPromises.
std::array<bool, kPromises.size()> rateBelow(const DistanceForecast& forecast, Distance actual)
{
    std::array<bool, kPromises.size()> below{};
    for (std::size_t k = 0; k < below.size(); ++k)
        below[k] = actual >= forecast.promised[k];
    return below;
}

class LongHorizon {
public:
    // `tanks` beginning with the one that lies ahead.
    void forecast(const ConsumptionModel& model, std::span<const Interval> tanks, bool pace,
                  bool counts)
    {
        for (Pending& pending : m_pending)
            if (--pending.tanksLeft == 0)
                m_factors.observe(rateBelow(pending.forecast, pending.actual));
        while (!m_pending.empty() && m_pending.front().tanksLeft <= 0)
            m_pending.pop_front();
        if (tanks.size() < kLong)
            return;
        Volume burnt;
        Distance actual;
        for (const Interval& tank : tanks.first(kLong)) {
            burnt += tank.burnt.mean;
            actual += tank.distance;
        }
        const auto known = circumstances(tanks[0].begin, tanks[kLong - 1].end, pace);
        const DistanceForecast ahead = model.forecastTanks(burnt, known, int(kLong), m_factors);
        m_pending.push_back({ahead, actual, int(kLong)});
        if (counts)
            m_scorer.add(ahead, actual);
    }

    BandScores scores() const { return m_scorer.mean(); }

private:
    struct Pending {
        DistanceForecast forecast;
        Distance actual;
        int tanksLeft;
    };
    std::deque<Pending> m_pending;
    PromiseFactors m_factors;
    Scorer m_scorer;
};

// The simple forecasters, as rates in L/km, before and after each tank.
class Baselines {
public:
    void score(const Interval& tank)
    {
        const auto error = [&](double rate) {
            return relativeError(Distance::fromKm(tank.burnt.mean.litres() / rate), tank.distance);
        };
        m_sum.last += error(m_rates.back());
        m_sum.mean5 += error(meanOf(5));
        m_sum.mean10 += error(meanOf(10));
        m_sum.ewma += error(m_ewma);
        ++m_count;
    }

    void observe(const Interval& tank)
    {
        const double rate = (tank.burnt.mean / tank.distance).litresPerKm();
        m_ewma = m_rates.empty() ? rate : 0.7 * m_ewma + 0.3 * rate;
        m_rates.push_back(rate);
        if (m_rates.size() > 10)
            m_rates.pop_front();
    }

    BaselineErrors mean() const
    {
        const double n = std::max(m_count, 1.0);
        return {m_sum.last / n, m_sum.mean5 / n, m_sum.mean10 / n, m_sum.ewma / n};
    }

private:
    double meanOf(std::size_t count) const
    {
        const std::size_t n = std::min(count, m_rates.size());
        double sum = 0;
        for (std::size_t i = m_rates.size() - n; i < m_rates.size(); ++i)
            sum += m_rates[i];
        return sum / double(n);
    }

    std::deque<double> m_rates;
    double m_ewma = 0;
    BaselineErrors m_sum;
    double m_count = 0;
};

} // namespace

Backtest backtest(std::span<const Interval> tanks, ConsumptionModel model, bool pace)
{
    Backtest result;
    result.tanks = tanks.size();
    Baselines baselines;
    LongHorizon threeTanks;
    Scorer oneTank;
    Scorer shortStretch;
    for (std::size_t i = 0; i < tanks.size(); ++i) {
        const Interval& tank = tanks[i];
        const bool counts = i >= kWarmUpTanks;
        const auto known = circumstances(tank.begin, tank.end, pace);
        TankForecast ahead{i, model.forecastDistance(tank.burnt.mean, known), tank.distance, false};
        threeTanks.forecast(model, tanks.subspan(i), pace, counts);
        const auto flag = judge(model, tank, std::nullopt);
        ahead.flagged = flag.has_value();
        if (flag) {
            result.flags.push_back(*flag);
            result.flags.back().fill = i;
        }
        if (counts) {
            baselines.score(tank);
            oneTank.add(ahead.forecast, tank.distance);
            if (model.isShort(tank.burnt.mean))
                shortStretch.add(ahead.forecast, tank.distance);
            result.meanError += relativeError(ahead.forecast.point, tank.distance);
            result.overPromised += ahead.forecast.point / tank.distance > kOverPromise ? 1 : 0;
            result.kept.p99 += tank.distance >= ahead.forecast.p99() ? 1 : 0;
            result.kept.p90 += tank.distance >= ahead.forecast.p90() ? 1 : 0;
            result.kept.p10 += tank.distance >= ahead.forecast.p10() ? 1 : 0;
            result.forecasts.push_back(ahead);
        }
        model.observe(tank);
        baselines.observe(tank);
    }
    const double n = std::max(double(result.forecasts.size()), 1.0);
    result.meanError /= n;
    result.overPromised /= n;
    result.kept = {result.kept.p99 / n, result.kept.p90 / n, result.kept.p10 / n};
    result.baseline = baselines.mean();
    result.oneTank = oneTank.mean();
    result.threeTanks = threeTanks.scores();
    result.shortStretch = shortStretch.mean();
    return result;
}

} // namespace undermark
