// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/normal_law.h"

#include <boost/math/special_functions/erf.hpp>
#include <cassert>
#include <cmath>
#include <numbers>

namespace undermark {

double normalDensity(double z)
{
    return std::exp(-0.5 * z * z) / std::sqrt(2.0 * std::numbers::pi);
}

double normalCdf(double z)
{
    return normalTail(-z);
}

double normalTail(double z)
{
    return 0.5 * std::erfc(z / std::numbers::sqrt2);
}

double normalQuantile(double p)
{
    assert(p > 0.0 && p < 1.0);
    using Double = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
    return -std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * p, Double());
}

double normalHazard(double z)
{
    if (z < 25.0)
        return normalDensity(z) / normalTail(z);
    const double w = 1.0 / (z * z);
    return z / (1.0 - w * (1.0 - w * (3.0 - 15.0 * w)));
}

} // namespace undermark
