// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tracker's judgement: refuels, faults and the way back from them.
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
    m_stillSet = false;
    m_calm = m_calmDown = here();
}

// Holds readings back that lie far off, until it is clear what they are.
bool LevelTracker::takeJump(const BlockSummary& block, Innovation seen, double noiseL2,
                            const Interval& past)
{
    const double size = std::abs(seen.residualL);
    if (seen.nis() < kGate * kGate || size < kRefuelJump * m_rangeL) {
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
    settleJump(block, noiseL2);
    return true;
}

void LevelTracker::settleJump(const BlockSummary& block, double noiseL2)
{
    const double mean = m_jump.sumL / m_jump.steady;
    const double offset = mean - m_filter.expectedReadingL();
    const bool lowEnd = block.kind == BlockKind::atMost
        || block.levelL < m_settings.lowest.litres() + 0.01 * m_rangeL;
    const bool highEnd = block.kind == BlockKind::atLeast
        || block.levelL > m_settings.highest.litres() - 0.01 * m_rangeL;
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
    } else if (std::abs(offset) > 0.25 * m_rangeL && m_jump.steady >= kEndBlocks
               && ((m_jump.sign < 0 && lowEnd) || (m_jump.sign > 0 && highEnd))) {
        const bool signalHigh = lowEnd != m_settings.signalRises;
        raise(signalHigh ? FaultCode::open : FaultCode::shortCircuit, m_jump.before, false, offset);
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

double LevelTracker::burntSince(const Checkpoint& past) const
{
    // A stuck reading teaches a guessed source that nothing is burnt.
    const double scale = past.filter.scale();
    return (m_use.guessed() ? std::max(1.0, scale) : scale) * (m_usedL - past.usedL);
}

void LevelTracker::watchStillness(const BlockSummary& block)
{
    const double band = kStillBand * m_rangeL;
    const bool upper = block.kind == BlockKind::atLeast;
    const bool moves = !m_stillSet || block.kind == BlockKind::atMost   // lower than that anyway
        || std::abs(block.levelL - m_stillL) > band;
    if (moves) {
        m_stillSet = true;
        m_stillL = block.levelL;
        m_still = here();
        // On the upper stop the tank may truly be above, up to full.
        const double above = m_filter.expectedReadingL() - block.levelL
            + 2.0 * std::sqrt(m_filter.readingVarianceL2());
        m_stillAllowedL = upper ? std::clamp(above, 0.0, m_settings.highest.litres() - block.levelL)
                                : 0.0;
        return;
    }
    const double sureScale = std::max(0.4, 1.0 - std::sqrt(m_still.filter.scaleVariance())
                                                / std::max(0.1, m_still.filter.scale()));
    const double flat = upper ? m_stillAllowedL : std::max(m_stillAllowedL, block.flatL);
    const double needed = std::max(kStillBurnt * m_rangeL, flat + band) + band;
    if (sureScale * burntSince(m_still) > needed)
        raise(upper ? FaultCode::stuckAtStop : FaultCode::stuck, m_still, true, 0.0);
}

void LevelTracker::watchSums(Innovation seen)
{
    m_thinned += seen.residualL / std::sqrt(seen.varianceL2 * std::clamp(m_nisRecent, 1.0, 3.0));
    if (++m_thinnedBlocks < kThin)
        return;
    // The mean of kThin innovations, standardised as if independent.
    const double value = m_thinned / std::sqrt(double(kThin));
    m_thinned = 0.0;
    m_thinnedBlocks = 0;
    const int alarm = m_cusum.add(value);
    if (m_cusum.up() == 0.0)
        m_calm = here();
    if (m_cusum.down() == 0.0)
        m_calmDown = here();
    if (alarm == 0)
        return;
    // Certain is not yet much: a shift of some decilitres is no fault.
    const Checkpoint onset = alarm > 0 ? m_calm : m_calmDown;
    FuelFilter counted = onset.filter;
    const double usedL = m_usedL - onset.usedL;
    counted.predict(usedL, {.levelL2 = kUseL2PerL * counted.scale() * usedL});
    const double apart = m_filter.levelL() - counted.levelL();
    const double spread = 3.0 * std::sqrt(counted.levelVarianceL2() + 2.0 * m_curveSdL * m_curveSdL);
    if (alarm * apart < std::max(kDrift * m_rangeL, spread)) {
        m_cusum.hold();
        return;
    }
    m_cusum.reset();
    m_calm = m_calmDown = here();
    if (!m_use.guessed() && alarm > 0) {
        raise(FaultCode::drift, onset, true, apart);
        return;
    }
    // Falling faster than thought: the lower reading is the safe one.
    m_filter.setScale({Fraction::fromRatio(m_filter.scale()),
                       Fraction::fromRatio(m_use.scaleSd())});
    if (!m_use.guessed())
        note(FaultCode::drift, onset.timeS);
}

void LevelTracker::watchContact(const BlockSummary& block)
{
    if (block.outlierShare > kContactShare) {
        ++m_contactBlocks;
        m_blocksSinceContact = 0;
    } else if (++m_blocksSinceContact > kContactMemory) {
        if (m_contactSaid)
            say({.kind = TrackerEventKind::faultCleared, .time = Seconds(m_timeS),
                 .onset = Seconds(m_timeS), .litres = {}, .distance = {},
                 .fault = FaultCode::intermittent});
        m_contactBlocks = 0;
        m_contactSaid = false;
    }
    if (m_contactBlocks >= kContactBlocks && !m_contactSaid) {
        m_contactSaid = true;
        note(FaultCode::intermittent, block.startS);
    }
}

void LevelTracker::watchScale()
{
    if (m_scaleSaid || m_use.guessed() || m_usedL < kScaleBurnt * m_rangeL)
        return;
    const double k = m_filter.scale();
    const double sd = std::sqrt(std::max(0.0, m_filter.scaleVariance()));
    if (k - sd > kImplausible || k + sd < 1.0 / kImplausible) {
        m_scaleSaid = true;
        note(FaultCode::sourceScale, m_past.startS);
    }
}

void LevelTracker::takeMissing(const Interval& past)
{
    if (m_missingS == 0.0)
        m_missingOnsetS = past.startS;
    m_missingS += past.seconds;
    if (m_started)
        m_state.mode = TrackerMode::consumptionOnly;
    if (m_missingS >= kDropoutS && !m_dropoutSaid) {
        m_dropoutSaid = true;
        note(FaultCode::dropout, m_missingOnsetS);
    }
}

void LevelTracker::takeOutOfRange(const BlockSummary& block)
{
    if (m_outOfRange++ == 0)
        m_outOfRangeOnsetS = block.startS;
    if (m_started)
        m_state.mode = TrackerMode::consumptionOnly;
    m_stillSet = false;
    m_fault.agreeing = 0;
    if (m_outOfRange < kEndBlocks || m_fault.active)
        return;
    Checkpoint onset = here();
    onset.timeS = m_outOfRangeOnsetS;
    raise(block.kind == BlockKind::tooHigh ? FaultCode::open : FaultCode::shortCircuit, onset,
          false, 0.0);
}

// The reading is not used from here on. `rollBack`: it has misled the level
// since the onset, so the level is counted anew from there, if that is lower.
void LevelTracker::raise(FaultCode code, const Checkpoint& onset, bool rollBack, double offsetL)
{
    m_fault = Fault{};
    m_fault.active = true;
    m_fault.code = code;
    m_fault.onset = onset;
    m_fault.offsetL = offsetL;
    m_fault.levelL = m_stillL;
    if (rollBack) {
        FuelFilter counted = onset.filter;
        FuelFilter::Noise noise;
        const double usedL = m_usedL - onset.usedL;
        noise.levelL2 = kUseL2PerL * counted.scale() * usedL;
        counted.predict(usedL, noise);
        if (counted.levelL() < m_filter.levelL())
            m_filter = counted;
    }
    if (offsetL < 0.0)   // it may have been fuel that was lost
        m_filter.widen(0.25 * offsetL * offsetL);
    m_state.mode = TrackerMode::consumptionOnly;
    m_jump = Jump{};
    m_stand = Stand{};
    m_cusum.reset();
    const double litres = m_filter.scale() * (m_usedL - onset.usedL);
    say({.kind = TrackerEventKind::fault, .time = Seconds(m_timeS), .onset = Seconds(onset.timeS),
         .litres = {Volume::fromLitres(litres), {}},
         .distance = Distance::fromKm(m_km - onset.km), .fault = code});
}

// A fault that leaves the reading in use.
void LevelTracker::note(FaultCode code, double onsetS)
{
    say({.kind = TrackerEventKind::fault, .time = Seconds(m_timeS), .onset = Seconds(onsetS),
         .litres = {}, .distance = {}, .fault = code});
}

void LevelTracker::clearFault()
{
    say({.kind = TrackerEventKind::faultCleared, .time = Seconds(m_timeS),
         .onset = Seconds(m_fault.onset.timeS), .litres = {},
         .distance = Distance::fromKm(m_km - m_fault.onset.km), .fault = m_fault.code});
    m_fault = Fault{};
    m_stillSet = false;
    m_calm = m_calmDown = here();
}

// The sender is taken back once it lives and agrees with the count.
void LevelTracker::recover(const BlockSummary& block, double noiseL2)
{
    m_state.mode = TrackerMode::consumptionOnly;
    const bool wasStill = m_fault.code == FaultCode::stuck || m_fault.code == FaultCode::stuckAtStop;
    const bool moved = std::abs(block.levelL - m_fault.levelL) > 2.0 * kStillBand * m_rangeL
        || (block.kind == BlockKind::exact && block.sdL > kAlive * m_rangeL);
    const Innovation seen = compare(block, noiseL2);
    // A sender that claims more than was counted must be close before it is believed.
    const bool agrees = seen.nis() < 6.0 && seen.residualL < kReturnAbove * m_rangeL
        && (m_fault.offsetL == 0.0 || std::abs(seen.residualL) < kOffsetGone * std::abs(m_fault.offsetL));
    m_fault.agreeing = agrees && (!wasStill || moved) ? m_fault.agreeing + 1 : 0;
    if (m_fault.agreeing >= kAgreeing)
        clearFault();
}

void LevelTracker::tellFill(Estimate<Volume> litres)
{
    if (m_timeS - m_lastRefuelS < kLongGapS)
        m_filter.add(-m_lastRefuelL, 0.0);
    const double sd = litres.sd.litres();
    m_filter.add(litres.mean.litres(), sd * sd);
    m_lastRefuelS = -1e9;
    m_state.level.mean = Volume::fromLitres(std::max(0.0, m_filter.levelL()));
    m_stillSet = false;
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
    m_stillSet = false;
    m_jump = Jump{};
    m_stand = Stand{};   // the rise is accounted for
    m_calm = m_calmDown = here();
    show();
}

} // namespace undermark
