// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/horizon_picture.h"

#include <QCoreApplication>

namespace undermark {

namespace {

struct HorizonWords {
    Q_DECLARE_TR_FUNCTIONS(HorizonWords)
};

constexpr int kBands = 160;
constexpr int kMostTicks = 7;
constexpr int kMinorPerMajor = 5;
constexpr double kRoomForUnit = 0.09; // share of the ruler kept for the unit at its end
constexpr double kRoomForHere = 0.11; // and for "here" at its start
constexpr double kOutside = 0.2;      // share of the strip, beyond each edge

// The outline between the curve of `probability` over the bands and one edge of
// the strip (0 top, 1 ruler). It closes outside, where its line is not seen.
QList<QPointF> outline(const std::vector<HorizonBand>& bands, double HorizonBand::*probability,
                       double edge)
{
    edge += edge > 0.5 ? kOutside : -kOutside;
    QList<QPointF> points{{-kOutside, edge}, {-kOutside, 1.0 - bands.front().*probability}};
    for (const HorizonBand& band : bands)
        points.append({(band.from + band.to) / 2.0, 1.0 - band.*probability});
    points.append({1.0 + kOutside, 1.0 - bands.back().*probability});
    points.append({1.0 + kOutside, edge});
    points.append({-kOutside, edge});
    return points;
}

// Numbers in the user's unit with minor ticks between; the ends are named "here"
// and by the unit, and numbers too near them are left out.
QList<HorizonTickMark> ruler(const Horizon& horizon, const UnitFormat& format)
{
    const double length = format.inUnit(horizon.length);
    const double step = tickStep(length, kMostTicks);
    const double minor = step / kMinorPerMajor / length;
    QList<HorizonTickMark> marks{{0.0, HorizonWords::tr("here"), true, false}};
    for (int i = 1; i * minor < 1.0; ++i)
        marks.append({i * minor, {}, i % kMinorPerMajor == 0, false});
    for (int number = 1; number * step < length; ++number) {
        const double at = number * step / length;
        if (at > kRoomForHere && at < 1.0 - kRoomForUnit)
            marks.append({at, format.typed(number * step, 1), true, number % 2 == 1});
    }
    marks.append({1.0, format.distanceUnit(), true, false});
    return marks;
}

} // namespace

HorizonPicture horizonPicture(const RangeLaw& toZero, const RangeLaw& toDry,
                              const UnitFormat& format)
{
    HorizonRequest request;
    request.bands = kBands;
    request.unit = format.oneUnit();
    request.mostTicks = kMostTicks;
    const Horizon horizon = undermark::horizon(toZero, toDry, request);

    HorizonPicture picture = legPicture(horizon, format);
    const Distances zero = distances(toZero);
    picture.spoken =
        HorizonWords::tr("Fuel horizon: sure to the zero mark for %1, even %2; "
                         "sure to dry for %3")
            .arg(format.distanceWithUnit(zero.p99), format.distanceWithUnit(zero.p50),
                 format.distanceWithUnit(distances(toDry).p99));
    return picture;
}

HorizonPicture legPicture(const Horizon& horizon, const UnitFormat& format)
{
    HorizonPicture picture;
    picture.aboveZero = outline(horizon.bands, &HorizonBand::aboveZero, 1.0);
    picture.notRunning = outline(horizon.bands, &HorizonBand::running, 0.0);
    picture.ticks = ruler(horizon, format);
    // Both posts at the same confidence: even to zero can lie behind sure to dry.
    if (horizon.sureToZero)
        picture.marks.append({*horizon.sureToZero, HorizonWords::tr("zero, sure"), false});
    if (horizon.sureToDry)
        picture.marks.append({*horizon.sureToDry, HorizonWords::tr("dry, sure"), false});
    for (const HorizonPeg& peg : horizon.pegs)
        picture.marks.append({peg.at, QString::fromStdString(peg.name), true});

    picture.spoken = horizon.sureToDry
                         ? HorizonWords::tr("Fuel horizon of this leg: sure to dry for %1")
                               .arg(format.distanceWithUnit(horizon.length * *horizon.sureToDry))
                         : HorizonWords::tr("Fuel horizon of this leg: sure to its end");
    return picture;
}

} // namespace undermark
