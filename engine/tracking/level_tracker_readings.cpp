// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a block of readings moves the level: noise, one-sided stops, a new start.
#include "engine/tracking/level_tracker.h"

#include "engine/tracking/tracker_tuning.h"

#include <algorithm>
#include <cmath>

namespace undermark {

using namespace tuning;

double LevelTracker::biasSdL() const
{
    return kBias * std::max(m_noiseShare, kLeastBias) * m_rangeL;
}

// Variance of the block's mean as a measure of V + b.
double LevelTracker::noiseOf(const BlockSummary& block, const Interval& past)
{
    const double share = blockMeanVariance(Seconds(std::max(block.seconds, 1.0)),
                                           m_settings.sloshCorrelation);
    // The spread within the block misses the part that moves the whole block.
    const double seen = block.sdL * block.sdL / std::max(0.3, 1.0 - share);
    double& known = m_sloshL2[past.moved];
    const double least = std::pow((past.moved ? kLeastMoving : kLeastStanding) * m_rangeL, 2);
    known = known == 0.0 ? seen : known + kSloshGain * (seen - known);
    const double slosh = std::max({known, 0.5 * seen, least});
    const double acceleration = past.seconds > 0.0 ? past.acceleration / past.seconds : 0.0;
    const double harsh = 1.0 + std::pow(acceleration / kHarsh, 2);
    const double clipped = std::pow(block.atStopShare * block.sdL, 2);
    return slosh * share * harsh * std::min(1.0, m_noiseShare / kLeastBias) + clipped;
}

Innovation LevelTracker::compare(const BlockSummary& block, double noiseL2) const
{
    Innovation seen = m_filter.innovation(block.levelL, noiseL2);
    if (block.kind == BlockKind::atLeast)
        seen.residualL = std::max(0.0, seen.residualL);
    else if (block.kind == BlockKind::atMost)
        seen.residualL = std::min(0.0, seen.residualL);
    else   // on a flat piece the level may lie below by as much as that is long
        seen.residualL -= std::clamp(seen.residualL, 0.0, block.flatL);
    return seen;
}

void LevelTracker::startFrom(const BlockSummary& block, double noiseL2)
{
    const double bias2 = std::pow(kBias * m_rangeL, 2);
    m_jump = Jump{};
    m_cusum.reset();
    m_thinned = 0.0;
    m_thinnedBlocks = 0;
    m_still = {};
    if (block.kind == BlockKind::exact) {
        const double flat2 = block.flatL * block.flatL;   // uniform, and said once
        m_filter.restartLevel(block.levelL, noiseL2 + flat2 / 12.0, bias2);
    } else {
        const bool upper = block.kind == BlockKind::atLeast;
        const double otherL = (upper ? m_settings.highest : m_settings.lowest).litres();
        const double width = std::max(std::abs(otherL - block.levelL), 0.02 * m_rangeL);
        const double middle = block.levelL + (upper ? 0.5 : -0.5) * width;
        m_filter.restartLevel(middle, width * width / 12.0, bias2);   // anywhere beyond the stop
    }
    m_started = true;
    m_state.level.mean = Volume::fromLitres(std::max(0.0, m_filter.levelL()));
    m_above = 0;
    m_calm = m_calmDown = here();
}

// Cars differ in how much they tilt and how fast their fuel comes to rest: the slow
// error, and then the blocks' noise, is scaled until the innovations are as large as
// they should be.
void LevelTracker::learnNoise(double nis)
{
    m_nisSum += nis;
    ++m_state.nisCount;
    m_state.nisMean = m_nisSum / static_cast<double>(m_state.nisCount);
    m_nisRecent += kNisGain * (std::min(nis, 9.0) - m_nisRecent);
    m_noiseShare = std::clamp(m_noiseShare * std::exp(kBiasGain * (std::min(nis, 6.0) - 1.0)),
                              kLeastNoise * kLeastBias, kMostBias);
}

void LevelTracker::takeReading(const BlockSummary& block, double noiseL2)
{
    m_state.mode = TrackerMode::level;
    if (++m_offStop > kOffStopBlocks)
        m_stopSaid = TrackerMode::level;
    const Innovation seen = compare(block, noiseL2);
    if (block.flatL > 0.0) {
        // Where the reading need not move it only says where the level is not: far
        // below. The lower of reading and count is the safe one, so a reading below
        // the count is taken as it is.
        if (seen.residualL > 0.0)
            m_filter.pull(m_filter.expectedReadingL() + seen.residualL, noiseL2);
        else if (seen.residualL < 0.0)
            m_filter.correct(block.levelL, noiseL2);
        return;
    }
    learnNoise(seen.nis());
    // A lone outlier counts as one of four standard deviations (Huber).
    const double most = kGate * kGate;
    const double excess = seen.nis() > most ? seen.residualL * seen.residualL / most - seen.varianceL2
                                            : 0.0;
    m_filter.correct(block.levelL, noiseL2 + excess);
    watchSums(seen);
}

void LevelTracker::takeStop(const BlockSummary& block, double noiseL2)
{
    const bool upper = block.kind == BlockKind::atLeast;
    m_state.mode = upper ? TrackerMode::upperStop : TrackerMode::lowerStop;
    m_offStop = 0;
    if (m_stopSaid != m_state.mode) {
        m_stopSaid = m_state.mode;
        say({.kind = upper ? TrackerEventKind::onUpperStop : TrackerEventKind::onLowerStop,
             .time = Seconds(m_timeS), .onset = Seconds(block.startS),
             .litres = {Volume::fromLitres(block.levelL), Volume::fromLitres(block.curveSdL)},
             .distance = {}});
    }
    // Only where the expectation breaks the bound, and never past it: block after
    // block tells the same thing once, and nothing about the source's scale.
    const double boundNoise = noiseL2 + block.curveSdL * block.curveSdL;
    const double over = block.levelL - m_filter.expectedReadingL();
    if (upper ? over > 0.0 : over < 0.0)
        m_filter.pull(block.levelL, boundNoise);
}

} // namespace undermark
