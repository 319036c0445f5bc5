// SPDX-License-Identifier: GPL-3.0-or-later
//
// The level of one tank of several: what other tanks give, or take over the burning of.
#include "engine/tracking/level_tracker.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace undermark {

// Of what the engine burns this tank gives its share, and while another feeds nothing.
void LevelTracker::count(UseStep step)
{
    if (m_resting.active())
        m_past.elsewhereL += std::exchange(step.usedL, 0.0);
    step.usedL *= m_settings.others.share;
    m_now.usedL += step.usedL;
    m_now.km += step.km;
    m_past.add(step);
}

// A reading that stands above the count, with no step up: was it fuel that came over, or burnt
// from elsewhere? Then the level goes on from what is read.
// (`onset` by value, here and below: it may stand in a watch that forgets it.)
bool LevelTracker::takeFed(const BlockSummary& block, double noiseL2, Moment onset, const OtherFuel::Rise& rise)
{
    if (m_others.cameOver(rise)) {
        goOnFrom(block, noiseL2, onset);
        accept(TrackerEventKind::transfer, rise.litres, rise.sdL, onset);
        return true;
    }
    if (rise.fastestL > 4.0 * rise.sdL || !m_others.mayHaveGiven(rise.litres))
        return false;
    rest(block, noiseL2, onset);
    return true;
}

bool LevelTracker::takeStanding(const BlockSummary& block, double noiseL2)
{
    const Moment onset = m_still.since();
    if (!m_others.mayHaveGiven(onset.filter.scale() * (m_now.usedL - onset.usedL)))
        return false;
    rest(block, noiseL2, onset);
    return true;
}

// A count that far too much is burnt, likewise.
void LevelTracker::watchSource(const BlockSummary& block, double noiseL2, const BlockDrive& past)
{
    if (m_use.guessed() || !m_source.add(m_now))
        return;
    if (m_now.filter.scale() >= 1.0 || !m_others.mayHaveGiven(0.0)) {
        note(FaultCode::sourceScale, past.startS);
        return;
    }
    m_source = SourceWatch(m_rangeL);
    m_now.filter.setScale({Fraction::fromRatio(1.0), Fraction::fromRatio(m_use.scaleSd())});
    if (!m_resting.active())
        rest(block, noiseL2, m_now);
}

// By what is read. That the level stood, or rose, has taught the count that little is burnt.
void LevelTracker::goOnFrom(const BlockSummary& block, double noiseL2, const Moment& onset)
{
    m_now.filter.setScale({Fraction::fromRatio(onset.filter.scale()),
                           Fraction::fromRatio(std::sqrt(std::max(0.0, onset.filter.scaleVariance())))});
    startFrom(block, noiseL2);
}

void LevelTracker::rest(const BlockSummary& block, double noiseL2, Moment onset)
{
    const double before = m_shown.level().mean.litres();
    const double burntL = onset.filter.scale() * (m_now.usedL - onset.usedL);
    m_others.give(burntL);
    goOnFrom(block, noiseL2, onset);
    if (const double up = m_now.filter.levelL() - before; up > 0.0)
        say(TrackerEventKind::correction, m_now.timeS,
            {Volume::fromLitres(up), Volume::fromLitres(std::sqrt(m_now.filter.levelVarianceL2()))});
    m_resting.begin(m_now.filter.expectedReadingL());
    say(TrackerEventKind::fault, onset.timeS, {Volume::fromLitres(burntL), {}},
        Distance::fromKm(m_now.km - onset.km), FaultCode::otherTankFeeds);
}

// After the block was taken in. What they held is gone: then this one feeds, and its float sticks.
void LevelTracker::watchRest(const BlockSummary& block, const BlockDrive& past)
{
    if (!m_resting.active())
        return;
    m_others.give(m_now.filter.scale() * past.elsewhereL);
    const bool empty = !m_others.mayHaveGiven(0.0);
    if (!empty && !m_resting.falls(block))
        return;
    endRest();
    if (empty)
        raise(FaultCode::stuck, m_now, false, 0.0);
}

void LevelTracker::endRest()
{
    if (!m_resting.active())
        return;
    m_resting.end();
    m_still.forget();
    m_drift.clear(m_now);
    say(TrackerEventKind::faultCleared, m_now.timeS, {}, {}, FaultCode::otherTankFeeds);
}

} // namespace undermark
