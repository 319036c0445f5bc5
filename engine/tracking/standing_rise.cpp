// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/standing_rise.h"

#include <cmath>

namespace undermark {

namespace {

constexpr int kSettlingBlocks = 2;
constexpr double kRise = 0.04;          // of the range
constexpr double kRiseSteady = 0.2;     // of kRise, from block to block
constexpr double kRiseSd = 0.03;        // of the rise
constexpr double kRestSd = 0.006;       // of the range: twice the slosh at rest

} // namespace

StandingRise::Seen StandingRise::add(const BlockSummary& block, const BlockDrive& past)
{
    if (past.moved) {
        forget();
        return {};
    }
    const double last = m_halt.lastL;
    m_halt.lastL = block.levelL;
    if (++m_halt.blocks <= kSettlingBlocks) {
        m_halt.firstL = block.levelL;
        return {};
    }
    const double rise = block.levelL - m_halt.firstL;
    if (rise < kRise * m_rangeL) {
        m_halt.risen = 0;
        return {};
    }
    if (m_halt.risen++ == 0)
        m_halt.onsetS = past.startS;
    const bool steady = std::abs(block.levelL - last) < kRiseSteady * kRise * m_rangeL;
    if (m_halt.risen < 2 || !steady)
        return {.verdict = Verdict::flowing};
    const double sd = std::hypot(kRiseSd * rise, kRestSd * m_rangeL, block.curveSdL);
    const Seen seen{Verdict::filled, rise, sd, m_halt.onsetS};
    m_halt = {.blocks = kSettlingBlocks, .firstL = block.levelL, .lastL = block.levelL};
    return seen;
}

} // namespace undermark
