// SPDX-License-Identifier: GPL-3.0-or-later
//
// Readings that lie far off the count are held back until it is clear what they are:
// fuel that went in, a wire, a reading that shifted, or nothing (they come back).
#pragma once

#include "engine/tracking/block_drive.h"
#include "engine/tracking/level_block.h"
#include "engine/tracking/moment.h"
#include "engine/tracking/tracker_types.h"

namespace undermark {

class ReadingJump {
public:
    enum class Verdict {
        none,           // the block is as expected
        waiting,        // held back, not clear yet
        fuel,           // it rose where fuel may have gone in
        taken,          // it fell while nobody watched: the reading counts
        open,           // it went to the end where a broken wire puts it
        shortCircuit,   // ... a short
        shifted,        // it stays off
    };
    // What may have happened while or just before the readings left the count.
    struct Chance {
        bool afterGap = false;    // nobody watched for ten minutes
        bool ofFuel = false;
    };

    explicit ReadingJump(const TrackerSettings& settings);

    // `seen`: the block against the count, `noiseL2` its variance.
    Verdict add(const BlockSummary& block, const Innovation& seen, double noiseL2,
                const BlockDrive& past, const Moment& now, const Chance& chance);
    void forget() { m_held = Held{}; }

    bool falls() const { return m_held.sign < 0; }
    double offsetL() const { return m_offsetL; }         // of the held readings' mean
    // The most that a held reading stands higher against the count than the one before it.
    double fastestL() const { return m_held.fastestL; }
    const Moment& before() const { return m_held.before; }   // the first block held back

private:
    struct Held {                 // blocks in a row, same sign
        int sign = 0, blocks = 0, steady = 0;
        double lastL = 0.0, sumL = 0.0, fastestL = 0.0;
        Chance chance;
        Moment before;
    };

    Verdict verdict(const BlockSummary& block, bool moved) const;
    bool atEnd(const BlockSummary& block) const;

    double m_lowestL, m_highestL, m_rangeL;
    bool m_signalRises;
    double m_offsetL = 0.0;
    double m_residualL = 0.0;     // of the last block
    Held m_held;
};

} // namespace undermark
