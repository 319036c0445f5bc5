// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/gauge.h"

#include "engine/calibration/lobes.h"

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
        return gauge;
    }
    auto fit = fitCalibration(points, sender, options);
    if (!fit)
        return fail(std::move(fit.error()));
    gauge.m_fit = std::move(*fit);
    return gauge;
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

std::optional<LevelReading> Gauge::read(const SenderReading& reading,
                                        std::optional<Signal> noise) const
{
    if (!isKnown() || (hasTwoSignals() && !reading.other))
        return std::nullopt;
    LevelReading level = hasTwoSignals() ? readLobes(m_both, reading.signal, *reading.other)
                                         : m_fit.curve->read(reading.signal, noise);
    level.added.sd = Volume::fromLitres(
        std::hypot(level.added.sd.litres(), m_seriesSpread.litres()));
    return level;
}

std::optional<LevelReading> Gauge::readDriving(const SenderReading& reading) const
{
    auto level = read(reading);
    if (level && level->bound != LevelBound::atMost)
        level->added.mean -= m_fit.readsHighBy;
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
