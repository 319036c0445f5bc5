// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/level_tracker.h"

#include "engine/tracking/burn_noise.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace undermark {

namespace {

constexpr double kLongGapS = 600.0;
constexpr double kParkedL2PerDay = 0.09;
constexpr double kParkedDays = 30.0;     // at most
constexpr double kCurvePart = 0.2;       // the curve's error is another after 20 % of it
constexpr double kCurveMost = 0.04;      // a worse curve is wrong as a whole, not by places

} // namespace

LevelTracker::LevelTracker(const TrackerSettings& settings)
    : m_settings(settings), m_rangeL((settings.highest - settings.lowest).litres()),
      m_use(settings), m_block(settings.lowest, settings.highest),
      m_scaleKnown(settings.scale.has_value()), m_noise(m_rangeL, settings.sloshCorrelation),
      m_rise(m_rangeL), m_jump(settings),
      m_fault(settings.lowest.litres(), settings.highest.litres()),
      m_still(settings.lowest.litres(), settings.highest.litres()), m_drift(settings, m_now),
      m_source(m_rangeL), m_others(settings.others, settings.block), m_resting(m_rangeL),
      m_shown(m_rangeL, settings.lastKnown.value_or(Estimate<Volume>{}))
{
    assert(m_rangeL > 0.0);
    const Estimate<Fraction> scale = settings.scale.value_or(
        Estimate<Fraction>{Fraction::fromRatio(1.0), Fraction::fromRatio(m_use.scaleSd())});
    m_now.filter = FuelFilter(m_shown.level(), scale);
    m_drift.calm(m_now);
    if (!settings.lastKnown)
        return;
    // Temperature, a slope, someone else's errand: the longer ago the less sure.
    const double days = std::max(0.0, settings.sinceLastKnown.count()) / 86400.0;
    m_now.filter.widen(kParkedL2PerDay * std::min(days, kParkedDays));
    m_started = true;
    m_afterGap = settings.sinceLastKnown.count() > kLongGapS;
    show();
}

std::span<const TrackerEvent> LevelTracker::add(const TrackerSample& sample)
{
    m_events.clear();
    const UseStep step = m_use.step(sample);
    const double now = sample.time.count();
    if (!m_running) {
        m_running = true;
        m_past.startS = m_now.timeS = now;
        m_state.time = sample.time;
    }
    if (step.gap || step.clockJump) {
        closeBlock();
        m_past.startS = now;
        m_afterGap = m_afterGap || step.seconds > kLongGapS;
        m_events.add({.kind = step.gap ? TrackerEventKind::gap : TrackerEventKind::clockJump,
                      .time = sample.time, .onset = Seconds(m_now.timeS), .litres = {},
                      .distance = {}});
    } else if (now - m_past.startS >= m_settings.block.count()) {
        closeBlock();
        m_past.startS = now;
    }
    m_now.timeS = now;
    count(step);
    if (sample.level)
        m_block.add(now, *sample.level);
    return m_events.all();
}

std::span<const TrackerEvent> LevelTracker::finish()
{
    m_events.clear();
    closeBlock();
    m_past.startS = m_now.timeS;
    return m_events.all();
}

void LevelTracker::closeBlock()
{
    if (m_past.samples == 0)
        return;
    const BlockSummary block = m_block.take();
    const BlockDrive past = m_past;
    m_past = BlockDrive{};
    m_state.reading.reset();
    m_state.rising = false;
    if (block.kind == BlockKind::exact || block.kind == BlockKind::atMost
        || block.kind == BlockKind::atLeast)
        m_state.reading = Volume::fromLitres(block.levelL);
    predict(past);
    if (!past.moved)
        m_lastStandS = m_now.timeS;
    if (block.kind == BlockKind::empty)
        takeSilence(past);
    else if (block.kind == BlockKind::tooLow || block.kind == BlockKind::tooHigh)
        takeOutside(block);
    else
        takeBlock(block, past);
    if (m_started)
        m_recent.add(m_now);
    ++m_state.blocks;
    show();
}

