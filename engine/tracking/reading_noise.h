// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much one block's mean is worth: slosh, which averages away, and a slow error
// (tilt on a hill, hysteresis), which does not. Cars differ in how much they tilt and
// how fast their fuel comes to rest, so both are learnt: the slosh from the scatter
// within blocks, the slow error and then the blocks' own noise from the innovations.
#pragma once

#include "engine/tracking/block_drive.h"
#include "engine/tracking/level_block.h"

namespace undermark {

class ReadingNoise {
public:
    // `rangeL`: litres between the ends of the curve.
    ReadingNoise(double rangeL, Seconds sloshCorrelation)
        : m_rangeL(rangeL), m_sloshCorrelation(sloshCorrelation)
    {
    }

    // Variance (litres squared) of the block's mean as a measure of level and slow
    // error; learns the slosh from the block.
    double varianceL2(const BlockSummary& block, const BlockDrive& past);
    // Learns from a normalised innovation squared, 1 on average where all is honest.
    void learn(double nis);

    double slowErrorSdL() const;             // as learnt
    double slowErrorSdUnlearntL() const;     // 1.5 % of the range
    double slowErrorKept(double seconds) const;   // share of it that is left after so long
    double movingSloshL2() const { return m_sloshL2[1]; }   // of one reading; 0 unknown
    double recentNis() const { return m_nisRecent; }
    double meanNis() const { return m_nisSum / static_cast<double>(m_nisCount); }
    long nisCount() const { return m_nisCount; }

private:
    double m_rangeL;
    Seconds m_sloshCorrelation;
    double m_sloshL2[2] = {0.0, 0.0};   // of one reading: standing, moving; 0 unknown
    double m_nisSum = 0.0, m_nisRecent = 1.0;
    long m_nisCount = 0;
    double m_share = 1.0;               // of the unlearnt slow error
};

} // namespace undermark
