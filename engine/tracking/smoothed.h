// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/base/quantity.h"

#include <algorithm>
#include <cmath>

namespace undermark {

// A level without its slosh: the mean over about its memory, to begin with of all there was.
class Smoothed {
public:
    explicit Smoothed(Seconds memory) : m_memoryS(memory.count()) {}

    // `seconds` since the one before.
    void add(double litres, double seconds)
    {
        const double step = m_count == 0.0 ? 0.0 : std::clamp(seconds, 0.0, m_memoryS);
        const double gain = std::max(1.0 - std::exp(-step / m_memoryS), 1.0 / ++m_count);
        m_litres += gain * (litres - m_litres);
        m_overS += step;
    }
    double litres() const { return m_litres; }
    // All of its memory is filled.
    bool settled() const { return m_overS >= m_memoryS; }

private:
    double m_memoryS;
    double m_count = 0.0, m_overS = 0.0, m_litres = 0.0;
};

} // namespace undermark
