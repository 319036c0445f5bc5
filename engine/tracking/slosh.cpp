// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/slosh.h"

#include <cmath>
#include <numbers>

namespace undermark {

double blockMeanVariance(Seconds block, Seconds correlation)
{
    const double x = block.count() / correlation.count();
    if (!(x > 1e-3))
        return 1.0;   // the limit; the formula loses its digits there
    return 2.0 / x * (1.0 + std::expm1(-x) / x);
}

double sloshFrequencyHz(double lengthM, double depthM)
{
    constexpr double kGravity = 9.80665;   // m/s^2, standard
    const double k = std::numbers::pi / lengthM;
    return std::sqrt(kGravity * k * std::tanh(k * depthM)) / (2.0 * std::numbers::pi);
}

} // namespace undermark
