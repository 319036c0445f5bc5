// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/tracking/moment.h"

#include <algorithm>
#include <cmath>

namespace undermark {

// A source of distance or fuel flow that counts implausibly: the level says that it
// is 2.5 times off, beyond its spread, after 8 % of the range was counted.
class SourceWatch {
public:
    explicit SourceWatch(double rangeL) : m_rangeL(rangeL) {}

    // True once, when it is found.
    bool add(const Moment& now)
    {
        if (m_said || now.usedL < kScaleBurnt * m_rangeL)
            return false;
        const double k = now.filter.scale();
        const double sd = std::sqrt(std::max(0.0, now.filter.scaleVariance()));
        m_said = k - sd > kImplausible || k + sd < 1.0 / kImplausible;
        return m_said;
    }

private:
    static constexpr double kImplausible = 2.5;
    static constexpr double kScaleBurnt = 0.08;
    double m_rangeL;
    bool m_said = false;
};

} // namespace undermark
