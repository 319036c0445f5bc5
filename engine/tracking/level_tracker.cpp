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
    m_calm = m_calmDown = here();
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

// How consumption scatters around the source's count, per litre.
struct Wander {
    double levelL2PerL, scale2PerL;
};

static Wander wanderOf(const FuelUse& use, bool blind)
{
    if (use.measured())
        return {kMeasuredUseL2PerL, kMeasuredScale2PerL};
    if (use.timeAlone())
        return blind ? Wander{kRoadUseL2PerL, kScale2PerL} : Wander{kUseL2PerL, kTimeScale2PerL};
    return {kUseL2PerL, use.guessed() ? kGuessedScale2PerL : kScale2PerL};
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
    const bool blind = m_state.mode == TrackerMode::consumptionOnly;
    const Wander wander = wanderOf(m_use, blind);
    // The curve's error changes with the level: over some litres it is another.
    const double curveL2PerL = blind ? 0.0
        : 2.0 * std::pow(std::min(m_curveSdL, kCurveMost * m_rangeL), 2) / (kCurvePart * m_rangeL);
    noise.levelL2 = past.unknownL2 + (wander.levelL2PerL + curveL2PerL) * std::abs(burntL);
    noise.scale2 = wander.scale2PerL * past.usedL;
    noise.biasKeep = std::exp(-past.seconds / kBiasS);
    const double bias = biasSdL();
    noise.bias2 = bias * bias * (1.0 - noise.biasKeep * noise.biasKeep);
    m_filter.predict(past.usedL, noise);
    m_state.used += Volume::fromLitres(burntL);
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
        watchStillness(block, past.moved);
    watchScale();
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
    const double sd = std::min(m_rangeL, std::sqrt(std::max(0.0, m_filter.levelVarianceL2())
                                                   + m_curveSdL * m_curveSdL));
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

double LevelTracker::burntSince(const Checkpoint& past) const
{
    // A stuck reading teaches a guessed source that nothing is burnt.
    const double scale = past.filter.scale();
    return (m_use.guessed() ? std::max(1.0, scale) : scale) * (m_usedL - past.usedL);
}

} // namespace undermark
