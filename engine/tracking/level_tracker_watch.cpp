// SPDX-License-Identifier: GPL-3.0-or-later
//
// The watches that run beside the filter: a float that stands still, sums of small
// shifts, a loose contact, a source that counts wrongly.
#include "engine/tracking/level_tracker.h"

#include "engine/tracking/tracker_tuning.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

using namespace tuning;

void LevelTracker::watchStillness(const BlockSummary& block, bool moving)
{
    const double band = std::max(kStillBand * m_rangeL, 0.5 * block.flatL);
    m_stillFlatL = std::max(m_stillFlatL, block.flatL);
    const bool upper = block.kind == BlockKind::atLeast;
    // One block may be off by a step of the converter.
    m_stillOff = std::abs(block.levelL - m_stillL) > band ? m_stillOff + 1 : 0;
    const bool moves = !m_stillSet || block.kind == BlockKind::atMost   // lower than that anyway
        || m_stillOff > 1 || std::abs(block.levelL - m_stillL) > 1.5 * band;
    if (moves) {
        m_stillSet = true;
        m_stillSloshL2 = m_sloshL2[1];
        m_stillSumL2 = 0.0;
        m_stillFlatL = block.flatL;
        m_stillMoving = m_stillOff = 0;
        m_stillL = block.levelL;
        m_still = here();
        // On the upper stop the tank may truly be above, up to full.
        const double above = m_filter.expectedReadingL() - block.levelL
            + 2.0 * std::sqrt(m_filter.readingVarianceL2());
        m_stillAllowedL = upper ? std::clamp(above, 0.0, m_settings.highest.litres() - block.levelL)
                                : 0.0;
        return;
    }
    if (moving) {
        m_stillSumL2 += block.sdL * block.sdL;
        ++m_stillMoving;
    }
    // A float that no longer shivers is stuck; one that does may be held up by a
    // slow error, a worse curve or a worn arm.
    const bool dead = m_stillFlatL == 0.0 && !upper && m_stillMoving > 2
        && m_stillSumL2 < kDead * m_stillSloshL2 * m_stillMoving;
    const double slow = std::numbers::sqrt2 * std::hypot(kBias * m_biasShare * m_rangeL, block.curveSdL);
    const double flat = upper ? m_stillAllowedL : std::max(m_stillAllowedL, m_stillFlatL);
    const double sdScale = std::sqrt(m_still.filter.scaleVariance())
        / std::max(0.1, m_still.filter.scale());
    const double sureScale = std::max(0.4, 1.0 - (flat > 0.0 ? 1.5 : 1.0) * sdScale);
    const double needed = std::max(kStillBurnt * m_rangeL, flat + band)
        + (dead ? band : kStillSds * slow);
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
    const double bias = kBias * m_biasShare * m_rangeL;
    const double spread = 3.0 * std::sqrt(counted.levelVarianceL2() + 2.0 * m_curveSdL * m_curveSdL
                                          + 2.0 * bias * bias);
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

} // namespace undermark
