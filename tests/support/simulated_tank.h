// SPDX-License-Identifier: GPL-3.0-or-later
//
// A car, its tank and its sender, second by second, for campaigns and tests.
// Deliberately not the tracker's own model: a float that swings at 0.5 to 1 Hz,
// tilt on hills and in bends, play in the float's arm, a resistive circuit, a
// converter's steps, damping, a tank of uneven shape, consumption that drifts.
// Everything is invented; nothing is fitted to one car. Header only, so that
// accuracy programs and tests use it alike.
#pragma once

#include "engine/base/records.h"
#include "engine/tracking/tracker_types.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>
#include <vector>

namespace undermark::test {

using Random = std::mt19937_64;

inline double uniform(Random& random, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}
inline double gauss(Random& random, double sd = 1.0)
{
    return std::normal_distribution<double>(0.0, sd)(random);
}

// Height of the fuel (0 to 1) for its share of the tank: unit width with humps
// and a floor that is narrower or wider than the roof.
class UnevenTank {
public:
    explicit UnevenTank(Random& random)
    {
        const double hump = uniform(random, -0.35, 0.35), lean = uniform(random, -0.3, 0.3);
        const double turns = uniform(random, 0.7, 2.0), phase = uniform(random, 0.0, 6.28);
        double sum = 0.0;
        for (std::size_t i = 0; i < m_share.size(); ++i) {
            const double h = (i + 0.5) / (m_share.size() - 1.0);
            m_share[i] = sum;
            sum += 1.0 + hump * std::sin(2.0 * std::numbers::pi * turns * h + phase)
                + lean * (h - 0.5);
        }
        for (double& share : m_share)
            share /= m_share.back();
    }

    double height(double share) const
    {
        const double s = std::clamp(share, 0.0, 1.0);
        const auto at = std::upper_bound(m_share.begin() + 1, m_share.end() - 1, s);
        const auto i = static_cast<std::size_t>(at - m_share.begin());
        return (double(i - 1) + (s - m_share[i - 1]) / (m_share[i] - m_share[i - 1]))
            / (m_share.size() - 1.0);
    }

private:
    std::array<double, 65> m_share{};
};

enum class SimulatedFault {
    none, stuck, open, shortCircuit, offsetJump, dropout, intermittent, sourceScale,
};

// Float, arm, circuit and gauge. Signal in volts behind a pull-up.
class SimulatedSender {
public:
    explicit SimulatedSender(Random& random)
        : m_lowStop(uniform(random, 0.0, 0.05)), m_highStop(uniform(random, 0.90, 1.0)),
          m_play(uniform(random, 0.0, 0.012)), m_falls(uniform(random, 0, 1) < 0.5),
          m_step(5.0 / (uniform(random, 0, 1) < 0.5 ? 1023.0 : 255.0)),
          m_noise(uniform(random, 0.0005, 0.006)),
          m_dampS(std::array{0.0, 0.0, 5.0, 20.0, 45.0}[random() % 5])
    {
    }

    // Puts the float where it settles, without play or lag.
    void settle(double height)
    {
        m_arm = std::clamp(height, m_lowStop, m_highStop);
        m_shown = volts(m_arm);
    }

    double read(double height, Random& random)
    {
        const double wanted = std::clamp(height, m_lowStop, m_highStop);
        m_arm = std::clamp(m_arm, wanted - m_play, wanted + m_play);
        const double now = volts(m_stuckAt ? *m_stuckAt : m_arm) + m_offset;
        m_shown += (now - m_shown) * (m_dampS > 0.0 ? 1.0 - std::exp(-1.0 / m_dampS) : 1.0);
        return std::round((m_shown + gauss(random, m_noise)) / m_step) * m_step;
    }

    // With the tank open for pouring: many readings, at rest.
    double settled(double height)
    {
        return std::round(volts(std::clamp(height, m_lowStop, m_highStop)) / m_step) * m_step;
    }

