// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/level_tracker.h"

#include "engine/tracking/tracker_tuning.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace undermark {

using namespace tuning;

LevelTracker::LevelTracker(const TrackerSettings& settings)
    : m_settings(settings), m_rangeL((settings.highest - settings.lowest).litres()),
      m_use(settings), m_block(settings.lowest, settings.highest),
      m_cusum(kCusumAllowance,
              cusumThreshold(kCusumAllowance,
                             runLength(settings.falseAlarmsPer1000Km, settings.block)))
{
    assert(m_rangeL > 0.0);
    const double scaleSd = m_use.scaleSd();
    const auto scale = settings.scale.value_or(
        Estimate<Fraction>{Fraction::fromRatio(1.0), Fraction::fromRatio(scaleSd)});
    m_scaleKnown = settings.scale.has_value();
    const auto level = settings.lastKnown.value_or(Estimate<Volume>{});
    m_filter = FuelFilter(level, scale);
    m_calm = m_calmDown = m_still = here();
    if (settings.lastKnown) {
        // Temperature, a slope, someone else's errand: the longer ago the less sure.
        const double days = std::max(0.0, settings.sinceLastKnown.count()) / 86400.0;
        m_filter.widen(kParkedL2PerDay * std::min(days, 30.0));
        m_started = true;
        m_afterGap = settings.sinceLastKnown.count() > kLongGapS;
        m_state.level = level;
        show();
    }
}

std::span<const TrackerEvent> LevelTracker::add(const TrackerSample& sample)
{
    m_eventCount = 0;
    const UseStep step = m_use.step(sample);
    const double now = sample.time.count();
    if (!m_running) {
        m_running = true;
        m_past.startS = m_timeS = now;
        m_state.time = sample.time;
    }
    if (step.gap || step.clockJump) {
        closeBlock();
        m_past.startS = now;
        m_afterGap = m_afterGap || step.seconds > kLongGapS;
        say({.kind = step.gap ? TrackerEventKind::gap : TrackerEventKind::clockJump,
             .time = sample.time, .onset = Seconds(m_timeS), .litres = {}, .distance = {}});
    } else if (now - m_past.startS >= m_settings.block.count()) {
        closeBlock();
        m_past.startS = now;
    }
    m_timeS = now;
    m_usedL += step.usedL;
    m_km += step.km;
    m_past.seconds += step.seconds;
    m_past.usedL += step.usedL;
    m_past.unknownL2 += step.unknownL2;
    m_past.acceleration += step.acceleration * step.seconds;
    m_past.moved = m_past.moved || step.moving;
    ++m_past.samples;
    m_past.motionKnown = m_past.motionKnown && step.motionKnown;
    if (sample.level)
        m_block.add(now, *sample.level);
    return {m_events.data(), m_eventCount};
}

std::span<const TrackerEvent> LevelTracker::finish()
{
    m_eventCount = 0;
    closeBlock();
    m_past.startS = m_timeS;
    return {m_events.data(), m_eventCount};
}

void LevelTracker::closeBlock()
{
    if (m_past.samples == 0)
        return;
    const BlockSummary block = m_block.take();
    const Interval past = m_past;
    m_past = Interval{};
    m_state.reading.reset();
    if (block.kind == BlockKind::exact || block.kind == BlockKind::atMost
        || block.kind == BlockKind::atLeast)
        m_state.reading = Volume::fromLitres(block.levelL);
    predict(past);
    if (!past.moved)
        m_lastStandS = m_timeS;
    if (block.kind == BlockKind::empty)
        takeMissing(past);
    else if (block.kind == BlockKind::tooLow || block.kind == BlockKind::tooHigh)
        takeOutOfRange(block);
    else
        takeBlock(block, past);
    ++m_state.blocks;
    show();
}

void LevelTracker::predict(const Interval& past)
{
    if (!m_scaleKnown && past.usedL > 0.0) {
        // Only the samples tell which source there is.
        const double sd = m_use.scaleSd();
        m_filter.setScale({Fraction::fromRatio(1.0), Fraction::fromRatio(sd)});
        m_scaleKnown = true;
    }
    const double burntL = m_filter.scale() * past.usedL;
    FuelFilter::Noise noise;
    // The curve's error changes with the level: over kCurveL litres it is another.
    noise.levelL2 = past.unknownL2 + kUseL2PerL * std::abs(burntL)
        + 2.0 * std::pow(std::min(m_curveSdL, kCurveMost * m_rangeL), 2) * std::abs(burntL)
            / (kCurvePart * m_rangeL);
    noise.scale2 = (m_use.timeAlone() ? kTimeScale2PerL
                        : m_use.guessed() ? kGuessedScale2PerL : kScale2PerL) * past.usedL;
    noise.biasKeep = std::exp(-past.seconds / kBiasS);
    const double bias = kBias * m_biasShare * m_rangeL;
    noise.bias2 = bias * bias * (1.0 - noise.biasKeep * noise.biasKeep);
    m_filter.predict(past.usedL, noise);
    m_state.used += Volume::fromLitres(burntL);
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
    return slosh * share * harsh + clipped;
}

