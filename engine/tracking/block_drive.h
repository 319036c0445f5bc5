// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/tracking/fuel_use.h"

namespace undermark {

// What was driven and counted since the last block ended.
struct BlockDrive {
    double startS = 0.0;
    double seconds = 0.0;
    double usedL = 0.0;         // by the source, not scaled
    double elsewhereL = 0.0;    // by the source, burnt from another tank
    double unknownL2 = 0.0;     // variance of what gaps may have burnt besides
    double speedChange = 0.0;   // m/s, up and down added
    long samples = 0;
    bool moved = false;
    bool motionKnown = true;    // every sample had a speed

    void add(const UseStep& step)
    {
        seconds += step.seconds;
        usedL += step.usedL;
        unknownL2 += step.unknownL2;
        speedChange += step.acceleration * step.seconds;
        moved = moved || step.moving;
        ++samples;
        motionKnown = motionKnown && step.motionKnown;
    }
    // Mean of its size, m/s^2.
    double acceleration() const { return seconds > 0.0 ? speedChange / seconds : 0.0; }
};

} // namespace undermark
