// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/reading_jump.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace undermark {

namespace {

// Held back beyond so many sd and so much of the range. A fault needs more of it.
constexpr double kGateNis = 16.0;          // four sd, squared
constexpr double kGateUp = 3.3;            // more than was thought needs less to be doubted
constexpr double kJump = 0.04;
constexpr double kFaultJump = 0.06;
constexpr double kWireJump = 0.25;
constexpr double kWireEnd = 0.01;          // of the range, from its end
constexpr int kRefuelBlocks = 3;
constexpr int kFaultBlocks = 5;
constexpr int kEndBlocks = 2;              // a jump to an end of the range
constexpr int kEndBlocksStanding = 6;      // the key may be off: no hurry, little is burnt
constexpr double kSteadySds = 4.0;         // from block to block

} // namespace

ReadingJump::ReadingJump(const TrackerSettings& settings)
    : m_lowestL(settings.lowest.litres()), m_highestL(settings.highest.litres()),
      m_rangeL((settings.highest - settings.lowest).litres()),
      m_signalRises(settings.signalRises)
{
}

ReadingJump::Verdict ReadingJump::add(const BlockSummary& block, const Innovation& seen,
                                      double noiseL2, const BlockDrive& past, const Moment& now,
                                      const Chance& chance)
{
    const double higher = seen.residualL - std::exchange(m_residualL, seen.residualL);
    const double gate = seen.residualL > 0.0 ? kGateUp * kGateUp : kGateNis;
    if (seen.nis() < gate || std::abs(seen.residualL) < kJump * m_rangeL) {
        forget();
        return Verdict::none;
    }
    const int sign = seen.residualL > 0.0 ? 1 : -1;
    if (m_held.sign != sign) {
        m_held = {.sign = sign, .chance = chance, .before = now};
        m_held.before.timeS = past.startS;
    }
    ++m_held.blocks;
    m_held.fastestL = std::max(m_held.fastestL, higher);
    const double step = std::abs(block.levelL - m_held.lastL);
    const bool goesOn = m_held.steady > 0 && step <= kSteadySds * std::sqrt(noiseL2);
    m_held.steady = goesOn ? m_held.steady + 1 : 1;
    m_held.sumL = goesOn ? m_held.sumL + block.levelL : block.levelL;
    m_held.lastL = block.levelL;
    m_offsetL = m_held.sumL / m_held.steady - now.filter.expectedReadingL();
    return verdict(block, past.moved);
}

ReadingJump::Verdict ReadingJump::verdict(const BlockSummary& block, bool moved) const
{
    const bool up = m_held.sign > 0;
    if (up && m_held.chance.ofFuel)
        return m_held.steady < kRefuelBlocks ? Verdict::waiting : Verdict::fuel;
    if (!up && m_held.chance.afterGap && m_held.steady >= kRefuelBlocks)
        return Verdict::taken;   // someone drove, or drained
    if (std::abs(m_offsetL) > kWireJump * m_rangeL && atEnd(block)) {
        if (m_held.steady < (moved ? kEndBlocks : kEndBlocksStanding))
            return Verdict::waiting;
        return up == m_signalRises ? Verdict::open : Verdict::shortCircuit;
    }
    const bool stays = m_held.blocks >= kFaultBlocks
        && std::abs(m_offsetL) > kFaultJump * m_rangeL;
    return stays ? Verdict::shifted : Verdict::waiting;
}

bool ReadingJump::atEnd(const BlockSummary& block) const
{
    const double near = kWireEnd * m_rangeL;
    return m_held.sign > 0
        ? block.kind == BlockKind::atLeast || block.levelL > m_highestL - near
        : block.kind == BlockKind::atMost || block.levelL < m_lowestL + near;
}

} // namespace undermark
