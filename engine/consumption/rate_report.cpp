// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/rate_report.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr int kMostTanks = 200;
constexpr std::size_t kTypicalTanks = 10;

// Posterior of every mode's rate and, last, of the usual mix.
std::vector<Estimate<Consumption>> posteriorOf(const ConsumptionModel& model)
{
    const LongRunRates rates = model.longRun();
    const std::vector<double> mix = model.usualMix();
    const std::size_t n = mix.size();
    std::vector<Estimate<Consumption>> all;
    double mean = 0, variance = 0;
    for (std::size_t i = 0; i < n; ++i) {
        all.push_back({rates.rate[i], Consumption::fromLitresPerKm(std::sqrt(rates.covariance[i * n + i]))});
        mean += mix[i] * rates.rate[i].litresPerKm();
        for (std::size_t j = 0; j < n; ++j)
            variance += mix[i] * mix[j] * rates.covariance[i * n + j];
    }
    all.push_back({Consumption::fromLitresPerKm(mean),
                   Consumption::fromLitresPerKm(std::sqrt(std::max(variance, 0.0)))});
    return all;
}

// Rates are log-normal about their median.
Consumption quantile(const Estimate<Consumption>& rate, double probability)
{
    return rate.mean * std::exp(HeavyTail{0, rate.sd / rate.mean}.quantile(probability));
}

Consumption width90(const Estimate<Consumption>& rate)
{
    return quantile(rate, 0.95) - quantile(rate, 0.05);
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
    mean.climbed = mean.climbedOver = {};
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
// enough. The tanks come out one sd high and low in turn, so that the noise
// keeps its size.
std::vector<std::optional<int>> tanksToNarrow(ConsumptionModel model,
                                              std::span<const Interval> intervals, Consumption wanted)
{
    std::vector<std::optional<int>> needed(model.setup().modes.size() + 1);
    auto tank = typical(intervals);
    for (int count = 0; count <= kMostTanks; ++count) {
        const auto rates = posteriorOf(model);
        for (std::size_t i = 0; i < needed.size(); ++i)
            if (!needed[i] && width90(rates[i]) <= wanted)
                needed[i] = count;
        if (!tank || std::ranges::all_of(needed, [](const auto& n) { return n.has_value(); }))
            break;
        tank->burnt.mean = model.expectedLitres(*tank)
            * std::exp(model.predictLogRatio(*tank).sd / model.setup().constants.promisedMore
                       * (count % 2 == 0 ? 1 : -1));
        model.observe(*tank);
    }
    return needed;
}

} // namespace

RateReport reportRates(std::span<const Interval> intervals, const std::vector<Belief>& beliefs,
                       ConsumptionModel fresh, const RateReportOptions& options)
{
    RateReport report;
    ConsumptionModel model = std::move(fresh);
    for (std::size_t i = 0; i < intervals.size(); ++i) {
        const Belief belief = i < beliefs.size() ? beliefs[i] : Belief::open;
        Circumstances then;   // so that the season does not move between before and after
        then.begin = intervals[i].end;
        const bool told = i + options.lessons >= intervals.size();
        Lesson lesson;
        if (told) {
            lesson = {intervals[i].lastFill, model.expectedLitres(intervals[i]), intervals[i].burnt.mean,
                      model.forecast({}, then).rate.mean, {}, isBelieved(belief)};
        }
        model.observe(intervals[i], belief);
        if (told) {
            lesson.usualAfter = model.forecast({}, then).rate.mean;
            report.lessons.push_back(lesson);
        }
    }
    const auto rates = posteriorOf(model);
    const auto needed = tanksToNarrow(model, intervals, options.wantedWidth);
    const std::vector<double> mix = model.usualMix();
    for (std::size_t i = 0; i <= mix.size(); ++i) {
        const bool isMode = i < mix.size();
        RateLine line{isMode ? model.setup().modes[i].name : "", rates[i], quantile(rates[i], 0.05),
                      quantile(rates[i], 0.95), {}, needed[i]};
        if (isMode)
            line.share = Fraction::fromRatio(mix[i]);
        (isMode ? report.modes.emplace_back() : report.usual) = std::move(line);
    }
    report.idle = model.longRun().idle;
    report.coldStart = model.longRun().coldStart;
    report.climb = model.longRun().climb;
    report.usualClimb = model.usualClimb();
    const HeavyTail trend = model.trendNow(options.now);
    report.trend = Fraction::fromRatio(std::exp(trend.mean) - 1);
    report.trendLow90 = Fraction::fromRatio(std::exp(trend.quantile(0.05)) - 1);
    report.trendHigh90 = Fraction::fromRatio(std::exp(trend.quantile(0.95)) - 1);
    return report;
}

} // namespace undermark
