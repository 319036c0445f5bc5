// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a block of readings does to the level, and what the watches' verdicts do.
#include "engine/tracking/level_tracker.h"

#include "engine/tracking/block_reading.h"
#include "engine/tracking/burn_noise.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kFuelStopS = 180.0;     // a halt this long ago may have been for fuel
constexpr double kLostFuel = 0.06;       // chance that a step down was fuel lost

Estimate<Volume> litresOf(double mean, double sd = 0.0)
{
    return {Volume::fromLitres(mean), Volume::fromLitres(sd)};
}

} // namespace

void LevelTracker::takeSilence(const BlockDrive& past)
{
    const bool dropout = m_silence.silent(past);
    if (m_started)
        m_state.mode = TrackerMode::consumptionOnly;
    if (dropout) {
        countOn();
        note(FaultCode::dropout, m_silence.onsetS());
    }
}

void LevelTracker::takeOutside(const BlockSummary& block)
{
    const bool wire = m_range.outside(block);
    if (m_started)
        m_state.mode = TrackerMode::consumptionOnly;
    m_still.forget();
    m_fault.outside();
    if (!wire || m_fault.active())
        return;
    Moment onset = m_now;
    onset.timeS = m_range.onsetS();
    raise(block.kind == BlockKind::tooHigh ? FaultCode::open : FaultCode::shortCircuit, onset,
          false, 0.0);
}

void LevelTracker::takeBlock(const BlockSummary& block, const BlockDrive& past)
{
    m_range.inside();
    m_curveSdL = block.curveSdL;
    watchContact(block);
    const double noiseL2 = m_noise.varianceL2(block, past);
    if (m_silence.heard())
        say(TrackerEventKind::faultCleared, m_silence.onsetS(), {}, {}, FaultCode::dropout);
    if (!m_started) {
        startFrom(block, noiseL2);
        m_state.mode = TrackerMode::level;
        if (block.kind != BlockKind::exact)
            takeStop(block, noiseL2);
        return;
    }
    if (takeRise(block, past))
        return;
    if (m_fault.active()) {
        recover(block, noiseL2);
        return;
    }
    if (takeJump(block, noiseL2, past))
        return;
    if (block.kind == BlockKind::exact)
        takeReading(block, noiseL2);
    else
        takeStop(block, noiseL2);
    m_afterGap = false;
    if (!m_fault.active())
        watchStillness(block, noiseL2, past.moved);
    if (!m_fault.active())
        watchRest(block, past);
    watchSource(block, noiseL2, past);
}

void LevelTracker::watchContact(const BlockSummary& block)
{
    const ContactWatch::Contact contact = m_contact.add(block);
    if (contact == ContactWatch::Contact::loose)
        note(FaultCode::intermittent, block.startS);
    else if (contact == ContactWatch::Contact::healed)
        say(TrackerEventKind::faultCleared, m_now.timeS, {}, {}, FaultCode::intermittent);
}

bool LevelTracker::takeRise(const BlockSummary& block, const BlockDrive& past)
{
    const StandingRise::Seen rise = m_rise.add(block, past);
    m_state.rising = rise.verdict == StandingRise::Rise::flowing;
    if (rise.verdict != StandingRise::Rise::risen)
        return m_state.rising;
    if (m_recent.comesBack(block.levelL - rise.litres, block.levelL, m_now))
        return false;
    Moment before = m_now;
    before.timeS = rise.onsetS;
    m_now.filter.add(rise.litres, rise.sdL * rise.sdL);
    accept(kindOf({rise.litres, rise.fastestL, rise.sdL, past.moved}), rise.litres, rise.sdL, before);
    return true;
}

void LevelTracker::recover(const BlockSummary& block, double noiseL2)
{
    m_state.mode = TrackerMode::consumptionOnly;
    if (!m_fault.agrees(block, compare(m_now.filter, block, noiseL2), m_now))
        return;
    say(TrackerEventKind::faultCleared, m_fault.onset().timeS, {},
        Distance::fromKm(m_now.km - m_fault.onset().km), m_fault.code());
    m_fault.clear();
    m_still.forget();
    m_drift.calm(m_now);
}

