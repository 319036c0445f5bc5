// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fuel in other tanks of the car, as far as it explains what this one's sender shows: a rise
// that nobody poured (a transfer pump), a level that stands while fuel is burnt (a tap).
//
// A transfer pump is slow beside a nozzle. Small electric ones move 1 to 4 L/min, the fastest
// that are built into cars twice that; a nozzle gives 10 to 40, a can some 5 to 10 (common
// practice, no source). So at a halt, where fuel may be poured, 4 L/min are the most, on the way
// 8, and one and a half times the pump's own rate where that is stated.
#pragma once

#include "engine/tracking/level_block.h"
#include "engine/tracking/tracker_types.h"

namespace undermark {

class OtherFuel {
public:
    OtherFuel(const OtherTanks& tanks, Seconds block) : m_tanks(tanks), m_blockS(block.count()) {}

    struct Rise {
        double litres = 0.0;
        double fastestL = 0.0;  // the most from one block to the next
        double sdL = 0.0;       // of a block's reading
        bool onTheWay = false;  // the car drove: nobody poured
    };
    // Whether it may have been pumped over.
    bool cameOver(const Rise& rise) const;
    // Whether so much may have been burnt from another tank.
    bool mayHaveGiven(double litres) const { return m_tanks.hold > Volume() && litres <= m_tanks.hold.litres(); }
    // So much has left them: from here on they hold less.
    void give(double litres);
    // One was filled: they may hold what they did at the start.
    void refill(const OtherTanks& tanks) { m_tanks = tanks; }

private:
    OtherTanks m_tanks;
    double m_blockS;
};

// While another tank feeds: the level that stands meanwhile, and when it falls again.
class RestingLevel {
public:
    explicit RestingLevel(double rangeL) : m_rangeL(rangeL) {}

    bool active() const { return m_active; }
    void begin(double levelL);
    void end() { m_active = false; }
    // True once the reading has fallen by 3 % of the range, averaged over some minutes: a hill
    // tilts it by half of that and less.
    bool falls(const BlockSummary& block);

private:
    double m_rangeL;
    bool m_active = false;
    double m_levelL = 0.0, m_fallenL = 0.0;
};

} // namespace undermark
