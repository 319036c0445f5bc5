// SPDX-License-Identifier: GPL-3.0-or-later
//
// Tanks, floats and displays for the calibration campaign. Everything is invented and
// nothing here knows how the engine thinks of a tank: moulded shapes with steps, lying
// cylinders, boxes with rounded edges, wedges, saddles that communicate, floats on an arm
// or straight in the level, behind a pull-up or not, with stops, play and coarse displays.
#pragma once

#include "engine/calibration/gauge.h"
#include "tests/accuracy/world_tools.h"

#include <array>
#include <cmath>
#include <numbers>
#include <vector>

namespace undermark::test {

enum class TankKind { box, cylinder, wedge, saddle, moulded };
inline constexpr std::array kTankKinds{"box with round edges", "lying cylinder", "wedge", "saddle", "moulded"};

using Four = std::array<double, 4>;

// Area of the tank's surface at a height, 0 to 1.
inline double surface(TankKind kind, double h, double a, double b, const Four& edge, const Four& width)
{
    switch (kind) {
    case TankKind::box: {   // radius of the edges up to half the height
        const double r = 0.02 + 0.48 * a, y = std::min(h, 1.0 - h);
        const double lost = y < r ? r - std::sqrt(r * r - (r - y) * (r - y)) : 0.0;
        return 1.0 - 2.0 * lost * (0.3 + b);
    }
    case TankKind::cylinder:
        return 2.0 * std::sqrt(h * (1.0 - h));
    case TankKind::wedge:
        return 1.0 + 1.6 * (a - 0.5) * (2.0 * h - 1.0);
    case TankKind::saddle: {   // a tunnel takes room from the floor up
        const double tunnel = 0.25 + 0.4 * a, lost = 0.15 + 0.4 * b;
        return 1.0 - lost * std::clamp((tunnel - h) / 0.08 + 0.5, 0.0, 1.0);
    }
    case TankKind::moulded: {
        double total = 0.15;
        for (std::size_t i = 0; i < edge.size(); ++i)
            total += width[i] * std::clamp((h - edge[i]) / 0.1 + 0.5, 0.0, 1.0) * (i % 2 ? -0.5 : 1.0);
        return std::max(0.15, total + 0.6);
    }
    }
    return 1.0;
}

inline Hollow hollow(TankKind kind, Random& random)
{
    const double a = between(random, 0.0, 1.0), b = between(random, 0.0, 1.0);
    Four edge, width;
    for (double& each : edge)
        each = between(random, 0.0, 1.0);
    for (double& each : width)
        each = between(random, 0.3, 1.0);
    return Hollow([&](double h) { return surface(kind, h, a, b, edge, width); });
}

// What the display shows for a height of fuel.
class WorldSender {
public:
    explicit WorldSender(Random& random)
        : lowStop(chance(random, 0.5) ? between(random, 0.0, 0.07) : 0.0),
          highStop(chance(random, 0.6) ? between(random, 0.86, 1.0) : 1.0),
          play(chance(random, 0.8) ? between(random, 0.0, 0.0125) : 0.0),
          m_isArm(chance(random, 0.6)), m_pivot(between(random, 0.2, 0.8)),
          m_reach(between(random, 1.08, 1.6) * std::max(m_pivot, 1.0 - m_pivot)),
          m_pullUp(chance(random, 0.5) ? between(random, 0.3, 3.0) : 0.0), m_falls(chance(random, 0.5)),
          m_step(std::array{0.001, 0.005, 0.01, 0.01, 0.02}[random() % 5]),
          m_noise(between(random, 0.0003, 0.003))
    {
    }

    const double lowStop, highStop, play;   // of the height

    // One reading; `direction`: +1 while pouring, -1 on the way down; `slosh`: of the height.
    double read(double height, int direction, Random& random, double slosh = 0.0) const
    {
        const double arm = std::clamp(height - direction * play + slosh, lowStop, highStop);
        return std::round((volts(arm) + normal(random, m_noise)) / m_step) * m_step;
    }
    double volts(double arm) const
    {
        const double end0 = turn(0.0), end1 = turn(1.0);
        double share = (turn(arm) - end0) / (end1 - end0);
        if (m_falls)
            share = 1.0 - share;
        return m_pullUp > 0.0 ? 0.5 + 4.0 * share * (1.0 + m_pullUp) / (share + m_pullUp) : 0.5 + 4.0 * share;
    }
    double step() const { return m_step; }
    double noise() const { return m_noise; }

private:
    double turn(double arm) const { return m_isArm ? std::asin((arm - m_pivot) / m_reach) : arm; }
    bool m_isArm;
    double m_pivot, m_reach, m_pullUp;   // pull-up as a multiple of the sender's range
    bool m_falls;
    double m_step, m_noise;              // of about 4 V
};

// One car: its tank calibrated with so many points.
class WorldCar {
public:
    WorldCar(TankKind kind, Random& random)
        : m_tank(hollow(kind, random)), sender(random), capacityL(std::exp(between(random, std::log(8.0), std::log(320.0)))),
          fullShare(m_tank.share(between(random, 0.96, 1.0)))
    {
    }

    double heightAt(double litres) const { return m_tank.height(litres / capacityL); }
    double litresAt(double height) const { return capacityL * m_tank.share(height); }
    double fullL() const { return capacityL * fullShare; }

    // Drained, a base, and the rest in nearly even steps; what was noted, with the pump
    // half a per cent out for each pour. `down`: also three readings on the way down.
    std::vector<CalibrationPoint> calibrate(int count, bool down, Random& random)
    {
        std::vector<double> litres{0.0};
        baseL = count > 2 ? fullL() * between(random, 0.06, 0.13) : fullL();
        for (int i = 1; i < count; ++i) {
            const double even = baseL + (fullL() - baseL) * (i - 1) / std::max(1, count - 2);
            const double jitter = i > 1 && i + 1 < count ? between(random, -0.25, 0.25) * (fullL() - baseL) / (count - 2) : 0.0;
            litres.push_back(even + jitter);
        }
        std::vector<CalibrationPoint> points;
        double noted = 0.0, before = 0.0;
        for (const double level : litres) {
            noted += (level - before) * (1.0 + normal(random, 0.005));
            before = level;
            points.push_back(point(noted, heightAt(level), +1, random));
        }
        for (int i = 1; down && i <= 3; ++i) {
            const double level = fullL() * (1.0 - 0.22 * i);
            noted += (level - before) * (1.0 + normal(random, 0.005));
            before = level;
            points.push_back(point(std::max(0.0, noted), heightAt(level), -1, random));
        }
        return points;
    }

    // Litres when, on the way down, the display is back at what it showed over the base.
    double zeroOnTheWayDownL() const
    {
        const double arm = std::clamp(heightAt(baseL) - sender.play, sender.lowStop, sender.highStop);
        return arm <= sender.lowStop ? baseL : litresAt(std::max(0.0, arm - sender.play));
    }

private:
    CalibrationPoint point(double noted, double height, int direction, Random& random) const
    {
        CalibrationPoint out;
        out.added = Volume::fromLitres(noted);
        out.readings = 1 + int(random() % 8);
        double sum = 0.0;
        for (int i = 0; i < out.readings; ++i)
            sum += sender.read(height, direction, random);
        out.signal = Signal::of(sum / out.readings);
        if (out.readings > 2)
            out.signalSd = Signal::of(std::max(sender.noise(), sender.step() / 4.0));
        return out;
    }

    Hollow m_tank;

public:
    WorldSender sender;
    double capacityL, fullShare, baseL = 0.0;
};

} // namespace undermark::test
