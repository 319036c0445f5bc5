// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/cusum.h"

#include <algorithm>
#include <cmath>

namespace undermark {

int Cusum::add(double value)
{
    m_up = std::max(0.0, m_up + value - m_allowance);
    m_down = std::max(0.0, m_down - value - m_allowance);
    if (m_up > m_threshold)
        return 1;
    return m_down > m_threshold ? -1 : 0;
}

void Cusum::hold()
{
    m_up = std::min(m_up, m_threshold);
    m_down = std::min(m_down, m_threshold);
}

static double oneSidedRunLength(double drift, double b)
{
    const double x = drift * b;
    if (std::abs(x) < 1e-4)
        return b * b;   // the limit at no drift
    return (std::exp(-2.0 * x) + 2.0 * x - 1.0) / (2.0 * drift * drift);
}

double cusumRunLength(double allowance, double threshold, double shift)
{
    const double b = threshold + 1.166;
    return 1.0
        / (1.0 / oneSidedRunLength(shift - allowance, b)
           + 1.0 / oneSidedRunLength(-shift - allowance, b));
}

double cusumThreshold(double allowance, double runLength)
{
    double low = 0.0;
    double high = 100.0;
    for (int i = 0; i < 60; ++i) {   // the run length grows with the threshold
        const double middle = 0.5 * (low + high);
        (cusumRunLength(allowance, middle, 0.0) < runLength ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

} // namespace undermark
