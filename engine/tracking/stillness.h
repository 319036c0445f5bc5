// SPDX-License-Identifier: GPL-3.0-or-later
//
// A float that stands still while fuel is burnt is stuck: on a stop, where it rests
// rightly for a while, as well as anywhere else. What it need not move for is taken
// off: a flat piece of the curve, fuel above the upper stop, the readings' slow error.
#pragma once

#include "engine/tracking/level_block.h"
#include "engine/tracking/moment.h"
#include "engine/tracking/reading_noise.h"

namespace undermark {

class Stillness {
public:
    // Ends of the curve, litres.
    Stillness(double lowestL, double highestL)
        : m_highestL(highestL), m_rangeL(highestL - lowestL)
    {
    }

    // True where more was burnt than can be while the reading truly stands still.
    // `guessed`: the source's count is a guess, see FuelUse.
    bool add(const BlockSummary& block, bool moving, const Moment& now, const ReadingNoise& noise,
             bool guessed);
    void forget() { m_rest = Rest{}; }

    const Moment& since() const { return m_rest.since; }

private:
    struct Rest {
        bool set = false;
        double levelL = 0.0;
        double allowedL = 0.0;               // litres it need not move for
        double flatL = 0.0;                  // largest flat piece met meanwhile
        double sloshL2 = 0.0, sumL2 = 0.0;   // of one reading: before, since
        int moving = 0;                      // blocks in the sum
        int off = 0;                         // blocks in a row beside the level
        Moment since;
    };

    bool leaves(const BlockSummary& block);
    void restart(const BlockSummary& block, const Moment& now, const ReadingNoise& noise);
    double neededL(const BlockSummary& block, const ReadingNoise& noise) const;
    double surelyBurntL(const Moment& now, bool upper, bool guessed) const;
    double bandL(const BlockSummary& block) const;

    double m_highestL, m_rangeL;
    Rest m_rest;
};

} // namespace undermark
