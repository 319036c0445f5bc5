// SPDX-License-Identifier: GPL-3.0-or-later
//
// Keeps promises honest where the model alone drifts, and scores them.
#pragma once

#include <array>
#include <cstddef>

namespace undermark {

// The bands that are shown and kept calibrated.
inline constexpr std::array<double, 3> kBandLevels{0.5, 0.8, 0.9};

// The one-sided promises behind them and "sure": probability that a rate is below.
inline constexpr std::array<double, 8> kPromises{0.01, 0.05, 0.10, 0.25, 0.75, 0.90, 0.95, 0.99};

// One factor per promise, by which its distance from the middle is stretched: up a little
// after a miss, down a little after a hit, so that in the long run a promise of level p
// holds in a share p whatever the law of the data (adaptive conformal inference, Gibbs &
// Candes 2021, here on the logarithm of the width and one side at a time). O(1).
class PromiseFactors {
public:
    double operator[](std::size_t promise) const { return m_factor[promise]; }
    const std::array<double, 8>& all() const { return m_factor; }
    // Where that share of the variance, 0 to 1, is none that they have learnt of, but a sum of
    // so many small ones that it is normal.
    PromiseFactors diluted(double share) const;
    // These on top of others.
    PromiseFactors over(const PromiseFactors& base) const;
    // `below[k]`: the outcome lay below the rate of promise k as it was given.
    void observe(const std::array<bool, 8>& below);

private:
    // "Sure" begins a little wider: before a step has taught much, real tails are heavier.
    std::array<double, 8> m_factor{1, 1, 1, 1, 1, 1, 1, 1.05};
};

// What is given at kPromises, at any standard normal score: straight lines in between,
// the outermost beyond.
double valueAt(const std::array<double, 8>& given, double score);

// Interval score of a central band of level `level`, in the outcome's unit:
// width + 2/alpha times how far the outcome lies outside, alpha = 1 - level
// (Gneiting & Raftery 2007, eq. 43). Smaller is better.
double intervalScore(double low, double high, double outcome, double level);

} // namespace undermark
