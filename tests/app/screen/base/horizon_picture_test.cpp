// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/horizon_picture.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <algorithm>
#include <cmath>

using namespace undermark;

namespace {

// 8.1 L/100 km, so many litres above the zero mark and 5.9 below it.
struct Laws {
    explicit Laws(double aboveZeroLitres)
        : toZero(*RangeLaw::make({Volume::fromLitres(aboveZeroLitres), Volume::fromLitres(0.6)},
                                 {Consumption::fromLitresPer100Km(8.1),
                                  Consumption::fromLitresPer100Km(0.35)})),
          toDry(toZero.withFuel(
              {Volume::fromLitres(aboveZeroLitres + 5.9), Volume::fromLitres(0.92)}))
    {
    }
    HorizonPicture picture(const UnitFormat& format = {}) const
    {
        return horizonPicture(toZero, toDry, format);
    }
    RangeLaw toZero;
    RangeLaw toDry;
};

} // namespace

class HorizonPictureTest : public QObject {
    Q_OBJECT
private slots:
    void theCurveIsTheRealProbabilityInAtLeast64Samples()
    {
        const Laws state(13.8);
        const HorizonPicture picture = state.picture();
        const double length = horizon(state.toZero, state.toDry, {}).length.km();
        int samples = 0;
        for (const QPointF& point : picture.aboveZero) {
            if (point.x() <= 0.0 || point.x() >= 1.0)
                continue;
            const Distance there = Distance::fromKm(point.x() * length);
            const double wanted = 1.0 - state.toZero.dryBefore(there).value();
            QVERIFY(std::abs((1.0 - point.y()) - wanted) < 1e-9);
            ++samples;
        }
        QVERIFY(samples >= 64);
    }
    void whatIsAboveZeroIsNeverMoreThanWhatRuns()
    {
        const HorizonPicture picture = Laws(0.9).picture();
        QCOMPARE(picture.aboveZero.size(), picture.notRunning.size());
        for (qsizetype i = 2; i < picture.aboveZero.size() - 2; ++i)
            QVERIFY(picture.aboveZero[i].y() >= picture.notRunning[i].y() - 1e-12);
    }
    void theOutlinesCloseOutsideTheStrip()
    {
        const HorizonPicture picture = Laws(13.8).picture();
        QCOMPARE(picture.aboveZero.first(), picture.aboveZero.last());
        QVERIFY(picture.aboveZero.first().y() > 1.0);
        QVERIFY(picture.notRunning.first().y() < 0.0);
    }
    void bothPostsHaveNamesAndStandInOrder()
    {
        const HorizonPicture picture = Laws(13.8).picture();
        QCOMPARE(picture.marks.size(), 2);
        QCOMPARE(picture.marks[0].label, "zero, sure");
        QCOMPARE(picture.marks[1].label, "dry, sure");
        QVERIFY(!picture.marks[0].peg && !picture.marks[1].peg);
        QVERIFY(picture.marks[0].at < picture.marks[1].at);
    }
    void theRulerSpeaksTheUsersUnit()
    {
        const Laws state(13.8);
        const auto km = state.picture().ticks;
        const auto miles = state.picture(UnitFormat(Units::us())).ticks;
        QCOMPARE(km.first().label, "here");
        QCOMPARE(km.last().label, "km");
        QCOMPARE(miles.last().label, "mi");
        const double length = horizon(state.toZero, state.toDry, {}).length.km();
        const auto hundred = std::ranges::find(km, "100", &HorizonTickMark::label);
        QVERIFY(hundred != km.end());
        QVERIFY(std::abs(hundred->at * length - 100.0) < 1e-9);
        const auto hundredMiles = std::ranges::find(miles, "100", &HorizonTickMark::label);
        QVERIFY(hundredMiles != miles.end());
        const double milesLength =
            100.0 * kKmPerMile / hundredMiles->at; // the strip's length in km, from its ruler
        QVERIFY(milesLength >= distances(state.toDry).p10.km());
    }
};

UNDERMARK_TEST(HorizonPictureTest)
#include "horizon_picture_test.moc"
