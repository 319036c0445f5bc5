// SPDX-License-Identifier: GPL-3.0-or-later
//
// The driving of which nobody said what it was: its mix of kinds, and how hilly it is.
#pragma once

#include "engine/base/quantity.h"

#include <cstddef>
#include <span>
#include <vector>

namespace undermark {

// Kilometres of logged trips by mode, fading, over a prior's pseudo-kilometres.
class UsualMix {
public:
    explicit UsualMix(std::vector<double> prior_km)
        : m_km(std::move(prior_km)), m_prior_km(m_km)
    {
    }

    // Share of each mode; they sum to 1.
    std::vector<double> shares() const;
    // Variance of the rate of an unknown mix about that of the usual one, in the
    // square of the unit of `rates`: sum of Dirichlet variances,
    // (E[r^2] - E[r]^2) / (concentration + 1).
    double variance(std::span<const double> rates) const;

    // Fades what was observed towards the prior, so that without trips the shares
    // stay where they are. keep in (0, 1].
    void fade(double keep);
    void observe(std::size_t mode, Distance distance);

private:
    std::vector<double> m_km;   // by mode
    std::vector<double> m_prior_km;
};

// What the road climbs as a rule: heights over kilometres of the trips that tell both, fading.
class UsualClimb {
public:
    bool isKnown() const { return m_road_km > 0; }
    double perKm() const { return isKnown() ? m_climb_km / m_road_km : 0; }
    void fade(double keep);                                  // keep in (0, 1]
    void observe(Distance climbed, Distance road);           // road >= 0

private:
    double m_climb_km = 0, m_road_km = 0;
};

} // namespace undermark
