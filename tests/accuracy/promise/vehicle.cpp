// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/accuracy/promise/vehicle.h"

#include <vector>

namespace undermark::test {

namespace {

double logBetween(Random& random, double low, double high)
{
    return std::exp(between(random, std::log(low), std::log(high)));
}

// 0 below, 1 above, over a band of `width`.
double rise(double h, double at, double width) { return std::clamp((h - at) / width + 0.5, 0.0, 1.0); }

// Sloping walls in plan and side, edges rounded below.
Hollow sloping(Random& random)
{
    const double s = between(random, -0.35, 0.6), t = between(random, -0.35, 0.6), r = between(random, 0.0, 0.3);
    return Hollow([=](double h) {
        const double edge = h < r ? 1.0 - 0.5 * (1.0 - std::sqrt(1.0 - std::pow(1.0 - h / r, 2))) : 1.0;
        return (1.0 + s * h) * (1.0 + t * h) * edge;
    });
}

// Lying, between an ellipse and a box, one end lower than the other.
Hollow lying(Random& random)
{
    const double n = between(random, 1.8, 6.0), t = between(random, -0.4, 0.4);
    return Hollow([=](double h) {
        return std::pow(1.0 - std::pow(std::abs(2.0 * h - 1.0), n), 1.0 / n) * (1.0 + t * (h - 0.5));
    });
}

// A tunnel divides it; above, the near half spills into the far one before it rises on.
Hollow saddle(Random& random)
{
    const double tunnel = between(random, 0.2, 0.65), near = between(random, 0.35, 0.8);
    const double spill = chance(random, 0.4) ? between(random, 2.0, 6.0) : 0.0;
    return Hollow([=](double h) {
        const double at = std::abs(h - tunnel) < 0.02 ? spill : 0.0;
        return near + (1.0 - near) * rise(h, tunnel, 0.05) + at;
    });
}

// Over axle, spare wheel and exhaust: widths of some layers have nothing to do with each other.
Hollow layered(Random& random)
{
    std::vector<double> at, width{1.0};
    for (int layers = 2 + int(random() % 4); layers > 0; --layers) {
        at.push_back(between(random, 0.05, 0.95));
        width.push_back(width.back() * std::exp(normal(random, 0.4)));
    }
    std::sort(at.begin(), at.end());
    return Hollow([=](double h) {
        double area = width[0];
        for (std::size_t i = 0; i < at.size(); ++i)
            area += (width[i + 1] - width[i]) * rise(h, at[i], 0.04);
        return area;
    });
}

// Astride a frame: two legs, a body, a dome.
Hollow astride(Random& random)
{
    const double legs = between(random, 0.15, 0.6), top = between(random, 0.3, 0.8), frame = between(random, 0.2, 0.5);
    return Hollow([=](double h) {
        return (legs + (1.0 - legs) * rise(h, frame, 0.2)) * (1.0 - (1.0 - top) * rise(h, 0.85, 0.3));
    });
}

} // namespace

Hollow tankOf(Kind kind, Random& random)
{
    if (kind == Kind::motorcycle)
        return astride(random);
    switch (random() % 4) {
    case 0: return lying(random);
    case 1: return kind == Kind::car ? saddle(random) : sloping(random);
    case 2: return kind == Kind::kart ? sloping(random) : layered(random);
    default: return sloping(random);
    }
}

FloatSender::FloatSender(Random& random)
    : m_lowStop(chance(random, 0.6) ? between(random, 0.0, 0.1) : 0.0),
      m_highStop(chance(random, 0.5) ? between(random, 0.85, 1.0) : 1.0),
      m_play(between(random, 0.0, 0.012)),
      m_segments(chance(random, 0.4) ? std::floor(between(random, 40.0, 160.0)) : 0.0),
      m_taper(logBetween(random, 0.75, 1.4)), m_pullUp(chance(random, 0.5) ? between(random, 0.4, 3.0) : 0.0),
      m_offsetSd(between(random, 0.0, 0.004)), m_slosh(between(random, 0.008, 0.045)),
      m_slope(between(random, 0.0, 0.006))
{
    struct Display {
        double empty, full, step;
    };
    constexpr std::array kDisplays{Display{0.5, 4.5, 0.01}, Display{3.1, 0.4, 0.01}, Display{10, 180, 1},
                                   Display{240, 33, 1},     Display{0, 100, 1},      Display{0, 100, 2},
                                   Display{860, 130, 1}};
    const Display& display = kDisplays[random() % kDisplays.size()];
    m_empty = display.empty;
    m_full = display.full;
    m_step = display.step;
}

// Share of the track's resistance, or of the volts over it where a pull-up feeds it.
double FloatSender::track(double arm) const
{
    const double worn = m_segments > 0.0 ? std::round(arm * m_segments) / m_segments : arm;
    const double share = std::pow(worn, m_taper);
    const auto volts = [this](double r) { return m_pullUp > 0.0 ? r * (1.0 + m_pullUp) / (r + m_pullUp) : r; };
    return m_full > m_empty ? volts(share) : 1.0 - volts(1.0 - share);
}

double FloatSender::shows(double height, int direction, double error, Random& random) const
{
    const double arm = std::clamp(height + error - direction * m_play, m_lowStop, m_highStop);
    const double share = track(arm) + normal(random, m_offsetSd);
    return std::round((m_empty + (m_full - m_empty) * share) / m_step) * m_step;
}

double FloatSender::backDownAt(double height) const
{
    const double arm = std::clamp(height - m_play, m_lowStop, m_highStop);
    return std::max(0.0, arm - m_play);
}

Machine::Machine(Kind which, Random& random)
    : kind(which), sender(random), m_tank(tankOf(which, random))
{
    const KindRanges& range = kKindRanges[std::size_t(kind)];
    clickL = logBetween(random, range.leastL, range.mostL);
    m_brimL = clickL / m_tank.share(between(random, 0.92, 1.0));
    // The feed pump sits in a pot: what it cannot reach is a thin layer, and starving and
    // spitting are nearly one level; who drains by a plug leaves nearly nothing.
    unusableL = std::min(floorScale() * 1.3 * std::exp(normal(random, 0.5)), 0.05 * clickL);
    leftL = chance(random, 0.12) ? 0.1 * unusableL
                                 : std::max(0.02, unusableL * std::exp(normal(random, 0.2)) + normal(random, 0.3 * floorScale()));
    clickSdL = floorScale() * between(random, 0.2, 0.7);
    zeroL = leftL;
}

double Machine::click(Random& random) const
{
    const double early = chance(random, 0.02) ? between(random, 0.01, 0.05) * clickL : 0.0;
    return std::min(clickL - early + normal(random, clickSdL), m_brimL);
}

double Machine::starves(Random& random) const
{
    return std::max(0.01, unusableL + normal(random, 0.1 * floorScale()));
}

double Machine::reading(double litres, bool moving, Random& random) const
{
    const double error = normal(random, moving ? sender.sloshing() : sender.slope());
    return sender.shows(heightAt(litres), -1, error, random);
}

CalibrationPoint Machine::point(double notedL, double litres, bool sdNoted, Random& random) const
{
    CalibrationPoint point;
    point.added = Volume::fromLitres(notedL);
    point.readings = 1 + int(random() % 5);
    double sum = 0.0;
    for (int i = 0; i < point.readings; ++i)
        sum += sender.shows(heightAt(litres), +1, 0.0, random);
    point.signal = Signal::of(sum / point.readings);
    if (sdNoted && point.readings > 2)
        point.signalSd = Signal::of(std::max(0.003 * std::abs(point.signal.value()), sender.step() / 2.0));
    return point;
}

Calibration Machine::calibrate(int points, Random& random)
{
    const double can = std::exp(normal(random, 0.01));   // of a litre noted
    const double grain = clickL > 20.0 ? 1.0 : 0.1;
    const double baseL = std::max(grain, std::round((clickL - leftL) * between(random, 0.06, 0.13) / grain) * grain);
    const double top = click(random);
    std::vector<double> notedL{0.0, baseL};
    for (int i = 1; i <= points - 3; ++i)
        notedL.push_back(std::round((baseL + (clickL - leftL - baseL) * i / (points - 2)) / grain) * grain);
    Calibration calibration;
    calibration.time = Instant();
    calibration.zeroMark = Volume::fromLitres(baseL);
    const bool sdNoted = chance(random, 0.5);
    double litres = leftL;
    for (std::size_t i = 0; i < notedL.size(); ++i) {
        const double pour = i ? notedL[i] - notedL[i - 1] : 0.0;
        litres = std::min(litres + pour * can * std::exp(normal(random, 0.006)), top);
        if (i == 1)
            zeroL = litresAt(sender.backDownAt(heightAt(litres)));
        if (i > 0 || points > 2)
            calibration.points.push_back(point(notedL[i], litres, sdNoted, random));
    }
    const double last = (top - litres) / can * std::exp(normal(random, 0.006));
    calibration.points.push_back(point(notedL.back() + last, top, sdNoted, random));
    return calibration;
}

} // namespace undermark::test
