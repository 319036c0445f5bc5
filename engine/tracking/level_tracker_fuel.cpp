// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fuel that goes in, and readings that jump: what was it?
#include "engine/tracking/level_tracker.h"

#include "engine/tracking/tracker_tuning.h"

#include <algorithm>
#include <cmath>

namespace undermark {

using namespace tuning;

// A rise within one halt: the car has not moved, so tilt and slow errors are
// the same before and after, and a small fill shows that a jump would hide.
bool LevelTracker::takeStanding(const BlockSummary& block, const Interval& past)
{
    if (past.moved) {
        m_stand = Stand{};
        return false;
    }
    const double last = m_stand.lastL;
    m_stand.lastL = block.levelL;
    if (++m_stand.blocks <= 2) {   // a damped gauge is still settling from the drive
        m_stand.firstL = block.levelL;
        return false;
    }
    const double rise = block.levelL - m_stand.firstL;
    if (rise < kStandingRise * m_rangeL) {
        m_stand.risen = 0;
        return false;
    }
    if (m_stand.risen++ == 0)
        m_stand.onsetS = past.startS;
    const bool steady = std::abs(block.levelL - last) < 0.2 * kStandingRise * m_rangeL;
    if (m_stand.risen < 2 || !steady)
        return true;   // still flowing: wait
    const double sd = std::hypot(0.03 * rise, 2.0 * kLeastStanding * m_rangeL, m_curveSdL);
    const FuelFilter before = m_filter;
    m_filter.add(rise, sd * sd);
    accept(rise, sd, m_stand.onsetS, before);
    m_stand = Stand{};
    m_stand.blocks = 2;
    m_stand.firstL = m_stand.lastL = block.levelL;
    return true;
}

void LevelTracker::accept(double litres, double sdL, double onsetS, const FuelFilter& before)
{
    m_beforeRefuel = {before, onsetS, m_usedL, m_km};
    say({.kind = TrackerEventKind::refuel, .time = Seconds(m_timeS), .onset = Seconds(onsetS),
         .litres = {Volume::fromLitres(litres), Volume::fromLitres(sdL)}, .distance = {}});
    m_lastRefuelS = m_timeS;
    m_lastRefuelL = litres;
    m_state.level.mean = Volume::fromLitres(std::max(0.0, m_filter.levelL()));
    m_jump = Jump{};
    m_above = 0;
    m_cusum.reset();
    m_still = {};
    m_calm = m_calmDown = here();
}

// Holds readings back that lie far off, until it is clear what they are.
bool LevelTracker::takeJump(const BlockSummary& block, Innovation seen, double noiseL2,
                            const Interval& past)
{
    const double size = std::abs(seen.residualL);
    if (seen.nis() < (seen.residualL > 0.0 ? kGateUp * kGateUp : kGate * kGate) || size < kRefuelJump * m_rangeL) {
        m_jump = Jump{};
        return false;
    }
    const int sign = seen.residualL > 0.0 ? 1 : -1;
    if (m_jump.sign != sign) {
        m_jump = Jump{};
        m_jump.sign = sign;
        m_jump.afterGap = m_afterGap;
        m_jump.mayBeFuel = m_afterGap || !past.motionKnown || !past.moved || m_timeS - m_lastStandS < kFuelStopS;
        m_jump.before = here();
        m_jump.before.timeS = past.startS;
    }
    ++m_jump.blocks;
    const double step = std::abs(block.levelL - m_jump.lastL);
    m_jump.steady = m_jump.steady > 0 && step > 4.0 * std::sqrt(noiseL2) ? 1 : m_jump.steady + 1;
    m_jump.sumL = m_jump.steady == 1 ? block.levelL : m_jump.sumL + block.levelL;
    m_jump.lastL = block.levelL;
    settleJump(block, noiseL2, past.moved);
    return true;
}

bool LevelTracker::atEnd(const BlockSummary& block, bool upper) const
{
    const double near = 0.01 * m_rangeL;
    return upper ? block.kind == BlockKind::atLeast
                       || block.levelL > m_settings.highest.litres() - near
                 : block.kind == BlockKind::atMost
                       || block.levelL < m_settings.lowest.litres() + near;
}

void LevelTracker::settleJump(const BlockSummary& block, double noiseL2, bool moved)
{
    const double mean = m_jump.sumL / m_jump.steady;
    const double offset = mean - m_filter.expectedReadingL();
    const bool wire = std::abs(offset) > 0.25 * m_rangeL && atEnd(block, m_jump.sign > 0);
    if (m_jump.sign > 0 && m_jump.mayBeFuel) {
        if (m_jump.steady < kRefuelBlocks)
            return;
        const FuelFilter before = m_filter;
        const double spread = std::sqrt(std::max(0.0, before.levelVarianceL2()) + noiseL2);
        const double onset = m_jump.before.timeS;
        startFrom(block, noiseL2);
        accept(m_filter.levelL() - before.levelL(), spread, onset, before);
    } else if (m_jump.sign < 0 && m_jump.afterGap && m_jump.steady >= kRefuelBlocks) {
        // Someone drove, or drained, while nobody watched: the reading counts.
        const double before = m_filter.levelL();
        startFrom(block, noiseL2);
        say({.kind = TrackerEventKind::correction, .time = Seconds(m_timeS),
             .onset = Seconds(m_timeS),
             .litres = {Volume::fromLitres(m_filter.levelL() - before), Volume::fromLitres(
                            std::sqrt(m_filter.levelVarianceL2()))},
             .distance = {}});
    } else if (wire) {
        const bool signalHigh = (m_jump.sign > 0) == m_settings.signalRises;
        if (m_jump.steady >= (moved ? kEndBlocks : kEndBlocksStanding))
            raise(signalHigh ? FaultCode::open : FaultCode::shortCircuit, m_jump.before, false,
                  offset);
    } else if (m_jump.blocks >= kFaultBlocks && std::abs(offset) > kFaultJump * m_rangeL) {
        if (m_use.guessed() && m_jump.sign < 0) {
            // The count is a guess: tell, and believe the lower of the two.
            note(FaultCode::offsetJump, m_jump.before.timeS);
            startFrom(block, noiseL2);
            return;
        }
        raise(FaultCode::offsetJump, m_jump.before, false, offset);
    }
}

void LevelTracker::tellFill(Estimate<Volume> litres)
{
    if (m_timeS - m_lastRefuelS < kLongGapS)
        m_filter.add(-m_lastRefuelL, 0.0);
    const double sd = litres.sd.litres();
    m_filter.add(litres.mean.litres(), sd * sd);
    m_lastRefuelS = -1e9;
    m_state.level.mean = Volume::fromLitres(std::max(0.0, m_filter.levelL()));
    m_still = {};
    m_jump = Jump{};
    m_stand = Stand{};   // the rise is accounted for
    m_calm = m_calmDown = here();
    show();
}

std::span<const TrackerEvent> LevelTracker::denyFill()
{
    m_eventCount = 0;
    if (m_timeS - m_lastRefuelS < kLongGapS) {
        m_lastRefuelS = -1e9;
        raise(FaultCode::offsetJump, m_beforeRefuel, true, m_lastRefuelL);
        show();
    }
    return {m_events.data(), m_eventCount};
}

void LevelTracker::tellFull(Estimate<Volume> full)
{
    m_filter.setLevel(full);
    m_started = true;
    m_lastRefuelS = -1e9;
    m_state.level.mean = full.mean;
    m_still = {};
    m_jump = Jump{};
    m_stand = Stand{};   // the rise is accounted for
    m_calm = m_calmDown = here();
    show();
}

} // namespace undermark