    void stick() { m_stuckAt = m_arm; }
    void shift(double shareOfSpan) { m_offset = shareOfSpan * std::abs(volts(1.0) - volts(0.0)); }
    double openVolts() const { return 5.0; }
    bool falls() const { return m_falls; }

private:
    double volts(double arm) const
    {
        const double ohm = m_falls ? 180.0 - 170.0 * arm : 10.0 + 170.0 * arm;
        return 5.0 * ohm / (ohm + 220.0);
    }

    double m_lowStop, m_highStop, m_play;
    bool m_falls;
    double m_step, m_noise, m_dampS;
    double m_arm = 0.0, m_shown = 0.0, m_offset = 0.0;
    std::optional<double> m_stuckAt;
};

// Speed in km/h: stretches of town, open road and motorway with halts.
class DriveCycle {
public:
    double step(Random& random)
    {
        if (m_stretchS-- <= 0) {
            m_kind = static_cast<int>(random() % 3);
            m_stretchS = static_cast<int>(uniform(random, 300, 2400));
        }
        if (m_phaseS-- <= 0) {
            const bool halt = m_target > 0.0 && uniform(random, 0, 1) < std::array{.45, .1, .02}[m_kind];
            m_target = halt ? 0.0 : uniform(random, std::array{20., 50., 95.}[m_kind],
                                            std::array{50., 95., 130.}[m_kind]);
            m_phaseS = static_cast<int>(halt ? uniform(random, 8, 80) : uniform(random, 20, 180));
        }
        const double pull = std::clamp(m_target - m_speed, -9.0, 5.0);
        m_acceleration = pull / 3.6;
        return m_speed = std::max(0.0, m_speed + pull);
    }
    double acceleration() const { return m_acceleration; }   // m/s^2
    void halt() { m_speed = m_target = m_acceleration = 0.0; }
    int kind() const { return m_kind; }

private:
    int m_kind = 0, m_stretchS = 0, m_phaseS = 0;
    double m_speed = 0.0, m_target = 0.0, m_acceleration = 0.0;
};

class SimulatedCar {
public:
    explicit SimulatedCar(Random& random)
        : capacityL(uniform(random, 35.0, 75.0)), rate(uniform(random, 5.0, 12.0)),
          m_shape(random), m_sender(random), m_source(static_cast<int>(random() % 4)),
          m_sourceScale(std::exp(gauss(random, m_source == 2 ? 0.06 : 0.03))),
          m_slosh(uniform(random, 0.004, 0.035)), m_omega(uniform(random, 3.1, 6.3)),
          m_decay(uniform(random, 0.03, 0.15)), m_tilt(uniform(random, -0.006, 0.006)),
          m_hillS(uniform(random, 60.0, 240.0))
    {
    }

    const double capacityL;              // since drained, to the first click
    const double rate;                   // L/100 km, on average over all kinds
    double litres = 0.0;                 // since drained
    double km = 0.0;

    // Pours in `steps` equal steps into a drained tank; each with a meter's error.
    std::vector<CalibrationPoint> calibrate(int steps, Random& random)
    {
        std::vector<CalibrationPoint> points;
        double poured = 0.0, told = 0.0;
        for (int i = 0; i <= steps; ++i) {
            CalibrationPoint point;
            point.added = Volume::fromLitres(told);
            point.signal = Signal::of(m_sender.settled(m_shape.height(poured / capacityL)));
            point.readings = 20;
            points.push_back(point);
            const double pour = capacityL / steps;
            poured += pour;
            told += pour * (1.0 + gauss(random, 0.004));
        }
        return points;
    }

    void fill(double newLitres) { litres = newLitres; }
    void settle() { m_sender.settle(m_shape.height(litres / capacityL)); }
    void start(SimulatedFault fault, Random& random)
    {
        m_fault = fault;
        if (fault == SimulatedFault::stuck)
            m_sender.stick();
        if (fault == SimulatedFault::offsetJump)
            m_sender.shift((random() % 2 ? 1 : -1) * uniform(random, 0.15, 0.4));
        if (fault == SimulatedFault::sourceScale)   // a wrong wheel, a pulse counted twice
            m_sourceScale *= random() % 2 ? uniform(random, 2.5, 4.0) : 1.0 / uniform(random, 2.5, 4.0);
    }

