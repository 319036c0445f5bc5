// SPDX-License-Identifier: GPL-3.0-or-later
//
// A saddle tank, second by second: the engine draws from one lobe, a jet pump keeps
// emptying the other into it, until it does so no longer. Parts and habits are those
// of simulated_tank.h.
#pragma once

#include "tests/support/simulated_tank.h"

namespace undermark::test {

class SimulatedSaddle {
public:
    explicit SimulatedSaddle(Random& random)
        : pumpLobeL(uniform(random, 22.0, 40.0)), otherLobeL(uniform(random, 15.0, 35.0)),
          m_pumpShape(random), m_otherShape(random), m_pumpSender(random), m_otherSender(random),
          m_rate(uniform(random, 6.0, 12.0)), m_transferLPerS(uniform(random, 0.003, 0.02)),
          m_slosh(uniform(random, 0.004, 0.02))
    {
    }

    const double pumpLobeL, otherLobeL;
    double pumpL = 0.0, otherL = 0.0, km = 0.0;
    bool transfers = true;

    // Pours in equal steps into the pump's lobe, which spills over into the other.
    std::vector<CalibrationPoint> calibrate(int steps)
    {
        std::vector<CalibrationPoint> points;
        for (int i = 0; i <= steps; ++i) {
            fill((pumpLobeL + otherLobeL) * i / steps);
            CalibrationPoint point;
            point.added = Volume::fromLitres(pumpL + otherL);
            point.signal = Signal::of(m_pumpSender.settled(m_pumpShape.height(pumpL / pumpLobeL)));
            point.signal2 = Signal::of(m_otherSender.settled(m_otherShape.height(otherL / otherLobeL)));
            point.readings = 20;
            points.push_back(point);
        }
        return points;
    }

    void fill(double litres)
    {
        pumpL = std::min(litres, pumpLobeL);
        otherL = std::max(0.0, litres - pumpLobeL);
        m_pumpSender.settle(m_pumpShape.height(pumpL / pumpLobeL));
        m_otherSender.settle(m_otherShape.height(otherL / otherLobeL));
    }

    struct Second {
        Signal pump, other;
        Speed speed;
    };
    Second step(Random& random)
    {
        const double kmh = m_cycle.step(random);
        km += kmh / 3600.0;
        pumpL -= kmh > 0.0 ? kmh / 3600.0 * m_rate / 100.0 : 0.8 / 3600.0;
        if (transfers) {
            const double moved = std::min({m_transferLPerS, otherL, pumpLobeL - pumpL});
            pumpL += moved;
            otherL -= moved;
        }
        // Both floats swing, with noise that lasts some seconds.
        for (double* swing : {&m_pumpSwing, &m_otherSwing})
            *swing += -*swing / 4.0 + gauss(random, kmh > 3.0 ? m_slosh : 0.0005);
        return {Signal::of(m_pumpSender.read(m_pumpShape.height(pumpL / pumpLobeL) + m_pumpSwing, random)),
                Signal::of(m_otherSender.read(m_otherShape.height(otherL / otherLobeL) + m_otherSwing, random)),
                Speed::fromKmPerHour(std::round(kmh))};
    }

private:
    UnevenTank m_pumpShape, m_otherShape;
    SimulatedSender m_pumpSender, m_otherSender;
    DriveCycle m_cycle;
    double m_rate, m_transferLPerS, m_slosh;
    double m_pumpSwing = 0.0, m_otherSwing = 0.0;
};

} // namespace undermark::test