// True where the block is not to be used as a reading.
bool LevelTracker::takeJump(const BlockSummary& block, double noiseL2, const BlockDrive& past)
{
    using Verdict = ReadingJump::Verdict;
    const bool ofFuel = m_afterGap || !past.motionKnown || !past.moved
        || m_now.timeS - m_lastStandS < kFuelStopS;
    const Verdict verdict = m_jump.add(block, compare(m_now.filter, block, noiseL2), noiseL2, past,
                                       m_now, {.afterGap = m_afterGap, .ofFuel = ofFuel});
    m_state.rising = verdict == Verdict::waiting && !m_jump.falls();
    const double beforeL = m_now.filter.levelL();
    const bool back = verdict == Verdict::fuel
        && m_recent.comesBack(m_now.filter.expectedReadingL(), block.levelL, m_now);
    if (verdict == Verdict::fuel && !back) {
        Moment before = m_now;
        before.timeS = m_jump.before().timeS;
        const double sd = std::sqrt(std::max(0.0, before.filter.levelVarianceL2()) + noiseL2);
        const double fastestL = m_jump.fastestL();
        startFrom(block, noiseL2);
        const double litres = m_now.filter.levelL() - beforeL;
        accept(kindOf({litres, fastestL, std::sqrt(noiseL2), past.moved}), litres, sd, before);
    } else if (verdict == Verdict::taken || back) {
        startFrom(block, noiseL2);
        say(TrackerEventKind::correction, m_now.timeS,
            litresOf(m_now.filter.levelL() - beforeL, std::sqrt(m_now.filter.levelVarianceL2())));
    } else if (verdict != Verdict::none && verdict != Verdict::waiting) {
        takeFault(verdict, block, noiseL2, past);
    }
    return verdict != Verdict::none;
}

void LevelTracker::takeFault(ReadingJump::Verdict verdict, const BlockSummary& block, double noiseL2,
                             const BlockDrive& past)
{
    using Verdict = ReadingJump::Verdict;
    if (!m_jump.falls()
        && takeFed(block, noiseL2, m_jump.before(),
                   {m_jump.offsetL(), m_jump.fastestL(), std::sqrt(noiseL2), past.moved}))
        return;
    if (verdict == Verdict::open)
        raise(FaultCode::open, m_jump.before(), false, m_jump.offsetL());
    else if (verdict == Verdict::shortCircuit)
        raise(FaultCode::shortCircuit, m_jump.before(), false, m_jump.offsetL());
    else
        takeShift(block, noiseL2);
}

void LevelTracker::takeShift(const BlockSummary& block, double noiseL2)
{
    if (!m_use.guessed() || !m_jump.falls()) {
        raise(FaultCode::offsetJump, m_jump.before(), false, m_jump.offsetL());
        return;
    }
    // The count is a guess: tell, and believe the lower of the two.
    note(FaultCode::offsetJump, m_jump.before().timeS);
    startFrom(block, noiseL2);
}

void LevelTracker::takeReading(const BlockSummary& block, double noiseL2)
{
    m_state.mode = TrackerMode::level;
    m_stop.off();
    const Innovation seen = compare(m_now.filter, block, noiseL2);
    if (block.flatL > 0.0) {
        takeFlat(m_now.filter, block, seen, noiseL2);
        return;
    }
    m_noise.learn(seen.nis());
    m_state.nisMean = m_noise.meanNis();
    m_state.nisCount = m_noise.nisCount();
    takeExact(m_now.filter, block, seen, noiseL2);
    if (const auto drift = m_drift.add(seen, m_now, m_noise, m_curveSdL))
        takeDrift(block, noiseL2, *drift);
}

void LevelTracker::takeDrift(const BlockSummary& block, double noiseL2, const DriftWatch::Drift& drift)
{
    if (!m_use.guessed() && drift.up) {
        // (Slow as it was, it can be no faster than the pump.)
        if (!takeFed(block, noiseL2, drift.onset, {drift.apartL, 0.0, std::sqrt(noiseL2), true}))
            raise(FaultCode::drift, drift.onset, true, drift.apartL);
        return;
    }
    // Falling faster than thought: the lower reading is the safe one.
    m_now.filter.setScale({Fraction::fromRatio(m_now.filter.scale()),
                           Fraction::fromRatio(m_use.scaleSd())});
    if (!m_use.guessed())
        note(FaultCode::drift, drift.onset.timeS);
}

