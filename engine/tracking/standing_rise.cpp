// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/standing_rise.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kRise = 0.04;          // of the range
constexpr double kRiseSteady = 0.008;   // of the range, from block to block
constexpr double kRiseSd = 0.03;        // of the rise
constexpr double kRestSd = 0.006;       // of the range: twice the slosh at rest

} // namespace

StandingRise::Seen StandingRise::add(const BlockSummary& block, const BlockDrive& past)
{
    if (past.moved) {
        forget();
        return {};
    }
    const double step = block.levelL - m_halt.lastL;
    const bool first = !m_halt.begun;
    m_halt.begun = true;
    m_halt.lastL = block.levelL;
    if (first)
        return {};
    if (std::abs(step) > kRiseSteady * m_rangeL) {
        if (step < 0.0 || !m_halt.steady) {   // it falls, or settles
            m_halt.steady = m_halt.rising = false;
            return {};
        }
        if (!m_halt.rising) {
            m_halt.onsetS = past.startS;
            m_halt.fastestL = 0.0;
        }
        m_halt.fastestL = std::max(m_halt.fastestL, step);
        m_halt.rising = true;
        return {.verdict = Rise::flowing};
    }
    const double rise = block.levelL - m_halt.steadyL;
    const bool risen = m_halt.rising && rise >= kRise * m_rangeL;
    m_halt.steady = true;
    m_halt.rising = false;
    m_halt.steadyL = block.levelL;
    if (!risen)
        return {};
    const double sd = std::hypot(kRiseSd * rise, kRestSd * m_rangeL, block.curveSdL);
    return {Rise::risen, rise, sd, m_halt.onsetS, m_halt.fastestL};
}

} // namespace undermark
