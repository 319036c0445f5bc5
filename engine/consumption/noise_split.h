// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much of a car's scatter is the click of the nozzle, how much the road, and how much
// is the same over the whole tank; s^2, learnt elsewhere, is what road and tank together are
// on a usual stretch, relative to its litres. The click is the same for a short stretch and for a
// tank, the road's litres grow with the square root of the way, the rest with the way: they
// are told apart by how the scatter changes with the length of a stretch. A log of nothing
// but alike tanks leaves them near their prior.
#pragma once

#include <array>
#include <cstddef>

namespace undermark {

// Candidates for the click and the road's share, weighted by how well they foretold what
// came; old evidence fades.
class NoiseSplit {
public:
    NoiseSplit();

    // Means over the candidates.
    double clickVariance() const { return m_click; }   // of one click, over (usual litres)^2
    // Of the road of a usual stretch, over its litres^2: however calm the tanks are, never
    // less than real roads were measured to have.
    double roadVariance(double s2) const { return roadVariance(s2, m_road); }
    // Of a stretch without its clicks, over its litres^2.
    double variance(double s2, double size) const
    {
        return s2 * (1 - m_road) + roadVariance(s2) / size;
    }

    // `error` of the log of a stretch's litres; `known` the part of its variance that is no
    // noise; `size` > 0, in usual stretches; O(1), some hundred nanoseconds.
    void observe(double error, double known, double s2, double size, int clickEnds);

private:
    static constexpr std::size_t kClicks = 4, kRoads = 4;
    void average();
    static double roadVariance(double s2, double share);

    std::array<double, kClicks * kRoads> m_logWeight;
    double m_click = 0;
    double m_road = 0;
};

} // namespace undermark
