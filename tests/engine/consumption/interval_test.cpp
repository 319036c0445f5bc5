// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/interval.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class IntervalTest : public QObject {
    Q_OBJECT

    static Instant day(int n) { return Instant(std::chrono::hours(24 * n)); }

    static Fill fill(int when, double litres, double odometer_km,
                     FillExtent extent = FillExtent::full)
    {
        Fill f;
        f.time = day(when);
        f.volume = Volume::fromLitres(litres);
        f.odometer = Distance::fromKm(odometer_km);
        f.extent = extent;
        return f;
    }

    static Trip trip(int when, double km, const char* mode)
    {
        Trip t;
        t.time = day(when);
        t.distance = Distance::fromKm(km);
        t.mode = mode;
        return t;
    }

    static bool near(double a, double b) { return std::abs(a - b) < 1e-9; }

private slots:
    void fullToFullIsOneStretch()
    {
        const std::vector fills{fill(0, 40, 1000), fill(5, 30, 1400)};
        const auto stretches = intervalsFrom(fills, {});
        QCOMPARE(stretches.size(), std::size_t(1));
        QVERIFY(near(stretches[0].burnt.mean.litres(), 30));
        QVERIFY(near(stretches[0].burnt.sd.litres(), 0));
        QVERIFY(near(stretches[0].distance.km(), 400));
        QCOMPARE(stretches[0].clickEnds, 2);
        QCOMPARE(stretches[0].firstFill, std::size_t(0));
        QCOMPARE(stretches[0].lastFill, std::size_t(1));
    }

    void partialFillsAreSummedIntoTheNextFullOne()
    {
        const std::vector fills{fill(0, 40, 1000), fill(2, 10, 1200, FillExtent::partial),
                                fill(3, 12, 1300, FillExtent::partial), fill(5, 30, 1700)};
        const auto stretches = intervalsFrom(fills, {});
        QCOMPARE(stretches.size(), std::size_t(1));
        QVERIFY(near(stretches[0].burnt.mean.litres(), 52));
        QVERIFY(near(stretches[0].distance.km(), 700));
    }

    void theNeckCountsItsExtraLitresOnceAndWithTheirSpread()
    {
        const std::vector fills{fill(0, 40, 1000), fill(5, 34, 1400, FillExtent::neck),
                                fill(9, 34, 1800, FillExtent::neck), fill(12, 26, 2200)};
        const auto s = intervalsFrom(fills, {});
        QCOMPARE(s.size(), std::size_t(3));
        QVERIFY(near(s[0].burnt.mean.litres(), 30));
        QVERIFY(near(s[0].burnt.sd.litres(), 2));
        QVERIFY(near(s[1].burnt.mean.litres(), 34));   // neck to neck: the extra cancels
        QVERIFY(near(s[1].burnt.sd.litres(), std::sqrt(8.0)));
        QVERIFY(near(s[2].burnt.mean.litres(), 30));
        QCOMPARE(s[1].clickEnds, 0);
    }

    void theTripMeterStandsInForAMissingOdometer()
    {
        std::vector fills{fill(0, 40, 1000), fill(5, 30, 0), fill(9, 31, 0)};
        fills[1].odometer.reset();
        fills[1].sinceLast = Distance::fromKm(390);
        fills[2].odometer.reset();
        fills[2].sinceLast = Distance::fromKm(410);
        const auto s = intervalsFrom(fills, {});
        QCOMPARE(s.size(), std::size_t(2));
        QVERIFY(near(s[0].distance.km(), 390));
        QVERIFY(near(s[1].distance.km(), 410));
    }

    void aSwappedDashEndsTheChainUnlessTheTripMeterIsKnown()
    {
        std::vector fills{fill(0, 40, 50000), fill(5, 30, 12), fill(9, 31, 420)};
        fills[1].odometerReset = true;
        QCOMPARE(intervalsFrom(fills, {}).size(), std::size_t(1));
        QVERIFY(near(intervalsFrom(fills, {})[0].distance.km(), 408));
        fills[1].sinceLast = Distance::fromKm(395);
        QCOMPARE(intervalsFrom(fills, {}).size(), std::size_t(2));
        QVERIFY(near(intervalsFrom(fills, {})[0].distance.km(), 395));
    }

    void anOdometerThatWentBackwardGivesNoStretch()
    {
        const std::vector fills{fill(0, 40, 5000), fill(5, 30, 4200), fill(9, 31, 4600)};
        const auto s = intervalsFrom(fills, {});
        QCOMPARE(s.size(), std::size_t(1));
        QCOMPARE(s[0].firstFill, std::size_t(1));
    }

    void anUnknownDistanceIsNotGuessed()
    {
        std::vector fills{fill(0, 40, 1000), fill(5, 30, 0), fill(9, 31, 1800)};
        fills[1].odometer.reset();
        QVERIFY(intervalsFrom(fills, {}).empty());
    }

    void partialFillsWithAReadingBoundAStretchAfterTheLastFullOne()
    {
        std::vector fills{fill(0, 40, 1000), fill(5, 20, 1300, FillExtent::partial),
                          fill(9, 15, 1550, FillExtent::partial)};
        fills[1].signalBefore = Signal::of(2);
        fills[2].signalBefore = Signal::of(3);
        QVERIFY(intervalsFrom(fills, {}).empty());   // no converter
        IntervalOptions options;
        options.fullLevel = Volume::fromLitres(60);
        options.levelOf = [](Signal s) -> std::optional<Estimate<Volume>> {
            return Estimate<Volume>{Volume::fromLitres(s.value() * 18), Volume::fromLitres(1.5)};
        };
        const auto s = intervalsFrom(fills, {}, options);
        QCOMPARE(s.size(), std::size_t(2));
        QVERIFY(near(s[0].burnt.mean.litres(), 60 - 36));        // full, arrived with 36
        QVERIFY(near(s[0].burnt.sd.litres(), 1.5));
        QVERIFY(near(s[1].burnt.mean.litres(), 36 + 20 - 54));   // left with 56, arrived with 54
        QVERIFY(near(s[1].burnt.sd.litres(), std::sqrt(4.5)));
        QVERIFY(near(s[1].distance.km(), 250));
    }

    void aReadingAtAFloatStopBoundsNothing()
    {
        std::vector fills{fill(0, 40, 1000), fill(5, 20, 1300, FillExtent::partial)};
        fills[1].signalBefore = Signal::of(0);
        IntervalOptions options;
        options.fullLevel = Volume::fromLitres(60);
        options.levelOf = [](Signal) { return std::optional<Estimate<Volume>>(); };
        QVERIFY(intervalsFrom(fills, {}, options).empty());
    }

    void tripsBelongToTheStretchTheyWereDrivenIn()
    {
        const std::vector fills{fill(0, 40, 1000), fill(5, 30, 1400), fill(9, 31, 1800)};
        std::vector trips{trip(0, 50, kTown), trip(3, 100, kTown), trip(5, 200, kMotorway),
                          trip(7, 400, kMotorway)};
        trips[1].idle = std::chrono::duration<double, std::ratio<60>>(30);
        trips[1].starts = 2;
        const auto s = intervalsFrom(fills, trips);
        QVERIFY(near(s[0].byMode.at(kTown).km(), 100));       // the first was before the begin
        QVERIFY(near(s[0].byMode.at(kMotorway).km(), 200));
        QVERIFY(near(s[0].idleHours, 0.5));
        QVERIFY(near(s[0].coldStarts, 2));
        QVERIFY(near(s[1].byMode.at(kMotorway).km(), 400));
        QCOMPARE(s[1].byMode.size(), std::size_t(1));
    }

    void tripsThatClaimMoreThanTheOdometerAreScaledDown()
    {
        const std::vector fills{fill(0, 40, 1000), fill(5, 30, 1400)};
        const std::vector trips{trip(2, 300, kTown), trip(3, 500, kMotorway)};
        const auto s = intervalsFrom(fills, trips);
        QVERIFY(near(s[0].byMode.at(kTown).km(), 150));
        QVERIFY(near(s[0].byMode.at(kMotorway).km(), 250));
    }
};

UNDERMARK_TEST(IntervalTest)
#include "interval_test.moc"
