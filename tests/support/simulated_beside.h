// SPDX-License-Identifier: GPL-3.0-or-later
//
// A tank beside that of a simulated car, second by second, with a sender of its own. Parts and
// habits are those of simulated_tank.h: slosh, hills and bends that tilt it, an uneven shape.
#pragma once

#include "tests/support/simulated_tank.h"

namespace undermark::test {

class SimulatedBeside {
public:
    explicit SimulatedBeside(Random& random)
        : capacityL(uniform(random, 18.0, 40.0)), m_shape(random), m_sender(random),
          m_slosh(uniform(random, 0.004, 0.035)), m_tilt(uniform(random, -0.006, 0.006)),
          m_hillS(uniform(random, 60.0, 240.0))
    {
    }

    const double capacityL; // since drained, to the first click
    double litres = 0.0;    // since drained

    // Pours in equal steps into the drained tank, each with a meter's error.
    std::vector<CalibrationPoint> calibrate(int steps, Random& random)
    {
        std::vector<CalibrationPoint> points;
        double told = 0.0;
        for (int i = 0; i <= steps; ++i) {
            CalibrationPoint point;
            point.added = Volume::fromLitres(told);
            point.signal = Signal::of(m_sender.settled(m_shape.height(double(i) / steps)));
            point.readings = 20;
            points.push_back(point);
            told += capacityL / steps * (1.0 + gauss(random, 0.004));
        }
        return points;
    }
    void fill(double newLitres)
    {
        litres = newLitres;
        m_sender.settle(m_shape.height(litres / capacityL));
    }
    // Takes so much out, or what there is; what it was.
    double take(double wanted)
    {
        const double given = std::clamp(wanted, 0.0, litres);
        litres -= given;
        return given;
    }
    // A share of the height, as what shares its level with another has it.
    double height() const { return m_shape.height(litres / capacityL); }

    // One second further.
    Signal read(bool moving, Random& random)
    {
        if (m_second++ % 20 == 0) {
            m_grade += -m_grade * 20.0 / m_hillS + gauss(random, 2.5 * std::sqrt(40.0 / m_hillS));
            m_bend = moving ? gauss(random, 0.6) : 0.0;
        }
        m_swing += -m_swing / 4.0 + gauss(random, moving ? m_slosh : 0.0005);
        return Signal::of(m_sender.read(height() + m_swing + m_tilt * (m_grade + m_bend), random));
    }

private:
    UnevenTank m_shape;
    SimulatedSender m_sender;
    double m_slosh, m_tilt, m_hillS;
    double m_swing = 0.0, m_grade = 0.0, m_bend = 0.0;
    long m_second = 0;
};

} // namespace undermark::test
