// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/settled_reading.h"

#include <boost/accumulators/accumulators.hpp>
#include <boost/accumulators/statistics/covariance.hpp>
#include <boost/accumulators/statistics/variance.hpp>
#include <boost/accumulators/statistics/mean.hpp>
#include <boost/accumulators/statistics/stats.hpp>
#include <boost/accumulators/statistics/variance.hpp>
#include <boost/accumulators/statistics/variates/covariate.hpp>

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

namespace acc = boost::accumulators;

constexpr int kFewestSettled = 5;

// Lag-1 autocorrelation about the common mean, as NIST certifies it.
double lagOne(std::span<const TimedSignal> series, double mean, double variance)
{
    if (variance <= 0.0)
        return 0.0;
    double sum = 0.0;
    for (std::size_t i = 1; i < series.size(); ++i)
        sum += (series[i - 1].signal.value() - mean) * (series[i].signal.value() - mean);
    return sum / (double(series.size()) * variance);
}

} // namespace

SettledReading settle(std::span<const TimedSignal> series, Signal tolerance)
{
    SettledReading result;
    result.readings = static_cast<int>(series.size());
    if (series.empty())
        return result;
    using Time = acc::tag::covariate1;
    acc::accumulator_set<double, acc::stats<acc::tag::mean, acc::tag::variance,
                                            acc::tag::covariance<double, Time>>> signals;
    acc::accumulator_set<double, acc::stats<acc::tag::mean, acc::tag::variance>> times;
    const double first = series.front().signal.value();
    const auto start = series.front().time;
    for (const TimedSignal& one : series) {
        const double seconds = (one.time - start).count();
        signals(one.signal.value() - first, acc::covariate1 = seconds);
        times(seconds);
    }
    const double n = double(series.size());
    const double mean = first + acc::mean(signals);
    const double variance = acc::variance(signals);   // over n
    result.mean = Signal::of(mean);
    if (series.size() < 2)
        return result;
    result.sd = Signal::of(std::sqrt(variance * n / (n - 1.0)));
    if (series.size() < 3)
        return result;
    // At least one effective reading is left.
    const double r = std::clamp(lagOne(series, mean, variance), 0.0, (n - 1.0) / (n + 1.0));
    const double effective = n * (1.0 - r) / (1.0 + r);
    result.standardError = *result.sd / std::sqrt(effective);
    const double timeVariance = acc::variance(times);
    if (timeVariance <= 0.0)
        return result;
    const double slope = acc::covariance(signals, acc::covariate1) / timeVariance;
    result.driftPerSecond = Signal::of(slope);
    const double drifted = std::abs(slope) * (series.back().time - start).count();
    result.settled = result.readings >= kFewestSettled && 2.0 * *result.standardError <= tolerance
        && drifted <= tolerance.value();
    return result;
}

} // namespace undermark
