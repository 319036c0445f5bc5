// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/level_curve.h"

#include <math.h>   // Boost 1.74's pchip calls an unqualified isnan

#include <boost/math/interpolators/pchip.hpp>
#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kNearStop = 0.005;   // of the signal's span

// Slope at the first of three points, from secants d0 (over h0) and d1 (over h1).
// Secants of a curve never differ in sign, so only the limit of 0 is needed;
// the other, 3 d0, is for secants that do.
double endSlope(double h0, double h1, double d0, double d1)
{
    const double slope = ((2.0 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    return slope * d0 <= 0.0 ? 0.0 : slope;
}

// Slopes at strictly rising x, of strictly monotone y.
std::vector<double> knotSlopes(std::vector<double> x, std::vector<double> y)
{
    const std::size_t n = x.size();
    const auto h = [&x](std::size_t i) { return x[i + 1] - x[i]; };
    const auto secant = [&](std::size_t i) { return (y[i + 1] - y[i]) / h(i); };
    if (n == 2)
        return {secant(0), secant(0)};
    std::vector<double> slopes(n);
    slopes.front() = endSlope(h(0), h(1), secant(0), secant(1));
    slopes.back() = endSlope(h(n - 2), h(n - 3), secant(n - 2), secant(n - 3));
    const std::vector<double> knots = x;
    // Boost wants four points. An inner slope depends on its two neighbours only,
    // so one more point behind the last of three changes nothing that is read.
    if (n == 3) {
        x.push_back(x[2] + h(1));
        y.push_back(y[2] + (y[2] - y[1]));
    }
    const double first = slopes.front(), last = slopes.back();
    const boost::math::interpolators::pchip<std::vector<double>> pchip(std::move(x), std::move(y),
                                                                       first, last);
    for (std::size_t i = 1; i + 1 < n; ++i)
        slopes[i] = pchip.prime(knots[i]);
    return slopes;
}

bool isMonotone(const std::vector<CurveKnot>& knots)
{
    const bool rising = knots[0].signal < knots[1].signal;
    for (std::size_t i = 1; i < knots.size(); ++i) {
        const CurveKnot &a = knots[i - 1], &b = knots[i];
        if (!(a.added < b.added) || !(rising ? a.signal < b.signal : b.signal < a.signal))
            return false;
    }
    return true;
}

bool isSound(const CurveKnot& knot)
{
    return isFinite(knot.signal) && isFinite(knot.added) && isFinite(knot.width)
        && isFinite(knot.sd) && isFinite(knot.between) && knot.width >= Volume()
        && knot.sd >= Volume() && knot.between >= Volume();
}

} // namespace

Result<LevelCurve> LevelCurve::fromKnots(std::vector<CurveKnot> knots)
{
    if (knots.size() < 2 || !std::ranges::all_of(knots, isSound))
        return failInput(Sentence::of("a level curve needs two or more finite knots"));
    if (!isMonotone(knots))
        return failInput(
            Sentence::of("the knots of a level curve must rise in litres and keep one direction"));
    LevelCurve curve;
    curve.m_knots = std::move(knots);
    curve.addPieces();
    return curve;
}

void LevelCurve::addPieces()
{
    std::vector<CurveKnot> bySignal = m_knots;
    if (!rising())
        std::ranges::reverse(bySignal);
    std::vector<double> x, y;
    for (const CurveKnot& knot : bySignal) {
        x.push_back(knot.signal.value());
        y.push_back(knot.added.litres());
    }
    const std::vector<double> slopes = knotSlopes(x, y);
    for (std::size_t i = 0; i + 1 < x.size(); ++i) {
        const double h = x[i + 1] - x[i];
        const double secant = (y[i + 1] - y[i]) / h;
        const double sd = bySignal[i].sd.litres();
        const double between = bySignal[rising() ? i : i + 1].between.litres();
        m_pieces.push_back({x[i], y[i], slopes[i],
                            (3.0 * secant - 2.0 * slopes[i] - slopes[i + 1]) / h,
                            (slopes[i] + slopes[i + 1] - 2.0 * secant) / (h * h), sd,
                            (bySignal[i + 1].sd.litres() - sd) / h, h, 4.0 * between / (h * h)});
        m_starts.push_back(x[i]);
    }
    m_lowSignal = x.front();
    m_highSignal = x.back();
}

const LevelCurve::Cubic& LevelCurve::pieceAt(double signal) const
{
    const auto after = std::upper_bound(m_starts.begin() + 1, m_starts.end(), signal);
    return m_pieces[static_cast<std::size_t>(after - m_starts.begin()) - 1];
}

LevelReading LevelCurve::read(Signal signal, std::optional<Signal> noise) const
{
    const double noiseWidth = noise ? noise->value() : 0.0;
    const double reach = std::min(noiseWidth, kNearStop * (m_highSignal - m_lowSignal));
    const double s = std::clamp(signal.value(), m_lowSignal, m_highSignal);
    const Cubic& piece = pieceAt(s);
    const double u = s - piece.start;
    const double litres = piece.c0 + u * (piece.c1 + u * (piece.c2 + u * piece.c3));
    const double atKnots = piece.sd + u * piece.sdPerSignal, bent = piece.bend * u * (piece.width - u);
    double variance = atKnots * atKnots + bent * bent;
    if (noise) {
        const double slope = piece.c1 + u * (2.0 * piece.c2 + u * 3.0 * piece.c3);
        variance += noiseWidth * slope * noiseWidth * slope;
    }
    const double sd = std::sqrt(variance);   // hypot is slow
    const auto isBeyond = [&](const CurveKnot& end, bool lowSide) {
        const double past = lowSide ? end.signal.value() - signal.value()
                                    : signal.value() - end.signal.value();
        return past > 0.0 || (end.width > Volume() && past >= -reach);
    };
    const auto at = [&sd](LevelBound bound, double value) {
        return LevelReading{bound, {Volume::fromLitres(value), Volume::fromLitres(sd)}};
    };
    if (s > m_lowSignal + reach && s < m_highSignal - reach)   // nearly always
        return at(LevelBound::exact, litres);
    if (isBeyond(m_knots.front(), rising()))
        return at(LevelBound::atMost, m_knots.front().added.litres());
    if (isBeyond(m_knots.back(), !rising()))
        return at(LevelBound::atLeast, m_knots.back().added.litres());
    return at(LevelBound::exact, litres);
}

double LevelCurve::litresPerSignal(Signal signal) const
{
    const double s = std::clamp(signal.value(), m_lowSignal, m_highSignal);
    const Cubic& piece = pieceAt(s);
    const double u = s - piece.start;
    return std::abs(piece.c1 + u * (2.0 * piece.c2 + u * 3.0 * piece.c3));
}

std::vector<DrawnLevel> LevelCurve::drawn(int perPiece) const
{
    std::vector<DrawnLevel> points;
    for (std::size_t i = 0; i < m_knots.size(); ++i) {
        const CurveKnot& knot = m_knots[i];
        points.push_back({knot.signal, {knot.added, knot.sd}});
        for (int k = 1; k < perPiece && i + 1 < m_knots.size(); ++k) {
            const Signal between = knot.signal + (m_knots[i + 1].signal - knot.signal) * (double(k) / perPiece);
            points.push_back({between, read(between).added});
        }
    }
    return points;
}

Signal LevelCurve::signalAt(Volume added) const
{
    if (added <= m_knots.front().added)
        return m_knots.front().signal;
    if (added >= m_knots.back().added)
        return m_knots.back().signal;
    const auto above = std::ranges::upper_bound(m_knots, added, {}, &CurveKnot::added);
    const auto below = above - 1;
    if (below->added == added)
        return below->signal;
    const auto excess = [this, added](double s) {
        return (read(Signal::of(s)).added.mean - added).litres();
    };
    const auto [low, high] = std::minmax({below->signal.value(), above->signal.value()});
    // Inside one piece the cubic is monotone: exactly one root. The values at the
    // ends come from the knots, since the cubic meets them only to rounding.
    const double atLow = (rising() ? below : above)->added.litres() - added.litres();
    const double atHigh = (rising() ? above : below)->added.litres() - added.litres();
    std::uintmax_t steps = 200;
    const auto root = boost::math::tools::toms748_solve(
        excess, low, high, atLow, atHigh, boost::math::tools::eps_tolerance<double>(50), steps);
    return Signal::of(0.5 * (root.first + root.second));
}

} // namespace undermark
