// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/gauge.h"

#include "engine/calibration/lobes.h"
#include "engine/calibration/tank_shape.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

std::optional<CircuitFault> outsideSweep(const LevelCurve& curve, Signal signal)
{
    const auto [low, high] = std::minmax({curve.lowest().signal, curve.highest().signal});
    const Signal sweep = high - low;
    if (signal < 0.01 * sweep && low > 0.05 * sweep)
        return signal > -0.01 * sweep ? CircuitFault::shorted : CircuitFault::impossible;
    if (signal > high + sweep || signal < low - sweep)
        return CircuitFault::impossible;
    return std::nullopt;
}

// Of a signal's span: what one measured car did, idling and driving (means of ten seconds).
constexpr double kNoiseAtRest = 0.003;
constexpr double kNoiseMoving = 0.036;

Estimate<Volume> lowered(Estimate<Volume> level, Estimate<Volume> by)
{
    return {level.mean - by.mean, Volume::fromLitres(std::hypot(level.sd.litres(), by.sd.litres()))};
}

// The noise by what the curve does over it either way: near a stop its slope alone would
// say far too much.
LevelReading readNoisy(const LevelCurve& curve, Signal signal, Signal noise)
{
    LevelReading level = curve.read(signal, noise);
    const double across = (curve.read(signal + noise).added.mean - curve.read(signal - noise).added.mean).litres();
    level.added.sd = Volume::fromLitres(std::hypot(curve.read(signal).added.sd.litres(), 0.5 * across));
    return level;
}

bool isSame(Volume a, Volume b) { return abs(a - b) < Volume::fromLitres(1e-9); }

} // namespace

Result<Gauge> Gauge::calibrate(std::span<const CalibrationPoint> points, const Sender& sender,
                               const CalibrationOptions& options)
{
    Gauge gauge;
    gauge.m_points.assign(points.begin(), points.end());
    if (haveTwoSignals(points)) {
        auto lobes = fitLobes(points);
        if (!lobes)
            return fail(std::move(lobes.error()));
        gauge.m_both = std::move(*lobes);
        gauge.m_fit.readsHigh = assumedHysteresis(gauge.full() - gauge.lowest());
        return gauge;
    }
    auto fit = fitCalibration(points, sender, options);
    if (!fit)
        return fail(std::move(fit.error()));
    gauge.m_fit = std::move(*fit);
    return gauge;
}

Result<Gauge> Gauge::of(const Calibration& calibration, const Sender& sender)
{
    Result<Gauge> gauge = Gauge();
    if (const auto& shape = calibration.shape) {
        const Result<TankShape> tank = TankShape::make(*shape);
        Result<LevelCurve> curve = tank ? priorCurve(*tank, shape->atFloor, shape->atRoof) : fail(tank.error());
        if (!curve)
            return fail(std::move(curve.error()));
        gauge = prior(std::move(*curve));
    } else {
        gauge = calibrate(calibration.points, sender);
    }
    const auto& lobes = calibration.lobes;
    return gauge && lobes ? gauge->inSeries(undermark::seriesSpread(lobes->first, lobes->second)) : gauge;
}

Gauge Gauge::prior(LevelCurve curve)
{
    Gauge gauge;
    gauge.m_fit.curve = std::move(curve);
    gauge.m_isPrior = true;
    return gauge;
}

Gauge Gauge::inSeries(Volume spread) const
{
    Gauge gauge = *this;
    gauge.m_seriesSpread = spread;
    return gauge;
}

std::span<const LevelCurve> Gauge::lobes() const
{
    if (!m_both.empty())
        return m_both;
    return m_fit.curve ? std::span(&*m_fit.curve, 1) : std::span<const LevelCurve>();
}

const LevelCurve* Gauge::curve() const { return m_fit.curve ? &*m_fit.curve : nullptr; }

LevelReading Gauge::readWith(const SenderReading& reading, Signal noise, Signal otherNoise) const
{
    LevelReading level = readNoisy(lobes().front(), reading.signal, noise);
    if (hasTwoSignals())
        level = joinLobes(m_both, level, readNoisy(m_both[1], *reading.other, otherNoise));
    level.added.sd = Volume::fromLitres(
        std::hypot(level.added.sd.litres(), m_seriesSpread.litres()));
    return level;
}

std::optional<LevelReading> Gauge::read(const SenderReading& reading,
                                        std::optional<Signal> noise) const
{
    if (!isKnown() || (hasTwoSignals() && !reading.other))
        return std::nullopt;
    return readWith(reading, noise.value_or(Signal()), noise.value_or(Signal()));
}

std::optional<LevelReading> Gauge::readDriving(const SenderReading& reading,
                                               std::optional<Signal> noise, Motion motion) const
{
    if (!isKnown() || (hasTwoSignals() && !reading.other))
        return std::nullopt;
    const auto noiseOf = [&](const LevelCurve& lobe) {
        const double share = motion == Motion::atRest ? kNoiseAtRest : kNoiseMoving;
        return noise.value_or(share * abs(lobe.highest().signal - lobe.lowest().signal));
    };
    LevelReading level = readWith(reading, noiseOf(lobes().front()), noiseOf(lobes().back()));
    if (level.bound == LevelBound::atMost)
        return level;
    level.added = lowered(level.added, m_fit.readsHigh);
    return level;
}

std::optional<CircuitFault> Gauge::faultOf(const SenderReading& reading, const Sender& sender) const
{
    const auto fault = [&](std::size_t lobe, Signal signal) {
        const auto wiring = circuitFault(signal, sender);
        return wiring || lobe >= lobes().size() ? wiring : outsideSweep(lobes()[lobe], signal);
    };
    if (hasTwoSignals() && !reading.other)
        return circuitFault(reading.signal, sender);
    const auto first = fault(0, reading.signal);
    return first || !hasTwoSignals() ? first : fault(1, *reading.other);
}

Volume Gauge::lowest() const
{
    Volume litres;
    for (const LevelCurve& lobe : lobes())
        litres += lobe.lowest().added - lobe.lowest().width;
    return litres;
}

Volume Gauge::full() const
{
    Volume litres;
    for (const LevelCurve& lobe : lobes())
        litres += lobe.highest().added + lobe.highest().width;
    return litres;
}

Estimate<Volume> Gauge::known(Volume added) const
{
    if (hasTwoSignals())
        return {added, sdBetweenPoints(added)};
    if (std::ranges::none_of(m_points, [&](const auto& point) { return isSame(point.added, added); }))
        return {added, m_fit.curve->read(m_fit.curve->signalAt(added)).added.sd};
    const Volume pour = CalibrationOptions{}.pourSd.ratio() * added;
    return {added, Volume::fromLitres(std::hypot(pour.litres(), m_fit.uncertainty.resolution.litres(),
                                                 m_fit.uncertainty.readings.litres()))};
}

Estimate<Volume> Gauge::knownDriving(Volume added) const
{
    return lowered(known(added), m_fit.readsHigh);
}

// Both lobes' pours, and half a step of unequal emptying where `added` lies between
// two points.
Volume Gauge::sdBetweenPoints(Volume added) const
{
    const CalibrationPoint& nearest = *std::ranges::min_element(
        m_points, {}, [&](const CalibrationPoint& p) { return abs(p.added - added); });
    const Volume sd = readLobes(m_both, nearest.signal, *nearest.signal2).added.sd;
    return Volume::fromLitres(std::hypot(sd.litres(), 0.5 * (nearest.added - added).litres()));
}

} // namespace undermark