void LevelTracker::takeStop(const BlockSummary& block, double noiseL2)
{
    const bool upper = block.kind == BlockKind::atLeast;
    m_state.mode = upper ? TrackerMode::upperStop : TrackerMode::lowerStop;
    if (m_stop.rests(m_state.mode))
        say(upper ? TrackerEventKind::onUpperStop : TrackerEventKind::onLowerStop, block.startS,
            litresOf(block.levelL, block.curveSdL));
    takeBound(m_now.filter, block, noiseL2);
}

void LevelTracker::watchStillness(const BlockSummary& block, double noiseL2, bool moved)
{
    if (m_still.add(block, moved, m_now, m_noise, m_use.guessed()) && !takeStanding(block, noiseL2))
        raise(block.kind == BlockKind::atLeast ? FaultCode::stuckAtStop : FaultCode::stuck,
              m_still.since(), true, 0.0);
}

void LevelTracker::startFrom(const BlockSummary& block, double noiseL2)
{
    const Volume farEnd = block.kind == BlockKind::atLeast ? m_settings.highest
                                                           : m_settings.lowest;
    restart(m_now.filter, block, noiseL2, m_noise.slowErrorSdUnlearntL(), farEnd.litres(),
            m_rangeL);
    m_started = true;
    m_shown.set(m_now.filter.levelL());
    m_jump.forget();
    m_still.forget();
    m_drift.restart(m_now);
}

TrackerEventKind LevelTracker::kindOf(const OtherFuel::Rise& rise) const
{
    return m_others.cameOver(rise) ? TrackerEventKind::transfer : TrackerEventKind::refuel;
}

void LevelTracker::accept(TrackerEventKind kind, double litres, double sdL, const Moment& before)
{
    // With a refuel that nobody has spoken of yet it is one: the nozzle clicked, and more was
    // poured. The pump's word, or that none went in, is then of both.
    const bool more = refuelledLately() && kind == TrackerEventKind::refuel && m_refuel.kind == kind;
    m_refuel = {m_now.timeS, litres + (more ? m_refuel.litres : 0.0), more ? m_refuel.before : before, kind};
    m_recent.restart(m_now);
    endRest();
    const bool over = kind == TrackerEventKind::transfer;
    if (over)
        m_others.give(litres);
    const double share = over ? 1.0 : m_settings.others.share;
    say(kind, before.timeS, litresOf(litres / share, sdL / share));
    m_shown.set(m_now.filter.levelL());
    m_jump.forget();
    m_still.forget();
    m_drift.clear(m_now);
}

void LevelTracker::raise(FaultCode code, Moment onset, bool rollBack, double offsetL)
{
    m_fault.raise(code, onset, offsetL, m_state.reading.value_or(Volume()).litres());
    countOn();
    if (rollBack) {
        FuelFilter from = onset.filter;
        if (m_use.timeAlone())
            from = roadAhead(from);
        const FuelFilter counted = countedOn(from, m_now.usedL - onset.usedL);
        if (counted.levelL() < m_now.filter.levelL())
            m_now.filter = counted;
    }
    if (offsetL < 0.0)   // it may have been fuel that was lost
        m_now.filter.widen(kLostFuel * offsetL * offsetL);
    m_jump.forget();
    m_rise.forget();
    m_recent.restart(m_now);
    m_drift.clear(m_now);
    say(TrackerEventKind::fault, onset.timeS,
        litresOf(m_now.filter.scale() * (m_now.usedL - onset.usedL)),
        Distance::fromKm(m_now.km - onset.km), code);
}

void LevelTracker::note(FaultCode code, double onsetS)
{
    say(TrackerEventKind::fault, onsetS, {}, {}, code);
}

void LevelTracker::countOn()
{
    endRest();
    m_state.mode = TrackerMode::consumptionOnly;
    if (m_use.timeAlone())
        m_now.filter = roadAhead(m_now.filter);
}

FuelFilter LevelTracker::roadAhead(FuelFilter filter) const
{
    filter.setScale(scaleOfRoadAhead(filter.scale(), m_state.used.litres(), m_now.usedL));
    return filter;
}

} // namespace undermark
