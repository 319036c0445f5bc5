// SPDX-License-Identifier: GPL-3.0-or-later
//
// Laws with a heavy tail: Student's t with eight degrees of freedom, and mixtures of it
// for the logarithm of a rate.
#pragma once

#include <vector>

namespace undermark {

// Student's t with eight degrees of freedom, scaled to a given standard deviation. For
// even degrees of freedom its cdf is a polynomial of t / sqrt(8 + t^2) (Abramowitz &
// Stegun 1964, 26.7.4), so all of this takes some nanoseconds.
struct HeavyTail {
    static constexpr int kDegreesOfFreedom = 8;

    double mean = 0;
    double sd = 1;                               // > 0

    double cdf(double value) const;
    double quantile(double probability) const;   // 0 < probability < 1
    double logDensity(double value) const;
    double oddity(double value) const;           // probability of a value at least so far out
};

struct LogLawPart {
    double weight;   // > 0; they sum to 1
    HeavyTail law;
};

// A mixture, each part stretched about its mean by `stretch`.
double mixtureCdf(const std::vector<LogLawPart>& parts, double value, double stretch);
// By bisection where there are several parts: within 1e-6 of the widest sd.
double mixtureQuantile(const std::vector<LogLawPart>& parts, double probability, double stretch);

} // namespace undermark
