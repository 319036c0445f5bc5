// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/tank_picture.h"

#include "engine/base/normal_law.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <iterator>
#include <vector>

namespace undermark {

namespace {

struct TankWords {
    Q_DECLARE_TR_FUNCTIONS(TankWords)
};

constexpr int kDrawnPerPiece = 12;
constexpr int kMostTicks = 6;
constexpr std::size_t kMostWithoutOne = 40; // more points are drawn without whiskers

// Litres by which the curve through the other points misses point `i`; nothing
// at the ends, which no curve of the others reaches.
std::optional<Volume> missOf(std::span<const CalibrationPoint> points, std::size_t i,
                             const Sender& sender)
{
    if (points.size() < 4 || points.size() > kMostWithoutOne)
        return std::nullopt;
    std::vector<CalibrationPoint> others(points.begin(), points.end());
    others.erase(others.begin() + std::ptrdiff_t(i));
    const auto fit = fitCalibration(others, sender);
    if (!fit || !fit->curve)
        return std::nullopt;
    const LevelReading read = fit->curve->read(points[i].signal);
    if (read.bound != LevelBound::exact)
        return std::nullopt;
    return read.added.mean - points[i].added;
}

// Some width to see it in where nothing moved.
PlotAxis signalAxis(double lowest, double highest)
{
    if (highest <= lowest)
        highest = lowest + std::max(1.0, std::abs(lowest) * 0.1);
    return PlotAxis::around(lowest, highest, kMostTicks);
}

// The curve with its band: in it the level is with 90 %, as far as the curve itself is known
// (the noise of a reading comes on top).
void drawCurve(PlotPicture& picture, const LevelCurve& curve, const PlotAxis& x, const PlotAxis& y,
               const UnitFormat& format)
{
    QList<QPointF> below;
    for (const auto& [signal, level] : curve.drawn(kDrawnPerPiece)) {
        const auto at = [&, share = x.share(signal.value())](Volume litres) {
            return QPointF(share, 1.0 - y.share(format.inUnit(litres)));
        };
        picture.line.append(at(level.mean));
        picture.band.append(at(level.mean + kHalfOf90 * level.sd));
        below.append(at(level.mean - kHalfOf90 * level.sd));
    }
    std::copy(below.rbegin(), below.rend(), std::back_inserter(picture.band));
    picture.band.append(picture.band.front());
}

enum class WhichLobe { withPump, other };

PlotPicture lobePicture(const LevelCurve& curve, const Sender& sender, WhichLobe lobe,
                        const UnitFormat& format)
{
    PlotPicture picture;
    const double a = curve.lowest().signal.value(), b = curve.highest().signal.value();
    const PlotAxis x = signalAxis(std::min(a, b), std::max(a, b));
    const PlotAxis y = PlotAxis::around(0.0, format.inUnit(curve.highest().added), kMostTicks);
    for (const CurveKnot& knot : curve.knots())
        picture.marks.append({x.share(knot.signal.value()), 1.0 - y.share(format.inUnit(knot.added)),
                              0.0, false});
    drawCurve(picture, curve, x, y, format);
    picture.xTicks = x.ticks(format, false);
    picture.yTicks = y.ticks(format, true);
    picture.xTitle = QString::fromStdString(sender.unit);
    picture.yTitle = (lobe == WhichLobe::withPump ? TankWords::tr("%1 in the lobe with the pump")
                                             : TankWords::tr("%1 in the other lobe"))
                         .arg(format.volumeUnit());
    picture.spoken = (lobe == WhichLobe::withPump
                          ? TankWords::tr("Curve of the lobe with the pump, up to %1")
                          : TankWords::tr("Curve of the other lobe, up to %1"))
                         .arg(format.volume({curve.highest().added, {}}));
    return picture;
}

} // namespace

PlotPicture tankPicture(const Gauge& gauge, const Sender& sender, std::optional<Volume> zeroMark,
                        const UnitFormat& format)
{
    if (gauge.hasTwoSignals())
        return lobePicture(gauge.lobes()[0], sender, WhichLobe::withPump, format);
    PlotPicture picture;
    const std::span<const CalibrationPoint> points = gauge.points();
    if (points.size() < 2)
        return picture;
    double lowest = points[0].signal.value(), highest = lowest, most = 0.0;
    for (const CalibrationPoint& point : points) {
        lowest = std::min(lowest, point.signal.value());
        highest = std::max(highest, point.signal.value());
        most = std::max(most, format.inUnit(point.added));
    }
    const PlotAxis x = signalAxis(lowest, highest);
    const PlotAxis y = PlotAxis::around(0.0, most, kMostTicks);
    const double usual = gauge.residualSd() ? format.inUnit(*gauge.residualSd()) : 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double miss = format.inUnit(missOf(points, i, sender).value_or(Volume{}));
        picture.marks.append({x.share(points[i].signal.value()),
                              1.0 - y.share(format.inUnit(points[i].added)),
                              -miss / (y.high() - y.low()), usual > 0.0 && std::abs(miss) > 2 * usual});
    }
    if (gauge.curve())
        drawCurve(picture, *gauge.curve(), x, y, format);
    picture.xTicks = x.ticks(format, false);
    picture.yTicks = y.ticks(format, true);
    picture.xTitle = QString::fromStdString(sender.unit);
    picture.yTitle = TankWords::tr("%1 since drained").arg(format.volumeUnit());
    if (zeroMark) {
        picture.postAt = 1.0 - y.share(format.inUnit(*zeroMark));
        picture.postName = TankWords::tr("zero mark");
    }
    picture.spoken = TankWords::tr("Level curve, points: %1, up to %2")
                         .arg(int(points.size()))
                         .arg(format.volume({points.back().added, {}}));
    return picture;
}

PlotPicture otherLobePicture(const Gauge& gauge, const Sender& sender, const UnitFormat& format)
{
    return gauge.hasTwoSignals() ? lobePicture(gauge.lobes()[1], sender, WhichLobe::other, format)
                                 : PlotPicture();
}

QList<Fact> lobeFacts(const Gauge& gauge, const UnitFormat& format)
{
    const auto holds = [&format](const LevelCurve& curve) {
        const CurveKnot& top = curve.highest();
        return format.volume({top.added + top.width, top.sd});
    };
    return {{TankWords::tr("the lobe with the pump takes"), holds(gauge.lobes()[0])},
            {TankWords::tr("the other lobe takes"), holds(gauge.lobes()[1])}};
}

} // namespace undermark
