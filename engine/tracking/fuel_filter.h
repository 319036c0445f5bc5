// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Kalman filter under the tracker: litres in the tank V, the scale k of
// the fuel-flow source, and b, a slow error of the reading (tilt on a hill,
// hysteresis) that block means cannot average away.
//
//     V' = V - k u      k' = k      b' = keep * b      z = V + b + noise
//
// With biasSd 0 it is the two-state filter [V, k]; with the scale's sd 0 as
// well it is the scalar one. Both are tested against outside values.
// Cost: fixed, no allocation. Numbers are litres, litres squared and ratios.
#pragma once

#include "engine/base/quantity.h"

namespace undermark {

struct Innovation {
    double residualL;    // reading minus what was expected
    double varianceL2;   // of that difference, noise included
    double nis() const { return residualL * residualL / varianceL2; }
};

class FuelFilter {
public:
    struct Noise {
        double levelL2 = 0.0;     // added to the variance of V
        double scale2 = 0.0;      // added to the variance of k
        double biasKeep = 1.0;    // share of b that is left, 0 to 1
        double bias2 = 0.0;       // added to the variance of b
    };

    FuelFilter() = default;
    FuelFilter(Estimate<Volume> level, Estimate<Fraction> scale);

    // Burns `usedL` litres by the source's own count.
    void predict(double usedL, const Noise& noise);

    // What a reading of `levelL` with noise variance `noiseL2` would say.
    Innovation innovation(double levelL, double noiseL2) const;

    // Takes the reading in.
    Innovation correct(double levelL, double noiseL2);

    // Draws the level towards a bound that it broke, by the gain of a reading of
    // that noise: scale, slow error and spread stay as they are.
    void pull(double boundL, double noiseL2);

    // Starts the level anew from one reading that contains the slow error.
    void restartLevel(double levelL, double noiseL2, double bias2);
    // Sets the level outright, for instance to the curve's full.
    void setLevel(Estimate<Volume> level);
    void setScale(Estimate<Fraction> scale);
    // Adds fuel whose amount is known to `variance2`; the slow error stays.
    void add(double litres, double variance2);
    // Spreads the level without moving it.
    void widen(double variance2) { m_vv += variance2; }

    double levelL() const { return m_v; }
    double scale() const { return m_k; }
    double expectedReadingL() const { return m_v + m_b; }
    double levelVarianceL2() const { return m_vv; }
    double scaleVariance() const { return m_kk; }
    double levelScaleCovariance() const { return m_vk; }
    double readingVarianceL2() const { return m_vv + 2.0 * m_vb + m_bb; }

private:
    double m_v = 0.0, m_k = 1.0, m_b = 0.0;
    double m_vv = 0.0, m_vk = 0.0, m_vb = 0.0, m_kk = 0.0, m_kb = 0.0, m_bb = 0.0;
};

} // namespace undermark