    // One second further: driving, or standing with the engine running.
    struct Second {
        std::optional<Signal> signal;
        std::optional<Speed> speed;
        std::optional<FlowRate> fuelRate;
        std::optional<Distance> distance;
    };
    Second step(bool driving, Random& random)
    {
        if (!driving)
            m_cycle.halt();
        const double kmh = driving ? m_cycle.step(random) : 0.0;
        const double usedL = burn(kmh, random);
        Second out;
        out.signal = sense(kmh, random);
        if (m_source != 3)                                   // 3: level alone
            out.speed = Speed::fromKmPerHour(std::round(kmh));
        if (m_source == 1)
            out.distance = Distance::fromKm(km * m_sourceScale);
        if (m_source == 2)
            out.fuelRate = FlowRate::fromLitresPerHour(usedL * 3600.0 * m_sourceScale);
        return out;
    }
    // 0 speed, 1 distance, 2 fuel rate, 3 level alone.
    int source() const { return m_source; }

private:
    double burn(double kmh, Random& random)
    {
        if (m_second++ % 20 == 0) {
            m_drift += -m_drift * 0.005 + gauss(random, 0.008);   // sd .08, over an hour
            m_grade += -m_grade * 20.0 / m_hillS + gauss(random, 2.5 * std::sqrt(40.0 / m_hillS));
            m_bend = kmh > 20.0 ? gauss(random, 0.6) : 0.0;
        }
        const double step = kmh / 3600.0;
        const double load = std::array{1.25, 0.85, 1.0}[m_cycle.kind()] * (1.0 + m_drift)
            * std::clamp(1.0 + 0.12 * m_grade + 0.35 * m_cycle.acceleration(), 0.05, 4.0);
        const double used = kmh > 0.0 ? step * rate / 100.0 * load : 0.8 / 3600.0;
        km += step;
        litres -= used;
        return used;
    }

    std::optional<Signal> sense(double kmh, Random& random)
    {
        // The fuel's swing: an oscillator kicked by the road and by the pedals.
        const double kick = (kmh > 3.0 ? gauss(random, m_slosh) : 0.0)
            + 0.006 * (m_cycle.acceleration() - m_lastAcceleration);
        m_lastAcceleration = m_cycle.acceleration();
        const double keep = std::exp(-m_decay * m_omega);
        const double x = keep * (m_swing * std::cos(m_omega) + m_swingRate * std::sin(m_omega));
        m_swingRate = keep * (m_swingRate * std::cos(m_omega) - m_swing * std::sin(m_omega)) + kick;
        m_swing = x;
        const double height = m_shape.height(litres / capacityL) + m_swing
            + m_tilt * (m_grade + m_bend) + 0.01 * m_cycle.acceleration();
        const double volts = m_sender.read(height, random);
        switch (m_fault) {
        case SimulatedFault::open: return Signal::of(5.0);
        case SimulatedFault::shortCircuit: return Signal::of(0.0);
        case SimulatedFault::dropout: return std::nullopt;
        case SimulatedFault::intermittent:
            return Signal::of(uniform(random, 0, 1) < 0.2 ? 5.0 : volts);
        default: return Signal::of(volts);
        }
    }

    UnevenTank m_shape;
    SimulatedSender m_sender;
    DriveCycle m_cycle;
    int m_source;
    double m_sourceScale;
    double m_slosh, m_omega, m_decay, m_tilt, m_hillS;
    double m_swing = 0.0, m_swingRate = 0.0, m_lastAcceleration = 0.0;
    double m_drift = 0.0, m_grade = 0.0, m_bend = 0.0;
    long m_second = 0;
    SimulatedFault m_fault = SimulatedFault::none;
};

} // namespace undermark::test
