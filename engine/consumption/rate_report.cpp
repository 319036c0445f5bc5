// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/rate_report.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr int kMostTanks = 200;
constexpr std::size_t kTypicalTanks = 10;

// Posterior of every mode's rate and, last, of the usual mix: mean and variance.
struct Posterior {
    std::vector<double> mean;
    std::vector<double> variance;
    double degreesOfFreedom;
};

Posterior posteriorOf(const ModeRates& rates)
{
    const std::size_t n = rates.modes.size();
    Posterior p{std::vector<double>(n + 1, 0.0), std::vector<double>(n + 1, 0.0),
                rates.degreesOfFreedom};
    for (std::size_t i = 0; i < n; ++i) {
        p.mean[i] = rates.longRun[i].litresPerKm();
        p.variance[i] = rates.posterior[i * n + i];
        p.mean[n] += rates.usualMix[i].ratio() * p.mean[i];
        for (std::size_t j = 0; j < n; ++j)
            p.variance[n] += rates.usualMix[i].ratio() * rates.usualMix[j].ratio()
                * rates.posterior[i * n + j];
    }
    return p;
}

double halfWidth90(const Posterior& p, std::size_t i)
{
    const StudentT standard{0, 1, p.degreesOfFreedom};
    const double scale = std::sqrt(std::max(p.variance[i], 0.0) / (standard.sd() * standard.sd()));
    return standard.quantile(0.95) * scale;
}

// A stretch like the last ones.
std::optional<Interval> typical(std::span<const Interval> intervals)
{
    if (intervals.empty())
        return std::nullopt;
    const auto last = intervals.last(std::min(intervals.size(), kTypicalTanks));
    const double n = double(last.size());
    Interval mean = last.back();
    mean.byMode.clear();
    mean.distance = {};
    mean.idleHours = mean.coldStarts = 0;
    for (const Interval& one : last) {
        mean.distance += one.distance / n;
        mean.idleHours += one.idleHours / n;
        mean.coldStarts += one.coldStarts / n;
        for (const auto& [mode, distance] : one.byMode)
            mean.byMode[mode] += distance / n;
    }
    return mean;
}

// For each rate, after how many more typical tanks its interval is narrow
// enough. The tanks come out one scale high and low in turn, so that the noise
// keeps its size.
std::vector<std::optional<int>> tanksToNarrow(ConsumptionModel model,
                                              std::span<const Interval> intervals, double wanted)
{
    std::vector<std::optional<int>> needed(model.setup().modes.size() + 1);
    auto tank = typical(intervals);
    for (int count = 0; count <= kMostTanks; ++count) {
        const Posterior p = posteriorOf(model.rates());
        for (std::size_t i = 0; i < needed.size(); ++i)
            if (!needed[i] && 2 * halfWidth90(p, i) <= wanted)
                needed[i] = count;
        if (!tank || std::ranges::all_of(needed, [](const auto& n) { return n.has_value(); }))
            break;
        tank->burnt.mean = model.expectedLitres(*tank);
        const StudentT law = model.predictLogRatio(*tank);
        tank->burnt.mean = tank->burnt.mean
            * std::exp(law.location + (count % 2 == 0 ? law.scale : -law.scale));
        model.observe(*tank);
    }
    return needed;
}

} // namespace

RateReport reportRates(std::span<const Interval> intervals, const std::vector<bool>& learnt,
                       ConsumptionModel fresh, const RateReportOptions& options)
{
    RateReport report;
    ConsumptionModel model = std::move(fresh);
    for (std::size_t i = 0; i < intervals.size(); ++i) {
        const bool counts = i >= learnt.size() || learnt[i];
        Circumstances then;   // so that the season does not move between before and after
        then.begin = intervals[i].end;
        const bool told = i + options.lessons >= intervals.size();
        Lesson lesson;
        if (told) {
            const double trend = std::exp(model.predictLogRatio(intervals[i]).location);
            lesson = {intervals[i].lastFill, model.expectedLitres(intervals[i]) * trend,
                      intervals[i].burnt.mean, model.forecast({}, then).rate.mean, {}, counts};
        }
        if (counts)
            model.observe(intervals[i]);
        if (told) {
            lesson.usualAfter = model.forecast({}, then).rate.mean;
            report.lessons.push_back(lesson);
        }
    }
    const ModeRates rates = model.rates(options.now);
    const Posterior p = posteriorOf(rates);
    const auto needed = tanksToNarrow(model, intervals, options.wantedWidth.litresPerKm());
    const std::size_t n = rates.modes.size();
    for (std::size_t i = 0; i <= n; ++i) {
        const double half = halfWidth90(p, i);
        RateLine line{i < n ? rates.modes[i] : "",
                      {Consumption::fromLitresPerKm(p.mean[i]),
                       Consumption::fromLitresPerKm(std::sqrt(std::max(p.variance[i], 0.0)))},
                      Consumption::fromLitresPerKm(std::max(p.mean[i] - half, 0.0)),
                      Consumption::fromLitresPerKm(p.mean[i] + half),
                      {},
                      needed[i]};
        if (i < n)
            line.share = rates.usualMix[i];
        (i < n ? report.modes.emplace_back() : report.usual) = std::move(line);
    }
    report.idle = rates.idle;
    report.coldStart = rates.coldStart;
    const StudentT trend = model.trendNow(options.now);
    report.trend = Fraction::fromRatio(std::exp(trend.location) - 1);
    report.trendLow90 = Fraction::fromRatio(std::exp(trend.quantile(0.05)) - 1);
    report.trendHigh90 = Fraction::fromRatio(std::exp(trend.quantile(0.95)) - 1);
    return report;
}

} // namespace undermark
