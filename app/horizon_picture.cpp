// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/horizon_picture.h"

#include <QCoreApplication>
#include <algorithm>
#include <cassert>
#include <cmath>

namespace undermark {

namespace {

struct HorizonWords {
    Q_DECLARE_TR_FUNCTIONS(HorizonWords)
};

constexpr int kMostMajorTicks = 7;
constexpr int kMinorPerMajor = 5;
constexpr double kRoomForUnit = 0.06;    // share of the ruler kept for the unit at its end
constexpr double kRoomForHere = 0.11;    // and for "here" at its start
constexpr double kOutside = 0.2;         // share of the strip, beyond each edge

// The outline between the curve and one edge of the strip (0 top, 1 ruler). It
// closes outside the strip, where its line is not seen.
QList<QPointF> outline(const std::vector<double>& curve, double edge)
{
    edge += edge > 0.5 ? kOutside : -kOutside;
    QList<QPointF> points{{-kOutside, edge}, {-kOutside, 1.0 - curve.front()}};
    for (std::size_t i = 0; i < curve.size(); ++i)
        points.append({double(i) / double(curve.size() - 1), 1.0 - curve[i]});
    points.append({1.0 + kOutside, 1.0 - curve.back()});
    points.append({1.0 + kOutside, edge});
    points.append({-kOutside, edge});
    return points;
}

// 1, 2 or 5 times a power of ten.
double roundStep(double atLeast)
{
    const double decade = std::pow(10.0, std::floor(std::log10(atLeast)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (factor * decade >= atLeast)
            return factor * decade;
    }
    return 10.0 * decade;
}

QList<HorizonTick> ticks(double length, const QString& unit)
{
    const double major = roundStep(length / kMostMajorTicks);
    const double minor = major / kMinorPerMajor;
    QList<HorizonTick> result{{0.0, HorizonWords::tr("here"), true}};
    for (int i = 1; i * minor < length; ++i) {
        const double at = i * minor / length;
        HorizonTick tick{at, {}, i % kMinorPerMajor == 0};
        if (tick.major && at > kRoomForHere && at < 1.0 - kRoomForUnit)
            tick.label = QString::number(i * minor, 'g', 6);
        result.append(tick);
    }
    result.append({1.0, unit, true});
    return result;
}

} // namespace

HorizonPicture horizonPicture(const NowState& state, const UnitFormat& format)
{
    const Sureness& sureness = state.sureness;
    assert(state.stripLength > Distance{});
    assert(sureness.aboveZero.size() >= 2);
    assert(sureness.running.size() == sureness.aboveZero.size());

    HorizonPicture picture;
    picture.aboveZero = outline(sureness.aboveZero, 1.0);
    picture.notRunning = outline(sureness.running, 0.0);
    picture.ticks = ticks(format.inUnit(state.stripLength), format.distanceUnit());

    const auto mark = [&](Distance at, const QString& label, HorizonMark::Kind kind) {
        const double share = std::max(0.0, at / state.stripLength);
        if (share <= 1.0)
            picture.marks.append({share, label, kind});
    };
    mark(state.toZero.p50, HorizonWords::tr("zero mark"), HorizonMark::Kind::zeroMark);
    mark(state.toDry.p99, HorizonWords::tr("sure to dry"), HorizonMark::Kind::sureToDry);
    for (const Peg& peg : state.pegs)
        mark(peg.at, QString::fromStdString(peg.name), HorizonMark::Kind::fuelPoint);
    std::stable_sort(picture.marks.begin(), picture.marks.end(),
                     [](const HorizonMark& a, const HorizonMark& b) { return a.at < b.at; });

    picture.spoken = HorizonWords::tr("Fuel horizon: sure to the zero mark for %1, even %2; "
                                      "sure to dry for %3")
                         .arg(format.distanceWithUnit(state.toZero.p99),
                              format.distanceWithUnit(state.toZero.p50),
                              format.distanceWithUnit(state.toDry.p99));
    return picture;
}

} // namespace undermark
