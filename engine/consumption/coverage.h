// SPDX-License-Identifier: GPL-3.0-or-later
//
// Keeps intervals honest where the model alone drifts, and scores them.
#pragma once

#include <array>
#include <cstddef>

namespace undermark {

// The bands that are shown and kept calibrated.
inline constexpr std::array<double, 3> kBandLevels{0.5, 0.8, 0.9};

// One factor per band, by which half-widths are stretched: up a little after a
// miss, down a little after a hit, so that in the long run a band of level p
// covers a share p whatever the law of the data (adaptive conformal inference,
// Gibbs & Candes 2021, here on the logarithm of the width). O(1).
class BandFactors {
public:
    // What the factors begin with, > 0.
    explicit BandFactors(double start = 1) : m_factor{start, start, start} {}
    double operator[](std::size_t band) const { return m_factor[band]; }
    // These on top of others.
    BandFactors over(const BandFactors& base) const;
    // `hit[k]`: the outcome lay within the band as it was shown.
    void observe(const std::array<bool, 3>& hit);

private:
    std::array<double, 3> m_factor;
};

// Interval score of a central band of level `level`, in the outcome's unit:
// width + 2/alpha times how far the outcome lies outside, alpha = 1 - level
// (Gneiting & Raftery 2007, eq. 43). Smaller is better.
double intervalScore(double low, double high, double outcome, double level);

} // namespace undermark
