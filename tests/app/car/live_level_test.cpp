// SPDX-License-Identifier: GPL-3.0-or-later
//
// The level while it is followed: what is asked about, and what is taken back.
#include "app/car/live_level.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;
using namespace undermark::test;

namespace {

// Over the demo's calibration, of which 1.62 V are 30 L and 1.08 V are 40 L.
struct Filling {
    DemoCar car;
    LiveLevel level{*observationOf(**car.knowledge())};
    double now = 0.0;

    void stand(double seconds, double volts)
    {
        for (int i = 0; i < int(seconds); ++i) {
            now += 1.0;
            Sample sample;
            sample.time = Seconds(now);
            sample.signal = Signal::of(volts);
            sample.speed = Speed::fromKmPerHour(0);
            level.take(sample);
        }
    }
    double litres() const { return level.state().level.mean.litres(); }
};

} // namespace

class LiveLevelTest : public QObject {
    Q_OBJECT

private slots:
    void aRefuelIsAskedAboutUntilItIsSpokenOfOrCannotBeAnyMore()
    {
        Filling at;
        at.stand(200, 1.62);
        QVERIFY(!at.level.refuel());
        at.stand(200, 1.08);
        QVERIFY(at.level.refuel());
        QVERIFY(std::abs(at.level.refuel()->mean.litres() - 10) < 0.5);
        at.level.tellFill({Volume::fromLitres(9.5), Volume::fromLitres(0.05)});
        QVERIFY(!at.level.refuel());
        at.stand(120, 1.08);
        at.stand(200, 0.80);
        QVERIFY(at.level.refuel());
        at.stand(700, 0.80);
        QVERIFY(!at.level.refuel());
    }
    // The nozzle clicked, the question came, and more was poured before it was answered: the
    // pump shows all of it.
    void whatRisesWhileTheQuestionIsOpenIsOfTheSameFill()
    {
        for (const bool told : {true, false}) {
            Filling at;
            at.stand(200, 1.62);
            at.stand(150, 1.08);
            QVERIFY(std::abs(at.level.refuel()->mean.litres() - 10) < 0.5);
            at.stand(150, 0.772); // 5.5 L more
            QVERIFY(std::abs(at.level.refuel()->mean.litres() - 15.5) < 0.5);
            QVERIFY(std::abs(at.litres() - 45.5) < 0.5);
            if (told)
                at.level.tellFill({Volume::fromLitres(15.7), Volume::fromLitres(0.05)});
            else
                at.level.denyFill();
            QVERIFY(!at.level.refuel());
            QVERIFY2(std::abs(at.litres() - (told ? 45.7 : 30)) < 0.5, qPrintable(QString::number(at.litres())));
        }
    }
    // Who tells a fill while its last litres still run past the float must not be asked about
    // them as another: for half a minute the pump's word stands alone, and the level by it is
    // the lower of the two. What rises later is fuel again.
    void aSecondRiseInTheHaltIsAskedAboutUnlessItIsOfTheFillJustTold()
    {
        for (const int afterS : {1, 20, 60, 90, 180}) {
            Filling at;
            at.stand(200, 1.62);
            at.stand(120, 1.08);
            QVERIFY(at.level.refuel());
            at.level.tellFill({Volume::fromLitres(10), Volume::fromLitres(0.05)});
            at.stand(afterS, 1.08);
            at.stand(120, 0.772); // 5.5 L more
            QVERIFY(at.level.faults().empty());
            QCOMPARE(at.level.refuel().has_value(), afterS > 30);
            if (at.level.refuel())
                QVERIFY(std::abs(at.level.refuel()->mean.litres() - 5.5) < 0.5);
            else
                QVERIFY(std::abs(at.litres() - 40) < 0.5);
        }
    }
    // Against one that was never told, sample for sample.
    void aFillTakenBackLeavesAllAsIfItHadNeverBeenTold()
    {
        Filling told, never;
        for (Filling* at : {&told, &never}) {
            at->stand(200, 1.62);
            at->stand(300, 1.08);
        }
        told.level.tellFill({Volume::fromLitres(3), Volume::fromLitres(0.02)});
        QVERIFY(told.litres() < never.litres() - 5);
        for (Filling* at : {&told, &never})
            at->stand(200, 1.08);
        (void)told.level.takeEvents();
        told.level.takeBackFill();
        QCOMPARE(told.litres(), never.litres());
        QCOMPARE(told.level.state().level.sd.litres(), never.level.state().level.sd.litres());
        QCOMPARE(told.level.faults(), never.level.faults());
        QVERIFY(told.level.refuel());
        QVERIFY(told.level.takeEvents().empty());
    }
    void afterTheWindowTheSenderHasHadItsWord()
    {
        Filling at;
        at.stand(200, 1.62);
        at.stand(300, 1.08);
        at.level.tellFill({Volume::fromLitres(10), Volume::fromLitres(0.05)});
        at.stand(700, 1.08);
        const double litres = at.litres();
        at.level.takeBackFill();
        QCOMPARE(at.litres(), litres);
    }
};

UNDERMARK_TEST(LiveLevelTest)
#include "live_level_test.moc"
