// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/block_reading.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kMostNis = 16.0;        // four standard deviations, squared
constexpr double kLeastBeyondStop = 0.02;   // of the range: nobody knows it closer

} // namespace

Innovation compare(const FuelFilter& filter, const BlockSummary& block, double noiseL2)
{
    Innovation seen = filter.innovation(block.levelL, noiseL2);
    if (block.kind == BlockKind::atLeast)
        seen.residualL = std::max(0.0, seen.residualL);
    else if (block.kind == BlockKind::atMost)
        seen.residualL = std::min(0.0, seen.residualL);
    else   // on a flat piece the level may lie below by as much as that is long
        seen.residualL -= std::clamp(seen.residualL, 0.0, block.flatL);
    return seen;
}

void takeExact(FuelFilter& filter, const BlockSummary& block, const Innovation& seen,
               double noiseL2)
{
    const double excess = seen.nis() > kMostNis
        ? seen.residualL * seen.residualL / kMostNis - seen.varianceL2 : 0.0;
    filter.correct(block.levelL, noiseL2 + excess);
}

void takeFlat(FuelFilter& filter, const BlockSummary& block, const Innovation& seen,
              double noiseL2)
{
    if (seen.residualL > 0.0)
        filter.pull(filter.expectedReadingL() + seen.residualL, noiseL2);
    else if (seen.residualL < 0.0)
        filter.correct(block.levelL, noiseL2);
}

void takeBound(FuelFilter& filter, const BlockSummary& block, double noiseL2)
{
    const double over = block.levelL - filter.expectedReadingL();
    if (block.kind == BlockKind::atLeast ? over > 0.0 : over < 0.0)
        filter.pull(block.levelL, noiseL2 + block.curveSdL * block.curveSdL);
}

void restart(FuelFilter& filter, const BlockSummary& block, double noiseL2, double slowErrorSdL,
             double farEndL, double rangeL)
{
    const double slow2 = std::pow(slowErrorSdL, 2);
    if (block.kind == BlockKind::exact) {
        const double flat2 = block.flatL * block.flatL;   // uniform, and said once
        filter.restartLevel(block.levelL, noiseL2 + flat2 / 12.0, slow2);
        return;
    }
    const double width = std::max(std::abs(farEndL - block.levelL), kLeastBeyondStop * rangeL);
    const double middle = block.levelL + (block.kind == BlockKind::atLeast ? 0.5 : -0.5) * width;
    filter.restartLevel(middle, width * width / 12.0, slow2);   // anywhere beyond the stop
}

} // namespace undermark
