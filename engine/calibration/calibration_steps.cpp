// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibration_steps.h"

#include "engine/calibration/isotonic.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace undermark::calibration {

namespace {

// A pool is flat, and not merely coarse or noisy, where the signal should have
// moved by more than this many resolution steps over its litres.
constexpr double kFlatSteps = 3.0;

struct Gathered {
    double sum = 0.0, readings = 0.0, lowest = 0.0, highest = 0.0;
    double errorSum = 0.0;   // sum of n sd^2
    double pourVariance = 0.0;
    int rows = 0;
};

void gather(std::map<double, Gathered>& steps, const CalibrationPoint& point, double pourVariance)
{
    Gathered& step = steps[point.added.litres()];
    const double signal = point.signal.value();
    const double sd = point.signalSd ? point.signalSd->value() : 0.0;
    step.lowest = step.rows == 0 ? signal : std::min(step.lowest, signal);
    step.highest = step.rows == 0 ? signal : std::max(step.highest, signal);
    step.pourVariance = step.rows == 0 ? pourVariance : std::min(step.pourVariance, pourVariance);
    step.sum += signal * point.readings;
    step.errorSum += sd * sd * point.readings;
    step.readings += point.readings;
    ++step.rows;
}

std::vector<LevelStep> stepsOf(const std::map<double, Gathered>& gathered, double resolution)
{
    std::vector<LevelStep> steps;
    bool everyErrorKnown = true;
    for (const auto& [litres, step] : gathered) {
        // Rows that disagree say more about the error than their stated sd; the
        // range of two or three rows is about 1.1 to 1.7 sd.
        const double between = step.rows > 1 ? (step.highest - step.lowest) / 1.5 : 0.0;
        const double variance = step.errorSum / (step.readings * step.readings)
                                + between * between / step.rows;
        // Means of equal rows keep their value to the last bit.
        const double signal = step.lowest == step.highest ? step.lowest : step.sum / step.readings;
        steps.push_back({litres, signal, step.lowest, step.highest, std::sqrt(variance),
                         step.readings, step.pourVariance, step.rows});
        everyErrorKnown = everyErrorKnown && variance > 0.0;
    }
    if (everyErrorKnown)
        for (LevelStep& step : steps)
            step.weight = 1.0 / (step.standardError * step.standardError
                                 + resolution * resolution / 12.0);
    return steps;
}

double weightedCovariance(std::span<const LevelStep> steps)
{
    double weight = 0.0, litres = 0.0, signal = 0.0, covariance = 0.0;
    for (const LevelStep& step : steps) {
        weight += step.weight;
        litres += step.weight * step.litres;
        signal += step.weight * step.signal;
    }
    for (const LevelStep& step : steps)
        covariance += step.weight * (step.litres - litres / weight) * (step.signal - signal / weight);
    return covariance;
}

// Joins neighbours that differ by no more than the resolution over litres in
// which the signal should have moved by several steps: a stop of the float whose
// last digit flickers.
void joinFlickering(std::vector<Flat>& flats, std::span<const LevelStep> steps, double resolution,
                    double signalPerLitre)
{
    std::vector<Flat> joined;
    for (const Flat& flat : flats) {
        const double width = joined.empty() ? 0.0
            : steps[flat.last].litres - steps[joined.back().first].litres;
        const bool sameReading = !joined.empty()
            && std::abs(flat.signal - joined.back().signal) <= resolution * (1.0 + 1e-6);
        if (!sameReading || width * signalPerLitre <= (kFlatSteps + 1.0) * resolution) {
            joined.push_back(flat);
            continue;
        }
        Flat& below = joined.back();
        // The stop's own reading is the one it has over more litres.
        if (flat.width > below.width)
            below.signal = flat.signal;
        below.last = flat.last;
        below.width = width;
    }
    flats = std::move(joined);
}

} // namespace

double resolutionOf(std::span<const CalibrationPoint> points, const Sender& sender)
{
    if (sender.resolution)
        return sender.resolution->value();
    double step = 1.0;
    for (int decimals = 0; decimals < 6; ++decimals, step /= 10.0) {
        const bool fits = std::ranges::all_of(points, [step](const CalibrationPoint& point) {
            const double steps = point.signal.value() / step;
            return std::abs(steps - std::round(steps)) < 1e-6;
        });
        if (fits)
            return step;
    }
    return step;
}