Innovation LevelTracker::compare(const BlockSummary& block, double noiseL2) const
{
    Innovation seen = m_filter.innovation(block.levelL, noiseL2);
    if (block.kind == BlockKind::atLeast)
        seen.residualL = std::max(0.0, seen.residualL);
    else if (block.kind == BlockKind::atMost)
        seen.residualL = std::min(0.0, seen.residualL);
    return seen;
}

void LevelTracker::startFrom(const BlockSummary& block, double noiseL2)
{
    const double bias2 = std::pow(kBias * m_rangeL, 2);
    m_jump = Jump{};
    m_cusum.reset();
    m_thinned = 0.0;
    m_thinnedBlocks = 0;
    m_stillSet = false;
    if (block.kind == BlockKind::exact) {
        m_filter.restartLevel(block.levelL, noiseL2, bias2);
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

void LevelTracker::takeBlock(const BlockSummary& block, const Interval& past)
{
    m_missingS = 0.0;
    m_outOfRange = 0;
    m_curveSdL = block.curveSdL;
    watchContact(block);
    const double noiseL2 = noiseOf(block, past);
    if (m_dropoutSaid) {
        say({.kind = TrackerEventKind::faultCleared, .time = Seconds(m_timeS),
             .onset = Seconds(m_missingOnsetS), .litres = {}, .distance = {},
             .fault = FaultCode::dropout});
        m_dropoutSaid = false;
    }
    if (!m_started) {
        startFrom(block, noiseL2);
        m_state.mode = TrackerMode::level;
        if (block.kind != BlockKind::exact)
            takeStop(block, noiseL2);
        return;
    }
    if (takeStanding(block, past))
        return;
    if (m_fault.active) {
        recover(block, noiseL2);
        return;
    }
    if (takeJump(block, compare(block, noiseL2), noiseL2, past))
        return;
    if (block.kind == BlockKind::exact)
        takeReading(block, noiseL2);
    else
        takeStop(block, noiseL2);
    m_afterGap = false;
    if (!m_fault.active)
        watchStillness(block);
    watchScale();
}

void LevelTracker::takeReading(const BlockSummary& block, double noiseL2)
{
    m_state.mode = TrackerMode::level;
    if (++m_offStop > kOffStopBlocks)
        m_stopSaid = TrackerMode::level;
    const Innovation seen = compare(block, noiseL2);
    m_nisSum += seen.nis();
    ++m_state.nisCount;
    m_state.nisMean = m_nisSum / static_cast<double>(m_state.nisCount);
    m_nisRecent += kNisGain * (std::min(seen.nis(), 9.0) - m_nisRecent);
    // Cars differ in how much they tilt: the slow error is scaled until the
    // innovations are as large as they should be.
    m_biasShare = std::clamp(m_biasShare * std::exp(kBiasGain * (std::min(seen.nis(), 6.0) - 1.0)),
                             kLeastBias, kMostBias);
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
    // Only where the expectation breaks the bound: cutting the Gaussian again
    // and again at the same bound would push it away.
    const double boundNoise = noiseL2 + block.curveSdL * block.curveSdL;
    if (upper && m_filter.expectedReadingL() < block.levelL)
        m_filter.correctAbove(block.levelL, boundNoise);
    else if (!upper && m_filter.expectedReadingL() > block.levelL)
        m_filter.correctBelow(block.levelL, boundNoise);
}

// Updates what is shown: it falls with the estimate and never rises by itself.
void LevelTracker::show()
{
    m_state.time = Seconds(m_timeS);
    m_state.driven = Distance::fromKm(m_km);
    m_state.scale = {Fraction::fromRatio(m_filter.scale()),
                     Fraction::fromRatio(std::sqrt(std::max(0.0, m_filter.scaleVariance())))};
    if (!m_started)
        return;
    const double sd = std::sqrt(std::max(0.0, m_filter.levelVarianceL2())
                                + m_curveSdL * m_curveSdL);
    const double estimate = std::max(0.0, m_filter.levelL());
    const double shown = m_state.level.mean.litres();
    m_state.level.sd = Volume::fromLitres(sd);
    m_above = estimate > shown + std::max(kCorrection * m_rangeL, 2.0 * sd) ? m_above + 1 : 0;
    if (m_above >= kCorrectionBlocks) {
        say({.kind = TrackerEventKind::correction, .time = Seconds(m_timeS),
             .onset = Seconds(m_timeS),
             .litres = {Volume::fromLitres(estimate - shown), Volume::fromLitres(sd)},
             .distance = {}});
        m_above = 0;
        m_state.level.mean = Volume::fromLitres(estimate);
    } else {
        m_state.level.mean = Volume::fromLitres(std::min(shown, estimate));
    }
}

void LevelTracker::say(const TrackerEvent& event)
{
    if (m_eventCount < m_events.size())
        m_events[m_eventCount++] = event;
}

std::optional<Estimate<Consumption>> LevelTracker::rate() const
{
    const auto counted = m_use.litresPerKm();
    if (!counted)
        return std::nullopt;
    const auto per = [&](Fraction f) {
        return Consumption::fromLitresPerKm(*counted * f.ratio());
    };
    return Estimate<Consumption>{per(m_state.scale.mean), per(m_state.scale.sd)};
}

} // namespace undermark
