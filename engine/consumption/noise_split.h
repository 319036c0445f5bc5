// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much of a car's scatter comes from the click of the nozzle and how much
// from driving. The click is the same for a short stretch and for a whole tank,
// so it is told apart by how the scatter changes with the length of a stretch: a
// log of nothing but alike tanks leaves it near its prior.
#pragma once

#include <array>
#include <cstddef>

namespace undermark {

// A few candidates for the click, each with its own scale of all noise (inverse
// gamma), weighted by how well they foretold what came; old evidence fades.
class NoiseSplit {
public:
    NoiseSplit();

    // By what the click's variance is to be multiplied: mean over the candidates.
    double clickFactor() const { return m_clickFactor; }

    // `error` of a log ratio; the variances that were stated for it: of the click
    // (>= 0) and of the rest (> 0), both over the square of the litres. O(1).
    void observe(double error, double clickVariance, double otherVariance);

private:
    static constexpr std::size_t kCandidates = 6;
    double meanFactor() const;

    std::array<double, kCandidates> m_logWeight;
    std::array<double, kCandidates> m_shape;
    std::array<double, kCandidates> m_rate;
    double m_clickFactor = 1;
};

} // namespace undermark