Branches splitBranches(std::span<const CalibrationPoint> points, double resolution, Fraction pourSd)
{
    const std::size_t n = points.size();
    std::vector<double> variance(n, 0.0);   // of the litres moved since the first row
    for (std::size_t i = 1; i < n; ++i) {
        const double pour = (points[i].added - points[i - 1].added).litres() * pourSd.ratio();
        variance[i] = variance[i - 1] + pour * pour;
    }
    const auto lowest = std::ranges::min_element(points, {}, &CalibrationPoint::added);
    const double drained = variance[static_cast<std::size_t>(lowest - points.begin())];
    std::map<double, Gathered> up, down;
    bool wentUp = true;
    for (std::size_t i = 0; i < n; ++i) {
        // The row's own direction; a row that nothing was moved for repeats the last
        // one. A turning point belongs to both branches.
        const auto next = std::find_if(points.begin() + std::ptrdiff_t(i), points.end(),
            [&](const CalibrationPoint& p) { return p.added != points[i].added; });
        const bool goesUp = next == points.end() ? wentUp : next->added > points[i].added;
        if (i == 0)
            wentUp = goesUp;
        else if (points[i].added != points[i - 1].added)
            wentUp = points[i].added > points[i - 1].added;
        const double pourVariance = std::abs(variance[i] - drained);
        if (wentUp || goesUp)
            gather(up, points[i], pourVariance);
        if (!wentUp || !goesUp)
            gather(down, points[i], pourVariance);
    }
    return {stepsOf(up, resolution), stepsOf(down, resolution)};
}

Shape shapeOf(std::span<const LevelStep> steps, double resolution)
{
    Shape shape;
    shape.rising = weightedCovariance(steps) >= 0.0;
    const double sign = shape.rising ? 1.0 : -1.0;
    std::vector<double> values, weights;
    for (const LevelStep& step : steps) {
        values.push_back(sign * step.signal);
        weights.push_back(step.weight);
    }
    const auto blocks = isotonicBlocks(values, weights);
    shape.sweep = blocks.back().mean - blocks.front().mean;
    double square = 0.0, weight = 0.0;
    for (const IsotonicBlock& block : blocks) {
        Flat flat{block.first, block.first + block.count - 1, sign * block.mean, 0.0, false};
        flat.width = steps[flat.last].litres - steps[flat.first].litres;
        for (std::size_t i = flat.first; i <= flat.last; ++i) {
            const double miss = steps[i].signal - flat.signal;
            const double noise = std::max(resolution * (1.0 + 1e-6), 3.0 * steps[i].standardError);
            flat.moved = flat.moved || std::abs(miss) > noise;
            square += steps[i].weight * miss * miss;
            weight += steps[i].weight;
        }
        shape.flats.push_back(flat);
    }
    shape.roughness = std::sqrt(square / weight);
    const double span = steps.back().litres - steps.front().litres;
    joinFlickering(shape.flats, steps, resolution, shape.sweep / span);
    return shape;
}

std::vector<CurveKnot> knotsOf(std::span<const LevelStep> steps, const Shape& shape)
{
    std::vector<CurveKnot> knots;
    for (std::size_t i = 0; i < shape.flats.size(); ++i) {
        const Flat& flat = shape.flats[i];
        const double low = steps[flat.first].litres, high = steps[flat.last].litres;
        const bool atTop = i + 1 == shape.flats.size();
        const double litres = i == 0 ? high : atTop ? low : 0.5 * (low + high);
        knots.push_back({Signal::of(flat.signal), Volume::fromLitres(litres),
                         Volume::fromLitres(flat.width), Volume()});
    }
    return knots;
}

bool isStill(std::span<const LevelStep> steps, const Shape& shape, double resolution)
{
    double error = 0.0;
    for (const LevelStep& step : steps)
        error = std::max(error, step.standardError);
    const double noise = std::max({resolution * (1.0 + 1e-6), 3.0 * shape.roughness, 3.0 * error});
    return shape.flats.size() < 2 || shape.sweep <= noise;
}

} // namespace undermark::calibration
