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
    if (standsStill(block, moving))
        raise(block.kind == BlockKind::atLeast ? FaultCode::stuckAtStop : FaultCode::stuck,
              m_still.since, true, 0.0);
}

void LevelTracker::restartStill(const BlockSummary& block)
{
    Still& still = m_still;
    still = Still{};
    still.set = true;
    still.levelL = block.levelL;
    still.flatL = block.flatL;
    still.sloshL2 = m_sloshL2[1];
    still.since = here();
    if (block.kind != BlockKind::atLeast)
        return;
    // On the upper stop the tank may truly be above, up to full.
    const double above = m_filter.expectedReadingL() - block.levelL
        + 2.0 * std::sqrt(m_filter.readingVarianceL2());
    still.allowedL = std::clamp(above, 0.0, m_settings.highest.litres() - block.levelL);
}

// True when more was burnt than can be while the reading truly stands still.
bool LevelTracker::standsStill(const BlockSummary& block, bool moving)
{
    Still& still = m_still;
    const double band = std::max(kStillBand * m_rangeL, 0.5 * block.flatL);
    const double off = std::abs(block.levelL - still.levelL);
    still.flatL = std::max(still.flatL, block.flatL);
    still.off = off > band ? still.off + 1 : 0;   // one block may be off by a converter's step
    if (!still.set || block.kind == BlockKind::atMost   // lower than that anyway
        || still.off > 1 || off > 1.5 * band) {
        restartStill(block);
        return false;
    }
    if (moving) {
        still.sumL2 += block.sdL * block.sdL;
        ++still.moving;
    }
    const bool upper = block.kind == BlockKind::atLeast;
    // A float that no longer shivers is stuck; one that does may be held up by a
    // slow error, a worse curve or a worn arm.
    const bool dead = still.flatL == 0.0 && !upper && still.moving > 2
        && still.sumL2 < kDead * still.sloshL2 * still.moving;
    const double flat = upper ? still.allowedL : std::max(still.allowedL, still.flatL);
    const double slow = std::numbers::sqrt2   // a flat piece is what the curve does not know
        * std::hypot(biasSdL(), still.flatL > 0.0 ? 0.0 : block.curveSdL);
    const FuelFilter& then = still.since.filter;
    const double sdScale = std::sqrt(then.scaleVariance()) / std::max(0.1, then.scale());
    const double sureScale = std::max(0.4, 1.0 - (upper ? 1.5 : 1.0) * sdScale);
    const double needed = std::max(kStillBurnt * m_rangeL, flat + band)
        + (dead ? band : kStillSds * slow);
    return sureScale * burntSince(still.since) > needed;
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
    const double bias = biasSdL();
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
