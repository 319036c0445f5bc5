// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/level_block.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace undermark {

namespace {

constexpr double kEnd = 0.005;    // of the range: a reading this near an end is at the end
constexpr double kNear = 0.25;    // of the range: five times a usual slosh of 5 %
constexpr double kNearEnd = 0.12; // the same for a reading at the very end: more likely none

} // namespace

LevelBlock::LevelBlock(Volume lowest, Volume highest)
    : m_lowL(lowest.litres()), m_rangeL((highest - lowest).litres()), m_binsPerL(kBins / m_rangeL)
{
    assert(m_rangeL > 0.0);
}

int LevelBlock::binOf(double levelL) const
{
    const double position = (levelL - m_lowL) * m_binsPerL;
    return static_cast<int>(std::clamp(position, 0.0, kBins - 1.0));
}

void LevelBlock::add(double timeS, const LevelObservation& observation)
{
    if (m_now.readings > 0 && timeS != m_now.timeS)
        closeInstant();
    m_now.timeS = timeS;
    ++m_now.readings;
    if (observation.kind == ReadingKind::tooLow) {
        ++m_now.low;
        return;
    }
    if (observation.kind == ReadingKind::tooHigh) {
        ++m_now.high;
        return;
    }
    const double level = observation.level.mean.litres();
    const double place = (level - m_lowL) / m_rangeL;
    m_now.curveSdSum += observation.level.sd.litres();
    m_flatL = std::max(m_flatL, observation.flat.litres());
    m_now.atMost += observation.kind == ReadingKind::atMost;
    m_now.atLeast += observation.kind == ReadingKind::atLeast;
    if (place < kEnd || place > 1.0 - kEnd) {
        ++m_now.atEnd;
        m_now.endSum += level;
    } else {
        ++m_now.inside;
        m_now.insideSum += level;
    }
}

void LevelBlock::addLevel(double levelL)
{
    Bin& bin = m_bins[static_cast<std::size_t>(binOf(levelL))];
    const double above = levelL - m_lowL;
    ++bin.count;
    bin.sum += above;
    bin.squares += above * above;
    ++m_level;
}

void LevelBlock::closeInstant()
{
    if (m_instants++ == 0)
        m_firstS = m_now.timeS;
    m_lastS = m_now.timeS;
    const int seen = m_now.inside + m_now.atEnd;
    if (seen > 0) {
        // Readings at an end beside others inside are a contact falling out.
        const double level = m_now.inside > 0 ? m_now.insideSum / m_now.inside
                                              : m_now.endSum / m_now.atEnd;
        const bool apart = m_now.inside > 0 && m_now.atEnd > 0
            && std::abs(level - m_now.endSum / m_now.atEnd) > kNear * m_rangeL;
        m_mixed += apart || m_now.low + m_now.high > 0;
        m_atMost += 2 * m_now.atMost > seen;
        m_atLeast += 2 * m_now.atLeast > seen;
        m_curveSdSum += m_now.curveSdSum / seen;
        addLevel(level);
    } else if (m_now.low >= m_now.high) {
        ++m_low;
    } else {
        ++m_high;
    }
    m_now = Now{};
}

int LevelBlock::medianBin() const
{
    int below = 0;
    for (int i = 0; i < kBins; ++i) {
        below += m_bins[static_cast<std::size_t>(i)].count;
        if (2 * below >= m_level)
            return i;
    }
    return kBins - 1;
}

// The mean of all instants near the median one.
void LevelBlock::sumUp(BlockSummary& out) const
{
    const int median = medianBin();
    const int reach = static_cast<int>(kNear * kBins);
    const int endReach = static_cast<int>(kNearEnd * kBins);
    int used = 0, outside = m_mixed + m_low + m_high;
    double sum = 0.0, squares = 0.0;
    for (int i = 0; i < kBins; ++i) {
        const Bin& bin = m_bins[static_cast<std::size_t>(i)];
        const bool end = i == 0 || i == kBins - 1;
        if (std::abs(i - median) <= (end ? endReach : reach)) {
            used += bin.count;
            sum += bin.sum;
            squares += bin.squares;
        } else if (end && std::abs(i - median) > reach) {
            outside += bin.count;
        }
    }
    const double mean = sum / used;
    out.levelL = m_lowL + mean;
    out.sdL = std::sqrt(std::max(0.0, squares / used - mean * mean));
    out.flatL = m_flatL;
    out.curveSdL = m_curveSdSum / m_level;
    out.atStopShare = double(m_atMost + m_atLeast) / m_level;
    out.outlierShare = std::min(1.0, double(outside) / m_instants);
}

BlockKind LevelBlock::kind() const
{
    if (2 * m_low > m_instants)
        return BlockKind::tooLow;
    if (2 * m_high > m_instants)
        return BlockKind::tooHigh;
    if (m_level == 0)
        return BlockKind::empty;
    if (2 * m_atMost > m_level)
        return BlockKind::atMost;
    return 2 * m_atLeast > m_level ? BlockKind::atLeast : BlockKind::exact;
}

BlockSummary LevelBlock::take()
{
    if (m_now.readings > 0)
        closeInstant();
    BlockSummary out;
    out.kind = kind();
    out.startS = m_firstS;
    out.seconds = m_lastS - m_firstS;
    out.instants = m_instants;
    if (m_level > 0) {
        sumUp(out);
        m_bins.fill(Bin{});
    }
    m_instants = m_level = m_atMost = m_atLeast = m_low = m_high = m_mixed = 0;
    m_curveSdSum = m_flatL = 0.0;
    return out;
}

} // namespace undermark
