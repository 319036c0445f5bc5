// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/signal_watch.h"

namespace undermark {

namespace {

constexpr double kDropoutS = 60.0;
constexpr int kOutsideBlocks = 2;
constexpr double kContactShare = 0.1;    // of the instants of a block
constexpr int kContactBlocks = 4;
constexpr int kContactMemory = 20;       // blocks

} // namespace

bool SilenceWatch::silent(const BlockDrive& past)
{
    if (m_silentS == 0.0)
        m_onsetS = past.startS;
    m_silentS += past.seconds;
    if (m_said || m_silentS < kDropoutS)
        return false;
    m_said = true;
    return true;
}

bool SilenceWatch::heard()
{
    const bool over = m_said;
    m_silentS = 0.0;
    m_said = false;
    return over;
}

bool RangeWatch::outside(const BlockSummary& block)
{
    if (m_blocks++ == 0)
        m_onsetS = block.startS;
    return m_blocks >= kOutsideBlocks;
}

ContactWatch::Contact ContactWatch::add(const BlockSummary& block)
{
    if (block.outlierShare > kContactShare) {
        ++m_loose;
        m_since = 0;
    } else if (++m_since > kContactMemory) {
        const bool healed = m_said;
        m_loose = 0;
        m_said = false;
        return healed ? Contact::healed : Contact::none;
    }
    if (m_said || m_loose < kContactBlocks)
        return Contact::none;
    m_said = true;
    return Contact::loose;
}

} // namespace undermark
