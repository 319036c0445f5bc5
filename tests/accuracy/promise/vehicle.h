// SPDX-License-Identifier: GPL-3.0-or-later
//
// The vehicles of the promise campaign, as metal: tank, float, pump and display. Everything
// is invented, and wider than what the engine takes for granted: from a kart of 6 L to a
// truck of 400, tanks with spills, steps and tunnels, floats that rest on stops, stick and
// wear their track in steps, displays of 2 %.
#pragma once

#include "engine/base/records.h"
#include "tests/accuracy/world_tools.h"

#include <cmath>

namespace undermark::test {

enum class Kind { car, thirsty, truck, motorcycle, kart };
inline constexpr std::array kKinds{"car", "thirsty V8, pickup", "truck", "motorcycle", "kart"};

// What people drive; capacity and rate are drawn apart from each other.
struct KindRanges {
    double leastL, mostL, leastLPer100Km, mostLPer100Km, tripKm, tripsPerDay;
};
inline constexpr std::array kKindRanges{KindRanges{34, 75, 4.2, 10.5, 11, 2.6},
                                        KindRanges{55, 120, 12, 25, 14, 1.6},
                                        KindRanges{180, 400, 20, 40, 140, 1.2},
                                        KindRanges{8, 21, 2.8, 7.5, 28, 0.8},
                                        KindRanges{4.5, 9.5, 9, 26, 6, 3.0}};

Hollow tankOf(Kind kind, Random& random);

// A float on an arm, its track and the display behind it. Heights are shares of the tank's.
class FloatSender {
public:
    explicit FloatSender(Random& random);

    // `direction`: +1 while pouring, -1 on the way down; `error`: of the height, by slosh
    // or a slope.
    double shows(double height, int direction, double error, Random& random) const;
    // Height of the float when it came up to `height`, and of fuel when, on the way down,
    // the float is back there.
    double backDownAt(double height) const;
    double step() const { return m_step; }
    double sloshing() const { return m_slosh; }
    double slope() const { return m_slope; }

private:
    double track(double arm) const;

    double m_lowStop, m_highStop, m_play;
    double m_segments;                     // contacts of the track; 0: a plain one
    double m_taper, m_pullUp;              // of the track; as a multiple of its resistance
    double m_offsetSd;                     // by ground and supply, of the span, by occasion
    double m_empty, m_full, m_step;        // as displayed
    double m_slosh, m_slope;               // sd of one look, moving and parked
};

// Litres are all that is in the tank, to the last drop.
class Machine {
public:
    Machine(Kind kind, Random& random);

    double heightAt(double litres) const { return m_tank.height(std::clamp(litres / m_brimL, 0.0, 1.0)); }
    double litresAt(double height) const { return m_brimL * m_tank.share(height); }
    double reading(double litres, bool moving, Random& random) const;
    // Litres at the click, this time.
    double click(Random& random) const;
    // Litres at which it starves, this time.
    double starves(Random& random) const;
    // Errors of small amounts grow with the tank's floor.
    double floorScale() const { return std::pow(clickL / 50.0, 2.0 / 3.0); }

    // Drained, a base called zero, `points` in all; noted as the owner's can and the pump
    // count. With two points there is no row for drained.
    Calibration calibrate(int points, Random& random);

    Kind kind;
    FloatSender sender;
    double clickL = 0.0, leftL = 0.0, unusableL = 0.0;
    double zeroL = 0.0;   // where the needle stands at zero on the way down
    double clickSdL = 0.0;

private:
    CalibrationPoint point(double notedL, double litres, bool sdNoted, Random& random) const;
    Hollow m_tank;
    double m_brimL = 0.0;
};

} // namespace undermark::test