void LevelTracker::predict(const BlockDrive& past)
{
    FuelFilter& filter = m_now.filter;
    if (!m_scaleKnown && past.usedL > 0.0) {
        // Only the samples tell which source there is.
        filter.setScale({Fraction::fromRatio(1.0), Fraction::fromRatio(m_use.scaleSd())});
        m_scaleKnown = true;
    }
    const double burntL = filter.scale() * past.usedL;
    const bool blind = m_state.mode == TrackerMode::consumptionOnly;
    const BurnNoise burn = burnNoise(m_use, blind);
    // The curve's error changes with the level: over some litres it is another.
    const double curveL2PerL = blind ? 0.0
        : 2.0 * std::pow(std::min(m_curveSdL, kCurveMost * m_rangeL), 2) / (kCurvePart * m_rangeL);
    FuelFilter::Noise noise;
    // Whether another tank still feeds is known by the reading alone.
    noise.levelL2 = past.unknownL2 + (burn.levelL2PerL + curveL2PerL) * std::abs(burntL)
        + std::pow(filter.scale() * past.elsewhereL, 2);
    noise.scale2 = burn.scale2PerL * past.usedL;
    noise.biasKeep = m_noise.slowErrorKept(past.seconds);
    const double slow = m_noise.slowErrorSdL();
    noise.bias2 = slow * slow * (1.0 - noise.biasKeep * noise.biasKeep);
    filter.predict(past.usedL, noise);
    m_state.used += Volume::fromLitres(burntL);
}

void LevelTracker::show()
{
    const FuelFilter& filter = m_now.filter;
    m_state.time = Seconds(m_now.timeS);
    m_state.driven = Distance::fromKm(m_now.km);
    m_state.scale = {Fraction::fromRatio(filter.scale()),
                     Fraction::fromRatio(std::sqrt(std::max(0.0, filter.scaleVariance())))};
    if (!m_started)
        return;
    if (const auto step = m_shown.follow(filter, m_curveSdL))
        say(TrackerEventKind::correction, m_now.timeS, *step);
    m_state.level = m_shown.level();
}

bool LevelTracker::refuelledLately() const
{
    return m_now.timeS - m_refuel.atS < kFillWindow.count();
}

void LevelTracker::tellFill(Estimate<Volume> litres)
{
    if (refuelledLately())
        m_now.filter.add(-m_refuel.litres, 0.0);
    const double share = m_settings.others.share, sd = share * litres.sd.litres();
    m_now.filter.add(share * litres.mean.litres(), sd * sd);
    levelTold(m_now.filter.levelL());
}

void LevelTracker::tellFull(Estimate<Volume> full)
{
    m_now.filter.setLevel(full);
    m_started = true;
    levelTold(full.mean.litres());
}

// By the driver: whatever rose or jumped is accounted for.
void LevelTracker::levelTold(double litres)
{
    endRest();
    m_refuel.atS = -1e9;
    m_state.rising = false;
    m_shown.set(litres);
    m_still.forget();
    m_jump.forget();
    m_rise.forget();
    m_recent.restart(m_now);
    m_drift.calm(m_now);
    show();
}

std::span<const TrackerEvent> LevelTracker::denyFill()
{
    m_events.clear();
    if (refuelledLately()) {
        m_refuel.atS = -1e9;
        if (m_others.cameOver({.litres = m_refuel.litres})) {
            m_others.give(m_refuel.litres);
            say(TrackerEventKind::transfer, m_refuel.before.timeS, {Volume::fromLitres(m_refuel.litres), {}});
        } else {
            raise(FaultCode::offsetJump, m_refuel.before, true, m_refuel.litres);
        }
        show();
    }
    return m_events.all();
}

void LevelTracker::say(TrackerEventKind kind, double onsetS, Estimate<Volume> litres,
                       Distance distance, FaultCode fault)
{
    m_events.add({.kind = kind, .time = Seconds(m_now.timeS), .onset = Seconds(onsetS),
                  .litres = litres, .distance = distance, .fault = fault});
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
