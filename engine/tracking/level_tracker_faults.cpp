// SPDX-License-Identifier: GPL-3.0-or-later
//
// Faults: from the first missing reading to the sender that is taken back.
#include "engine/tracking/level_tracker.h"

#include "engine/tracking/tracker_tuning.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

using namespace tuning;

void LevelTracker::takeMissing(const Interval& past)
{
    if (m_missingS == 0.0)
        m_missingOnsetS = past.startS;
    m_missingS += past.seconds;
    if (m_started)
        m_state.mode = TrackerMode::consumptionOnly;
    if (m_missingS >= kDropoutS && !m_dropoutSaid) {
        m_dropoutSaid = true;
        countOn();
        note(FaultCode::dropout, m_missingOnsetS);
    }
}

void LevelTracker::takeOutOfRange(const BlockSummary& block)
{
    if (m_outOfRange++ == 0)
        m_outOfRangeOnsetS = block.startS;
    if (m_started)
        m_state.mode = TrackerMode::consumptionOnly;
    m_still = {};
    m_fault.agreeing = 0;
    m_fault.returned = false;
    if (m_outOfRange < kEndBlocks || m_fault.active)
        return;
    Checkpoint onset = here();
    onset.timeS = m_outOfRangeOnsetS;
    raise(block.kind == BlockKind::tooHigh ? FaultCode::open : FaultCode::shortCircuit, onset,
          false, 0.0);
}

FuelFilter LevelTracker::countedFrom(const Checkpoint& onset) const
{
    FuelFilter counted = onset.filter;
    if (m_use.timeAlone())
        counted.setScale(roadAhead(counted.scale()));
    const double usedL = m_usedL - onset.usedL;
    counted.predict(usedL, {.levelL2 = kUseL2PerL * counted.scale() * usedL});
    return counted;
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
    m_fault.levelL = m_state.reading.value_or(Volume()).litres();
    countOn();
    if (rollBack) {
        const FuelFilter counted = countedFrom(onset);
        if (counted.levelL() < m_filter.levelL())
            m_filter = counted;
    }
    if (offsetL < 0.0)   // it may have been fuel that was lost
        m_filter.widen(kLostFuel * offsetL * offsetL);
    m_jump = Jump{};
    m_stand = Stand{};
    m_cusum.reset();
    const double litres = m_filter.scale() * (m_usedL - onset.usedL);
    say({.kind = TrackerEventKind::fault, .time = Seconds(m_timeS), .onset = Seconds(onset.timeS),
         .litres = {Volume::fromLitres(litres), {}},
         .distance = Distance::fromKm(m_km - onset.km), .fault = code});
}

// By time alone without the sender: litres per hour of the road ahead, not those
// of the last quarter of an hour.
Estimate<Fraction> LevelTracker::roadAhead(double scaleNow) const
{
    const double usual = (m_state.used.litres() + kRoadPriorL) / (m_usedL + kRoadPriorL);
    const double scale = std::max(scaleNow, usual);
    const double sd = scale * std::hypot(kRoadAhead, kStretch / std::sqrt(1.0 + m_usedL / kStretchL));
    return {Fraction::fromRatio(scale), Fraction::fromRatio(sd)};
}

// From here on without the sender.
void LevelTracker::countOn()
{
    m_state.mode = TrackerMode::consumptionOnly;
    if (m_use.timeAlone())
        m_filter.setScale(roadAhead(m_filter.scale()));
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
    m_still = {};
    m_calm = m_calmDown = here();
}

// How much more likely the reading is by a sender that is right than by one that
// is off by anything: the innovation's density over a uniform one (Bayes factor).
static double rightOverWrong(const Innovation& seen, double rangeL)
{
    const double sd = std::sqrt(seen.varianceL2);
    return kAnyOffset * rangeL * std::exp(-0.5 * seen.nis()) / (sd * std::sqrt(2.0 * std::numbers::pi));
}

// A shifted reading is only right again once it has stepped back by as much: that
// a count grows vague enough to agree with it proves nothing. Over some blocks,
// because a damped gauge takes its time.
bool LevelTracker::steppedBack(const BlockSummary& block)
{
    const std::size_t slot = m_fault.seen++ % m_fault.trail.size();
    Fault::Seen& then = m_fault.trail[slot];
    const bool known = m_fault.seen > m_fault.trail.size();
    const double fuel = m_filter.scale() * (m_usedL - then.usedL);
    const double step = block.levelL - then.levelL + fuel;
    then = {block.levelL, m_usedL};
    return known && std::abs(step + m_fault.offsetL) < kStepBack * std::abs(m_fault.offsetL);
}

// A wire that heals shows the level at once; a reading that creeps in over an
// end of the range, where it had left it, was shifted.
void LevelTracker::noteReturn(const BlockSummary& block)
{
    const bool wire = m_fault.code == FaultCode::open || m_fault.code == FaultCode::shortCircuit;
    if (!wire || m_fault.returned)
        return;
    m_fault.returned = true;
    const double low = block.levelL - m_settings.lowest.litres();
    const double high = m_settings.highest.litres() - block.levelL;
    m_fault.crept = std::min(low, high) < kCreep * m_rangeL;
}

// The sender is taken back once it lives and agrees with the count.
void LevelTracker::recover(const BlockSummary& block, double noiseL2)
{
    m_state.mode = TrackerMode::consumptionOnly;
    noteReturn(block);
    const bool still = m_fault.code == FaultCode::stuck || m_fault.code == FaultCode::stuckAtStop;
    if (still && std::abs(block.levelL - m_fault.levelL) > 2.0 * kStillBand * m_rangeL)
        m_fault.moved = true;
    if (m_fault.offsetL != 0.0 && steppedBack(block))
        m_fault.moved = true;
    const bool shifted = m_fault.crept || (m_fault.offsetL != 0.0 && !m_fault.moved);
    const Innovation seen = compare(block, noiseL2);
    // A sender that claims more than was counted must be close before it is believed.
    const bool agrees = seen.nis() < 6.0 && seen.residualL < kReturnAbove * m_rangeL
        && rightOverWrong(seen, m_rangeL) > (shifted ? kSureRight : kLikelyRight);
    m_fault.agreeing = agrees && (!still || m_fault.moved) ? m_fault.agreeing + 1 : 0;
    if (m_fault.agreeing >= kAgreeing)
        clearFault();
}

} // namespace undermark
