// SPDX-License-Identifier: GPL-3.0-or-later
//
// A rise of the reading within one halt. The car has not moved, so tilt and slow
// errors are the same before and after, and a fill shows that is too small to stand
// out of them: 4 % of the range. It rises from a steady reading to a steady reading: a
// gauge that still settles from the drive, or from being switched on, has none below.
#pragma once

#include "engine/tracking/block_drive.h"
#include "engine/tracking/level_block.h"

namespace undermark {

class StandingRise {
public:
    enum class Rise { none, flowing, risen };
    struct Seen {
        Rise verdict = Rise::none;
        double litres = 0.0, sdL = 0.0, onsetS = 0.0;   // where risen
        double fastestL = 0.0;                          // the most from one block to the next
    };

    explicit StandingRise(double rangeL) : m_rangeL(rangeL) {}

    // While it flows the block is to be held back.
    Seen add(const BlockSummary& block, const BlockDrive& past);
    // What rose so far is accounted for.
    void forget() { m_halt = Halt{}; }

private:
    struct Halt {
        bool begun = false, steady = false, rising = false;
        double steadyL = 0.0;             // the last steady reading
        double lastL = 0.0, onsetS = 0.0;
        double fastestL = 0.0;            // since the onset
    };

    double m_rangeL;
    Halt m_halt;
};

} // namespace undermark
