// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/log_law.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

constexpr double kDf = HeavyTail::kDegreesOfFreedom;
const double kUnitSd = std::sqrt(kDf / (kDf - 2));   // of the t itself

double standardCdf(double t)
{
    const double c2 = kDf / (kDf + t * t);
    const double s = t / std::sqrt(kDf + t * t);
    return 0.5 + 0.5 * s * (1 + c2 * (1.0 / 2 + c2 * (3.0 / 8 + c2 * (5.0 / 16))));
}

// Without the cancellation of 1 - cdf far out.
double standardUpperTail(double t)
{
    if (t < 30)
        return 1 - standardCdf(t);
    // Leading term: density * t / df.
    return 35.0 / 32 / std::sqrt(kDf) * std::pow(1 + t * t / kDf, -4.5) * t / kDf;
}

} // namespace

double HeavyTail::cdf(double value) const { return standardCdf((value - mean) / sd * kUnitSd); }

double HeavyTail::quantile(double probability) const
{
    double low = -50, high = 50;
    double t = 0;
    for (int i = 0; i < 60 && high - low > 1e-12; ++i) {   // Newton, kept within a bracket
        const double away = standardCdf(t) - probability;
        (away > 0 ? high : low) = t;
        const double density = 35.0 / 32 / std::sqrt(kDf) * std::pow(1 + t * t / kDf, -4.5);
        const double next = t - away / density;
        if (std::abs(next - t) < 1e-12)
            break;
        t = next > low && next < high ? next : (low + high) / 2;
    }
    return mean + sd * t / kUnitSd;
}

double HeavyTail::logDensity(double value) const
{
    const double t = (value - mean) / sd * kUnitSd;
    return std::log(35.0 / 32 / std::sqrt(kDf) * kUnitSd / sd) - 4.5 * std::log1p(t * t / kDf);
}

double HeavyTail::oddity(double value) const
{
    return 2 * standardUpperTail(std::abs(value - mean) / sd * kUnitSd);
}

double mixtureCdf(const std::vector<LogLawPart>& parts, double value, double stretch)
{
    double sum = 0;
    for (const LogLawPart& part : parts)
        sum += part.weight * HeavyTail{part.law.mean, part.law.sd * stretch}.cdf(value);
    return sum;
}

double mixtureQuantile(const std::vector<LogLawPart>& parts, double probability, double stretch)
{
    const double unit = HeavyTail{}.quantile(probability) * stretch;
    const auto own = [&](const LogLawPart& part) { return part.law.mean + part.law.sd * unit; };
    if (parts.size() == 1)
        return own(parts.front());
    // Between the parts' own quantiles.
    double low = own(parts.front()), high = low, widest = 0;
    for (const LogLawPart& part : parts) {
        low = std::min(low, own(part));
        high = std::max(high, own(part));
        widest = std::max(widest, part.law.sd);
    }
    while (high - low > 1e-6 * widest) {
        const double middle = (low + high) / 2;
        (mixtureCdf(parts, middle, stretch) > probability ? high : low) = middle;
    }
    return (low + high) / 2;
}

} // namespace undermark
