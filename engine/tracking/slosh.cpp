// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/slosh.h"

#include <cmath>

namespace undermark {

double blockMeanVariance(Seconds block, Seconds correlation)
{
    const double x = block.count() / correlation.count();
    if (!(x > 1e-3))
        return 1.0;   // the limit; the formula loses its digits there
    return 2.0 / x * (1.0 + std::expm1(-x) / x);
}

} // namespace undermark
