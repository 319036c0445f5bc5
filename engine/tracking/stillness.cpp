// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/stillness.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

constexpr double kStillBurnt = 0.032;     // of the range, at least
constexpr double kStillBand = 0.008;      // of the range, to either side
constexpr double kStillSds = 0.55;        // of the slow error, on top
constexpr double kDead = 0.1;             // of the usual variance within a block

} // namespace

bool Stillness::add(const BlockSummary& block, bool moving, const Moment& now,
                    const ReadingNoise& noise, bool guessed)
{
    if (leaves(block)) {
        restart(block, now, noise);
        return false;
    }
    if (moving) {
        m_rest.sumL2 += block.sdL * block.sdL;
        ++m_rest.moving;
    }
    const bool upper = block.kind == BlockKind::atLeast;
    return surelyBurntL(now, upper, guessed) > neededL(block, noise);
}

double Stillness::bandL(const BlockSummary& block) const
{
    return std::max(kStillBand * m_rangeL, 0.5 * block.flatL);
}

bool Stillness::leaves(const BlockSummary& block)
{
    const double band = bandL(block);
    const double off = std::abs(block.levelL - m_rest.levelL);
    m_rest.flatL = std::max(m_rest.flatL, block.flatL);
    m_rest.off = off > band ? m_rest.off + 1 : 0;   // one block may be off by a converter's step
    return !m_rest.set || block.kind == BlockKind::atMost   // lower than that anyway
        || m_rest.off > 1 || off > 1.5 * band;
}

void Stillness::restart(const BlockSummary& block, const Moment& now, const ReadingNoise& noise)
{
    m_rest = {.set = true, .levelL = block.levelL, .flatL = block.flatL,
              .sloshL2 = noise.movingSloshL2(), .since = now};
    if (block.kind != BlockKind::atLeast)
        return;
    // On the upper stop the tank may truly be above, up to full.
    const double above = now.filter.expectedReadingL() - block.levelL
        + 2.0 * std::sqrt(now.filter.readingVarianceL2());
    m_rest.allowedL = std::clamp(above, 0.0, m_highestL - block.levelL);
}

double Stillness::neededL(const BlockSummary& block, const ReadingNoise& noise) const
{
    const bool upper = block.kind == BlockKind::atLeast;
    const bool onFlat = m_rest.flatL > 0.0;
    const double band = bandL(block);
    // A float that no longer shivers is stuck; one that does may be held up by a
    // slow error, a worse curve or a worn arm.
    const bool dead = !onFlat && !upper && m_rest.moving > 2
        && m_rest.sumL2 < kDead * m_rest.sloshL2 * m_rest.moving;
    const double free = upper ? m_rest.allowedL : std::max(m_rest.allowedL, m_rest.flatL);
    const double slow = std::numbers::sqrt2   // a flat piece is what the curve does not know
        * std::hypot(noise.slowErrorSdL(), onFlat ? 0.0 : block.curveSdL);
    return std::max(kStillBurnt * m_rangeL, free + band) + (dead ? band : kStillSds * slow);
}

double Stillness::surelyBurntL(const Moment& now, bool upper, bool guessed) const
{
    const FuelFilter& then = m_rest.since.filter;
    const double sd = std::sqrt(then.scaleVariance()) / std::max(0.1, then.scale());
    const double sure = std::max(0.4, 1.0 - (upper ? 1.5 : 1.0) * sd);
    // A stuck reading teaches a guessed source that nothing is burnt.
    const double scale = guessed ? std::max(1.0, then.scale()) : then.scale();
    return sure * (scale * (now.usedL - m_rest.since.usedL));
}

} // namespace undermark
