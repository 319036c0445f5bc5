// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/correction.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class CorrectionTest : public QObject {
    Q_OBJECT

    static Fill fill()
    {
        Fill fill;
        fill.volume = Volume::fromLitres(10);
        fill.odometer = Distance::fromKm(5000);
        fill.sinceLast = Distance::fromKm(300);
        return fill;
    }

    static ConsumptionModel learntFrom(std::size_t tanks)
    {
        ConsumptionModel model(ConsumptionSetup{{{kTown, {}}}, {}, {}});
        Interval tank;
        tank.burnt.mean = Volume::fromLitres(40);
        tank.distance = Distance::fromKm(500);
        for (std::size_t i = 0; i < tanks; ++i)
            model.observe(tank);
        return model;
    }

private slots:
    void aWrongUnitIsMendedExactlyAndCounts()
    {
        FillFlag flag;
        flag.cause = FlagCause::gallonsAsLitres;
        flag.volume = Volume::fromUsGallons(10);
        const Fill mended = corrected(fill(), flag).value();
        QCOMPARE(mended.volume.litres(), 37.85411784);   // NIST SP 811
        QVERIFY(!mended.counted);
        QVERIFY(mended.odometer == fill().odometer && mended.sinceLast == fill().sinceLast);
    }

    void whatWasWorkedOutFromTheExpectedConsumptionTeachesNothing()
    {
        FillFlag flag;
        flag.cause = FlagCause::wrongOdometer;
        flag.odometer = Distance::fromKm(5200);
        const Fill mended = corrected(fill(), flag).value();
        QCOMPARE(mended.odometer->km(), 5200.0);
        QCOMPARE(mended.sinceLast->km(), 300.0);
        QVERIFY(mended.counted == std::optional(false));
    }

    void aForgottenFillHasNoCorrectionOfItsOwn()
    {
        FillFlag flag;
        flag.cause = FlagCause::forgottenFill;
        flag.missing = Volume::fromLitres(35);
        QVERIFY(!corrected(fill(), flag));
    }

    // Of two fills it is not known which one was typed in gallons.
    void aStretchOfSeveralFillsProposesNoLitresForTheLast()
    {
        std::vector<Fill> fills(1, fill());
        for (int i = 1; i <= 14; ++i) {
            Fill next;
            next.time = Instant(std::chrono::days(i));
            next.volume = Volume::fromLitres(40);
            next.odometer = Distance::fromKm(5000 + 500 * i);
            fills.push_back(next);
        }
        Fill half = fills.back();
        half.volume = Volume::fromLitres(5.3);
        half.extent = FillExtent::partial;
        half.odometer = Distance::fromKm(11750);
        fills.back().volume = Volume::fromLitres(5.3);   // 10.6 gallons are 40 L
        fills.insert(fills.end() - 1, half);
        const auto flags = screen(fills, {}, learntFrom(0)).flags;
        QCOMPARE(flags.size(), std::size_t(1));
        QVERIFY(flags[0].cause == FlagCause::gallonsAsLitres);
        QVERIFY(!flags[0].volume);
        fills.erase(fills.end() - 2);
        fills.back().volume = Volume::fromLitres(10.6);
        QVERIFY(std::abs(screen(fills, {}, learntFrom(0)).flags.at(0).volume->usGallons() - 10.6) < 1e-9);
    }
};

UNDERMARK_TEST(CorrectionTest)
#include "correction_test.moc"
