// SPDX-License-Identifier: GPL-3.0-or-later
//
// An invented car of two tanks, made without the program's own formulas: what its tanks hold is
// known to the litre, a person with a jug calibrated them, and it is filled and driven. The
// engine is not asked anything here.
#pragma once

#include "engine/logbook/entry.h"
#include "tests/accuracy/world_tools.h"

namespace undermark::test {

// One tank as it is; litres in it count from empty.
class TrueTank {
public:
    TrueTank(Random& random, double clickL, double zeroL)
        : m_hollow([bulge = between(random, -0.5, 0.5), tilt = between(random, -0.3, 0.3)](double h) {
              return 1.0 + bulge * (4 * h * (1 - h) - 0.5) + tilt * (h - 0.5);
          }),
          m_jug(1 + normal(random, 0.003)), m_highL(between(random, 0.0, 0.01) * clickL), m_zeroL(zeroL)
    {
        const double share = std::pow(clickL / 50, 2.0 / 3);
        m_leftL = std::max(0.1, share * (1.5 + normal(random, 0.7)));
        m_unusableL = std::max(0.0, m_leftL + share * normal(random, 0.8));
        m_fullL = clickL + m_leftL;
    }

    double fullL() const { return m_fullL; }
    double unusableL() const { return m_unusableL; }
    double height(double litres) const { return m_hollow.height(std::clamp(litres / m_fullL, 0.0, 1.0)); }
    double litresAt(double height) const { return m_fullL * m_hollow.share(height); }

    // Of the sender on the way down, at rest; it reads a little high there.
    double read(Random& random, double litres) const
    {
        return volts(std::min(m_fullL, litres + m_highL)) + normal(random, 0.006);
    }

    // Drained, a base to the zero mark, then ten litres at a time or less, to the click.
    Calibration calibrated(Random& random, Instant time) const
    {
        Calibration calibration;
        calibration.time = time;
        calibration.zeroMark = Volume::fromLitres(m_zeroL);
        const double inAll = m_fullL - m_leftL;
        const int steps = 8;
        for (int i = 0; i <= steps; ++i) {
            const double poured = i == 0 ? 0.0 : m_zeroL + (inAll - m_zeroL) * (i - 1) / (steps - 1);
            CalibrationPoint point;
            point.added = Volume::fromLitres(poured * m_jug);
            point.signal = Signal::of(volts(m_leftL + poured) + normal(random, 0.003));
            point.signalSd = Signal::of(0.006);
            point.readings = 4;
            calibration.points.push_back(point);
        }
        return calibration;
    }

private:
    double volts(double litres) const { return 0.5 + 3.0 * height(litres); }

    Hollow m_hollow;
    double m_jug, m_highL, m_zeroL;
    double m_leftL = 0, m_unusableL = 0, m_fullL = 0;
};

class TwoTankCar {
public:
    TwoTankCar(std::uint64_t seed, TankFeed feed)
        : m_random(seed), m_feed(feed), m_own(m_random, between(m_random, 40, 60), 7),
          m_other(m_random, between(m_random, 20, 40), 4), m_rate(between(m_random, 0.06, 0.12)),
          m_meter(1 + normal(m_random, 0.003))
    {
        m_log.vehicle.value.name = "Two-tank tourer";
        m_log.vehicle.value.capacity = Volume::fromLitres(std::round(m_own.fullL()));
        m_log.modes.push_back({{}, {}, Mode{"open-road", {}}});
        ExtraTank other;
        other.name = "aux";
        other.capacity = Volume::fromLitres(std::round(m_other.fullL()));
        other.feed = feed;
        m_log.tanks.push_back({{}, {}, other});
        Calibration ofOwn = m_own.calibrated(m_random, day(0)), ofOther = m_other.calibrated(m_random, day(0));
        ofOther.tank = "aux";
        m_log.calibrations = {{{"1"}, {}, ofOwn}, {{"2"}, {}, ofOther}};
        m_log.calibration = m_log.calibrations.front();
        m_ownL = m_own.fullL();
        m_otherL = m_other.fullL();
        for (int i = 0; i < 7; ++i) {
            drive(i == 0 ? 0.0 : between(m_random, 0.3, 0.7) * usableL() / m_rate);
            fillBoth(i);
        }
    }

    const VehicleLog& log() const { return m_log; }
    double odometerKm() const { return m_odometerKm; }
    double usableL() const { return m_ownL + m_otherL - m_own.unusableL() - m_other.unusableL(); }
    double ownVolts() { return m_own.read(m_random, m_ownL); }
    double otherVolts() { return m_other.read(m_random, m_otherL); }

    // Where the fuel comes from on the way is the car's affair: a tap turned at any time, two
    // tanks that stand level, or one that is pumped over whenever it suits.
    void drive(double km)
    {
        const double burnt = burn(km);
        m_odometerKm += km;
        const double left = m_ownL + m_otherL - burnt;
        if (m_feed == TankFeed::shared) {
            double low = 0, high = 1;
            for (int i = 0; i < 50; ++i) {
                const double h = 0.5 * (low + high);
                (m_own.litresAt(h) + m_other.litresAt(h) < left ? low : high) = h;
            }
            m_ownL = m_own.litresAt(low);
        } else {
            // Neither gives more than it has, nor takes more than it holds.
            const double least = std::max(m_own.unusableL(), left - m_otherL);
            const double most = std::min(m_feed == TankFeed::pumpedOver ? m_own.fullL() : m_ownL,
                                         left - m_other.unusableL());
            m_ownL = between(m_random, std::min(least, most), most);
        }
        m_otherL = left - m_ownL;
    }

    // Until neither gives any more.
    double kmToDry() { return usableL() / (m_rate * m_tankFactor) * (1 + normal(m_random, 0.01)); }

private:
    static Instant day(int n) { return Instant(std::chrono::hours(24 * n)); }

    double burn(double km)
    {
        return std::max(0.0, km * m_rate * m_tankFactor + normal(m_random, 0.02) * std::sqrt(km));
    }

    void fillBoth(int i)
    {
        const double toOwn = m_own.fullL() + normal(m_random, 0.4), toOther = m_other.fullL() + normal(m_random, 0.4);
        Fill fill;
        fill.time = day(5 * i + 10);
        fill.odometer = Distance::fromKm(m_odometerKm);
        fill.volume = Volume::fromLitres(std::max(0.3, toOwn - m_ownL) * m_meter);
        m_log.fills.push_back({{}, {}, fill});
        fill.tank = "aux";
        fill.time += std::chrono::minutes(6);
        fill.odometer.reset();
        fill.volume = Volume::fromLitres(std::max(0.3, toOther - m_otherL) * m_meter);
        m_log.fills.push_back({{}, {}, fill});
        m_ownL = toOwn;
        m_otherL = toOther;
        m_tankFactor = 1 + normal(m_random, 0.04);
    }

    Random m_random;
    TankFeed m_feed;
    TrueTank m_own, m_other;
    double m_rate, m_meter; // L/km; the pumps' scale
    double m_tankFactor = 1.0;
    double m_odometerKm = 20'000;
    double m_ownL = 0, m_otherL = 0;
    VehicleLog m_log;
};

} // namespace undermark::test
