// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/tank_shape.h"

#include <algorithm>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <numbers>

namespace undermark {

namespace {

constexpr double kLongestM = 10.0;
constexpr double kMostTilt = 45.0;
constexpr double kLitresPerM3 = 1000.0;
constexpr double kPriorSd = 0.05;      // of the capacity
constexpr int kPriorKnots = 17;

// Half the area of a circle's segment of height `y`, 0 to 2 r. The half-angle form
// keeps its digits near the bottom, where acos(1 - y / r) loses half of them.
double halfSegment(double r, double y)
{
    if (y > r)
        return 0.5 * std::numbers::pi * r * r - halfSegment(r, std::max(0.0, 2.0 * r - y));
    const double angle = 2.0 * std::asin(std::sqrt(0.5 * y / r));
    return 0.5 * (r * r * angle - (r - y) * std::sqrt(y * (2.0 * r - y)));
}

bool isLength(Distance d) { return d.metres() > 0.0 && d.metres() <= kLongestM; }

} // namespace

Result<TankShape> TankShape::make(const TankDimensions& d)
{
    if (!isLength(d.width) || !isLength(d.height) || !isLength(d.length))
        return failInput(Sentence::of("a dimension of the tank is impossible"),
                         Sentence::of("above 0 and up to 10 m"));
    if (!(d.corner >= Distance() && 2.0 * d.corner <= std::min(d.width, d.height)))
        return failInput(Sentence::of("the box's corner radius is impossible"),
                         Sentence::of("0 to half its smaller side"));
    if (d.form == TankForm::cylinder && d.width != d.height)
        return failInput(Sentence::of("a cylinder is as wide as it is high"));
    if (!(std::abs(d.tiltDegrees) <= kMostTilt))
        return failInput(Sentence::of("the tilt is impossible"), Sentence::of("-45 to 45 degrees"));
    return TankShape(d);
}

double TankShape::boxAreaM2(double heightM) const
{
    const double r = m_dimensions.corner.metres();
    const double high = m_dimensions.height.metres();
    // What one rounded corner lacks against a square one, up to `y` above its bottom.
    const auto lacks = [r](double y) { return y >= r ? (1.0 - 0.25 * std::numbers::pi) * r * r
                                                     : r * y - halfSegment(r, y); };
    double missing = 0.0;
    if (r > 0.0)
        missing = lacks(heightM) + lacks(r) - lacks(high - heightM);
    return m_dimensions.width.metres() * heightM - 2.0 * missing;
}

double TankShape::ellipseAreaM2(double heightM) const
{
    // A circle of the ellipse's height, stretched to its width.
    const double stretch = m_dimensions.width / m_dimensions.height;
    return stretch * 2.0 * halfSegment(0.5 * m_dimensions.height.metres(), heightM);
}

double TankShape::areaM2(double heightM) const
{
    const double y = std::clamp(heightM, 0.0, m_dimensions.height.metres());
    return m_dimensions.form == TankForm::roundedBox ? boxAreaM2(y) : ellipseAreaM2(y);
}

double TankShape::reachM() const
{
    const double tilt = std::abs(m_dimensions.tiltDegrees) * std::numbers::pi / 180.0;
    return 0.5 * m_dimensions.length.metres() * std::tan(tilt);
}

Volume TankShape::capacity() const
{
    return Volume::fromLitres(kLitresPerM3 * areaM2(m_dimensions.height.metres())
                              * m_dimensions.length.metres());
}

Volume TankShape::volumeAt(Distance height) const
{
    const double lengthM = m_dimensions.length.metres(), highM = m_dimensions.height.metres();
    const double h = height.metres(), reach = reachM();
    if (reach == 0.0)
        return Volume::fromLitres(kLitresPerM3 * areaM2(h) * lengthM);
    // Over depths instead of places, dry and flooded parts split off: smooth inside.
    const double low = std::clamp(h - reach, 0.0, highM), high = std::clamp(h + reach, 0.0, highM);
    double integral = areaM2(highM) * std::max(0.0, h + reach - std::max(highM, h - reach));
    if (high > low)
        integral += boost::math::quadrature::gauss_kronrod<double, 31>::integrate(
            [this](double y) { return areaM2(y); }, low, high, 10, 1e-9);
    return Volume::fromLitres(kLitresPerM3 * lengthM * integral / (2.0 * reach));
}

Result<LevelCurve> priorCurve(const TankShape& tank, Signal atFloor, Signal atRoof)
{
    if (atFloor == atRoof)
        return failInput(Sentence::of("the sender's signals for empty and full are equal"));
    const Distance high = tank.dimensions().height;
    const Volume capacity = tank.capacity();
    std::vector<CurveKnot> knots;
    for (int i = 0; i < kPriorKnots; ++i) {
        const double share = double(i) / (kPriorKnots - 1);
        knots.push_back({atFloor + share * (atRoof - atFloor), tank.volumeAt(share * high), Volume(),
                         kPriorSd * capacity});
    }
    knots.front().width = knots.front().added;   // what a tilt hides from the float
    knots.back().width = std::max(Volume(), capacity - knots.back().added);
    return LevelCurve::fromKnots(std::move(knots));
}

Estimate<Volume> usableByShape(const LevelCurve& prior, Signal signal, Estimate<Volume> unusable)
{
    const Estimate<Volume> level = prior.read(signal).added;
    return {std::max(Volume(), level.mean - unusable.mean),
            Volume::fromLitres(std::hypot(level.sd.litres(), unusable.sd.litres()))};
}

} // namespace undermark
