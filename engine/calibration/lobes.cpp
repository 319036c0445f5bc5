// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/lobes.h"

#include "engine/calibration/curve_prior.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace undermark {

namespace {

constexpr double kStill = 0.02;          // of the span
constexpr double kPourSd = 0.005;        // OIML R 117 class 0.5, from memory
constexpr double kSplitSd = 0.10;        // of litres that both lobes shared

struct Lobe {
    double start, span;                  // of the signal; span has its sign
    double litres = 0.0, shared = 0.0;
    double litresPerSpan = 0.0;          // of the last pour that went here, 0 unknown
    double lastSignal;
    std::vector<CurveKnot> knots;

    double moved(double signal) const { return (signal - lastSignal) / span; }

    void take(double signal, double share, double sharedLitres)
    {
        litres += share;
        shared += sharedLitres;
        litresPerSpan = share / moved(signal);
        lastSignal = signal;
        addKnot();
    }

    void addKnot()
    {
        const double sd = std::hypot(kPourSd * litres, kSplitSd * shared);
        knots.push_back({Signal::of(lastSignal), Volume::fromLitres(litres), {},
                         Volume::fromLitres(sd)});
    }
};

} // namespace

bool haveTwoSignals(std::span<const CalibrationPoint> points)
{
    return !points.empty() && std::ranges::all_of(points, [](const CalibrationPoint& point) {
        return point.signal2.has_value();
    });
}

Result<std::vector<LevelCurve>> fitLobes(std::span<const CalibrationPoint> points)
{
    if (points.size() < 3)
        return failInput(Sentence::of("a saddle tank needs at least three points"));
    for (const CalibrationPoint& point : points)
        if (!point.signal2)
            return failInput(Sentence::of("a saddle tank needs both signals at every point"));
    const auto lobe = [](double first, double last) {
        return Lobe{.start = first, .span = last - first, .lastSignal = first, .knots = {}};
    };
    std::array<Lobe, 2> lobes{
        lobe(points.front().signal.value(), points.back().signal.value()),
        lobe(points.front().signal2->value(), points.back().signal2->value())};
    for (Lobe& each : lobes) {
        if (each.span == 0.0)
            return failInput(Sentence::of(
                "a signal of the saddle tank does not move over the whole calibration"));
        each.addKnot();
    }
    Volume before = points.front().added;
    for (const CalibrationPoint& point : points.subspan(1)) {
        const double poured = (point.added - before).litres();
        const std::array<double, 2> signal{point.signal.value(), point.signal2->value()};
        const std::array<double, 2> moved{lobes[0].moved(signal[0]), lobes[1].moved(signal[1])};
        if (poured <= 0.0 || moved[0] < -kStill || moved[1] < -kStill)
            return failInput(Sentence::of(
                "litres must rise and each signal keep its direction in a saddle tank"));
        if (moved[0] < kStill && moved[1] < kStill)
            continue;   // neither saw it: the next pour that moves one takes it along
        before = point.added;
        if (moved[1] < kStill) {
            lobes[0].take(signal[0], poured, 0.0);
        } else if (moved[0] < kStill) {
            lobes[1].take(signal[1], poured, 0.0);
        } else {
            const bool known = lobes[0].litresPerSpan > 0.0 && lobes[1].litresPerSpan > 0.0;
            const double a = moved[0] * (known ? lobes[0].litresPerSpan : 1.0);
            const double b = moved[1] * (known ? lobes[1].litresPerSpan : 1.0);
            const double share = poured * a / (a + b);
            lobes[0].take(signal[0], share, std::min(share, poured - share));
            lobes[1].take(signal[1], poured - share, std::min(share, poured - share));
        }
    }
    for (Lobe& each : lobes)
        if (each.knots.size() > 1)
            calibration::addPrior(each.knots, 1.0);
    Result<LevelCurve> first = LevelCurve::fromKnots(lobes[0].knots);
    if (!first)
        return fail(first.error());
    Result<LevelCurve> second = LevelCurve::fromKnots(lobes[1].knots);
    if (!second)
        return fail(second.error());
    return std::vector{std::move(*first), std::move(*second)};
}

LevelReading readLobes(std::span<const LevelCurve> lobes, Signal first, Signal second)
{
    return joinLobes(lobes, lobes[0].read(first), lobes[1].read(second));
}

LevelReading joinLobes(std::span<const LevelCurve> lobes, const LevelReading& a, const LevelReading& b)
{
    LevelReading out;
    if (a.bound == b.bound)
        out.bound = a.bound;
    double mean = 0.0, variance = 0.0;
    const auto add = [&](const LevelReading& reading, const LevelCurve& curve) {
        mean += reading.added.mean.litres();
        variance += std::pow(reading.added.sd.litres(), 2);
        if (reading.bound == LevelBound::exact || a.bound == b.bound)
            return;
        const bool upper = reading.bound == LevelBound::atLeast;
        const double width = (upper ? curve.highest() : curve.lowest()).width.litres();
        mean += upper ? 0.5 * width : -0.5 * width;
        variance += width * width / 12.0;
    };
    add(a, lobes[0]);
    add(b, lobes[1]);
    out.added = {Volume::fromLitres(mean), Volume::fromLitres(std::sqrt(variance))};
    return out;
}

Volume seriesSpread(Volume firstLobe, Volume secondLobe)
{
    return abs(firstLobe - secondLobe) * (0.5 / std::sqrt(3.0));
}

} // namespace undermark
