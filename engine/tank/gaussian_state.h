// SPDX-License-Identifier: GPL-3.0-or-later
//
// Conditioning of a small joint Gaussian on one observation h.x + noise. Mean
// and row-major covariance are changed in place; they stay in plain spans so
// that Eigen stays in the .cpp file.
#pragma once

#include <span>

namespace undermark {

struct Projection {
    double mean;
    double variance;   // >= 0
};

// Distribution of h.x.
Projection project(std::span<const double> mean, std::span<const double> covariance,
                   std::span<const double> h);

// h.x + N(0, noiseVariance) was seen as `value`: Kalman update in Joseph form,
// which keeps the covariance symmetric and positive semidefinite. Returns the
// innovation in standard deviations. Without any variance nothing is learnt.
double conditionOn(std::span<double> mean, std::span<double> covariance,
                   std::span<const double> h, double value, double noiseVariance);

// h.x + N(0, noiseVariance) is above `limit`: likelihood Phi((h.x - limit)/s),
// exact first two moments (Rasmussen and Williams 2006, eq. 3.85 to 3.87); s = 0
// is the hard cut. Returns min(0, expected margin in standard deviations).
double conditionOnAbove(std::span<double> mean, std::span<double> covariance,
                        std::span<const double> h, double limit, double noiseVariance);

} // namespace undermark
