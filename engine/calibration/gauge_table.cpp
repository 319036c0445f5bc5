// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/gauge_table.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace undermark {

namespace {

constexpr int kCandidates = 200;
// Litres charged for a chord over the whole range: breaks ties towards even
// spacing, far below anything that is printed.
constexpr double kTie = 1e-6;

struct Node {
    double signal;
    double litres;   // shown, since drained
};

// Largest |straight line - curve| from node a to node b, litres. Between knots the
// difference is a cubic, extreme where the curve's slope equals the line's.
double chordError(const LevelCurve& curve, const Node& a, const Node& b)
{
    const double slope = std::abs((b.litres - a.litres) / (b.signal - a.signal));
    const auto curveSlope = [&curve](double s) { return curve.litresPerSignal(Signal::of(s)); };
    double worst = 0.0;
    const auto tryAt = [&](double s) {
        const double line = a.litres + (b.litres - a.litres) * (s - a.signal) / (b.signal - a.signal);
        worst = std::max(worst, std::abs(line - curve.read(Signal::of(s)).added.mean.litres()));
    };
    const auto tryPiece = [&](double from, double to) {
        // Quadratic through the slope at the piece's ends and middle, t from 0 to 1.
        const double p = curveSlope(from), m = curveSlope(0.5 * (from + to)), q = curveSlope(to);
        const double k2 = 2.0 * (p + q - 2.0 * m), k1 = 4.0 * m - 3.0 * p - q, k0 = p - slope;
        const double root = std::sqrt(std::max(0.0, k1 * k1 - 4.0 * k2 * k0));
        const double half = -0.5 * (k1 + std::copysign(root, k1));
        for (const double t : {half / k2, k0 / half, 0.0, 1.0})
            if (t >= 0.0 && t <= 1.0)
                tryAt(from + t * (to - from));
    };
    double from = a.signal;
    for (const CurveKnot& knot : curve.knots()) {
        const double s = knot.signal.value();
        if ((s - from) * (s - b.signal) < 0.0) {
            tryPiece(from, s);
            from = s;
        }
    }
    tryPiece(from, b.signal);
    return worst;
}

// Points a table may use, by rising litres: both ends, the knots between, and an
// even grid; multiples of the signal step where there is one.
std::vector<Node> candidates(const LevelCurve& curve, Volume zero, Volume full,
                             std::optional<Signal> signalStep)
{
    const double first = curve.signalAt(zero).value(), last = curve.signalAt(full).value();
    const auto [low, high] = std::minmax(first, last);
    std::vector<double> signals{first, last};
    for (const CurveKnot& knot : curve.knots())
        signals.push_back(knot.signal.value());
    for (int i = 1; i < kCandidates; ++i)
        signals.push_back(first + (last - first) * i / kCandidates);
    if (signalStep && signalStep->value() > 0.0) {
        // Inwards, so that no signal lies beyond the curve.
        const double step = signalStep->value(), slack = 1e-9;
        const double lowest = std::ceil(low / step - slack), highest = std::floor(high / step + slack);
        if (lowest < highest)
            for (double& s : signals)
                s = step * std::clamp(std::round(s / step), lowest, highest);
    }
    std::erase_if(signals, [lo = low, hi = high](double s) {
        const double slack = 1e-9 * (hi - lo);
        return s < lo - slack || s > hi + slack;
    });
    std::ranges::sort(signals);
    signals.erase(std::unique(signals.begin(), signals.end()), signals.end());
    if (!curve.rising())
        std::ranges::reverse(signals);
    std::vector<Node> nodes;
    for (const double s : signals)
        nodes.push_back({s, curve.read(Signal::of(s)).added.mean.litres()});
    return nodes;
}

// The `count` nodes, ends included, whose worst chord is least.
std::vector<Node> place(const LevelCurve& curve, const std::vector<Node>& nodes, std::size_t count)
{
    const std::size_t n = nodes.size();
    const double range = nodes.back().signal - nodes.front().signal;
    std::vector<double> cost(n * n), best(n, std::numeric_limits<double>::infinity());
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = i + 1; j < n; ++j)
            cost[i * n + j] = chordError(curve, nodes[i], nodes[j])
                              + kTie * (nodes[j].signal - nodes[i].signal) / range;
    best[0] = 0.0;
    std::vector<std::vector<std::size_t>> from;   // from[k][j]: node before j, after k+1 chords
    for (std::size_t k = 1; k < count; ++k) {
        std::vector<double> next(n, std::numeric_limits<double>::infinity());
        std::vector<std::size_t> before(n, 0);
        for (std::size_t j = k; j < n; ++j) {
            for (std::size_t i = k - 1; i < j; ++i) {
                const double worst = std::max(best[i], cost[i * n + j]);
                if (worst < next[j]) {
                    next[j] = worst;
                    before[j] = i;
                }
            }
        }
        best = std::move(next);
        from.push_back(std::move(before));
    }
    std::vector<Node> chosen{nodes.back()};
    for (std::size_t k = from.size(), j = n - 1; k-- > 0;) {
        j = from[k][j];
        chosen.push_back(nodes[j]);
    }
    std::ranges::reverse(chosen);
    return chosen;
}

} // namespace

Result<GaugeTable> gaugeTable(const LevelCurve& curve, const GaugeTableRequest& request)
{
    if (request.points < 2 || request.points > 100)
        return failInput(Sentence::of("a gauge table has 2 to 100 points"), {},
                         std::to_string(request.points));
    if (request.decimals < 0 || request.decimals > 6)
        return failInput(Sentence::of("a gauge shows 0 to 6 decimals"), {},
                         std::to_string(request.decimals));
    GaugeTable table;
    table.zero = std::max(request.zeroMark, curve.lowest().added);
    table.full = request.full.value_or(curve.highest().added);
    if (!(table.zero < std::min(table.full, curve.highest().added)))
        return failInput(
            Sentence::of("the zero mark must lie under full and within the calibrated litres"),
            Sentence::of("under %1", amount(std::min(table.full, curve.highest().added), 6)),
            amount(table.zero, 6));
    const auto nodes = candidates(curve, table.zero, table.full, request.signalStep);
    const auto count = std::min(nodes.size(), static_cast<std::size_t>(request.points));
    const std::vector<Node> placed = place(curve, nodes, count);
    const double perUnit = request.unit == GaugeUnit::litres ? 1.0
        : (table.full - table.zero).litres() / 100.0;
    const double scale = std::pow(10.0, request.decimals);
    std::vector<Node> shown;
    double lines = 0.0, rounding = 0.0, both = 0.0;
    for (const Node& node : placed) {
        const double value = std::round((node.litres - table.zero.litres()) / perUnit * scale) / scale;
        table.rows.push_back({Signal::of(node.signal), value});
        shown.push_back({node.signal, table.zero.litres() + value * perUnit});
        rounding = std::max(rounding, std::abs(shown.back().litres - node.litres));
    }
    for (std::size_t i = 1; i < placed.size(); ++i) {
        lines = std::max(lines, chordError(curve, placed[i - 1], placed[i]));
        both = std::max(both, chordError(curve, shown[i - 1], shown[i]));
    }
    table.interpolationError = Volume::fromLitres(lines);
    table.roundingError = Volume::fromLitres(rounding);
    table.worstError = Volume::fromLitres(both);
    return table;
}

} // namespace undermark
