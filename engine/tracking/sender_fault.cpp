// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/sender_fault.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

// Taking the sender back. A reading off by anything lies within 80 % of the range.
constexpr double kAnyOffset = 0.8;
constexpr double kLikelyRight = 1.0;     // of a wire that healed, a float that came loose
constexpr double kSureRight = 25.0;      // of a reading that had been shifted
constexpr double kAgreeingNis = 6.0;
constexpr double kStepBack = 0.3;        // of the shift that may be left or too much
constexpr double kLoose = 0.016;         // of the range: twice what still counts as standing
constexpr double kCreep = 0.12;          // of the range, from its end
constexpr double kReturnAbove = 0.05;    // of the range
constexpr int kAgreeing = 4;             // blocks until the sender is taken back

// How much more likely the reading is by a sender that is right than by one that
// is off by anything: the innovation's density over a uniform one (Bayes factor).
double rightOverWrong(const Innovation& seen, double rangeL)
{
    const double sd = std::sqrt(seen.varianceL2);
    return kAnyOffset * rangeL * std::exp(-0.5 * seen.nis())
        / (sd * std::sqrt(2.0 * std::numbers::pi));
}

} // namespace

void SenderFault::raise(FaultCode code, const Moment& onset, double offsetL, double readingL)
{
    m_fault = Fault{};
    m_fault.active = true;
    m_fault.code = code;
    m_fault.onset = onset;
    m_fault.offsetL = offsetL;
    m_fault.readingL = readingL;
}

void SenderFault::outside()
{
    m_fault.agreeing = 0;
    m_fault.returned = false;
}

// Over some blocks, because a damped gauge takes its time.
bool SenderFault::steppedBack(const BlockSummary& block, const Moment& now)
{
    Fault::TrailPoint& then = m_fault.trail[m_fault.seen++ % m_fault.trail.size()];
    const bool known = m_fault.seen > m_fault.trail.size();
    const double burnt = now.filter.scale() * (now.usedL - then.usedL);
    const double step = block.levelL - then.levelL + burnt;
    then = {block.levelL, now.usedL};
    return known && std::abs(step + m_fault.offsetL) < kStepBack * std::abs(m_fault.offsetL);
}

// A wire that heals shows the level at once; a reading that creeps in over an
// end of the range, where it had left it, was shifted.
void SenderFault::noteReturn(const BlockSummary& block)
{
    const bool wire = m_fault.code == FaultCode::open || m_fault.code == FaultCode::shortCircuit;
    if (!wire || m_fault.returned)
        return;
    m_fault.returned = true;
    const double nearest = std::min(block.levelL - m_lowestL, m_highestL - block.levelL);
    m_fault.crept = nearest < kCreep * (m_highestL - m_lowestL);
}

bool SenderFault::agrees(const BlockSummary& block, const Innovation& seen, const Moment& now)
{
    const double range = m_highestL - m_lowestL;
    noteReturn(block);
    const bool stuck = m_fault.code == FaultCode::stuck || m_fault.code == FaultCode::stuckAtStop;
    if (stuck && std::abs(block.levelL - m_fault.readingL) > kLoose * range)
        m_fault.moved = true;
    if (m_fault.offsetL != 0.0 && steppedBack(block, now))
        m_fault.moved = true;
    const bool shifted = m_fault.crept || (m_fault.offsetL != 0.0 && !m_fault.moved);
    // A sender that claims more than was counted must be close before it is believed.
    const bool agrees = seen.nis() < kAgreeingNis && seen.residualL < kReturnAbove * range
        && rightOverWrong(seen, range) > (shifted ? kSureRight : kLikelyRight);
    m_fault.agreeing = agrees && (!stuck || m_fault.moved) ? m_fault.agreeing + 1 : 0;
    return m_fault.agreeing >= kAgreeing;
}

} // namespace undermark
