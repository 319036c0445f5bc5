// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/gauge.h"
#include "engine/calibration/lobes.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class GaugeTest : public QObject {
    Q_OBJECT
    static CalibrationPoint point(double litres, double first, std::optional<double> second = {})
    {
        CalibrationPoint out;
        out.added = Volume::fromLitres(litres);
        out.signal = Signal::of(first);
        if (second)
            out.signal2 = Signal::of(*second);
        return out;
    }
    static Gauge oneSender()
    {
        return *Gauge::calibrate(std::vector{point(0, 0.50), point(5, 0.87), point(20, 2.05),
                                             point(35, 3.12), point(50, 4.33)}, Sender{});
    }
    static Gauge twoLobes()
    {
        return *Gauge::calibrate(std::vector{point(0, 0.5, 0.5), point(15, 2.0, 0.5), point(30, 3.5, 0.5),
                                             point(50, 3.5, 3.5)}, Sender{});
    }

private slots:
    void aGaugeThatKnowsNothingReadsNothing()
    {
        QVERIFY(!Gauge().isKnown());
        QVERIFY(!Gauge().read({Signal::of(1.0), std::nullopt}));
        const Gauge dead = *Gauge::calibrate(std::vector{point(0, 2.2), point(25, 2.2), point(50, 2.2)}, Sender{});
        QVERIFY(!dead.isKnown());
        QVERIFY(!dead.read({Signal::of(2.2), std::nullopt}));
        QVERIFY(!dead.findings().empty());   // which say why
        QVERIFY(!Gauge::calibrate(std::vector{point(0, 1)}, Sender{}));
    }

    void twoLobesAreReadByBothSignalsOrNotAtAll()
    {
        const Gauge gauge = twoLobes();
        QVERIFY(gauge.hasTwoSignals());
        QVERIFY(!gauge.curve());
        QVERIFY(!gauge.read({Signal::of(2.0), std::nullopt}));
        const auto level = gauge.read({Signal::of(2.0), Signal::of(3.5)});
        QVERIFY(std::abs(level->added.mean.litres() - 35.0) < 1e-9);   // 15 and 20, as poured
        QCOMPARE(gauge.full().litres(), 50.0);
        QCOMPARE(gauge.lowest().litres(), 0.0);
    }

    void drivingTheLevelIsLowerByTheHysteresis()
    {
        const Gauge gauge = oneSender();
        QVERIFY(gauge.readsHigh().mean > Volume());
        const SenderReading half{Signal::of(2.05), std::nullopt};
        QCOMPARE(gauge.readDriving(half)->added.mean, gauge.read(half)->added.mean - gauge.readsHigh().mean);
        const SenderReading over{Signal::of(4.5), std::nullopt}, under{Signal::of(0.4), std::nullopt};
        QVERIFY(gauge.readDriving(over)->bound == LevelBound::atLeast);
        QCOMPARE(gauge.readDriving(over)->added.mean, gauge.read(over)->added.mean - gauge.readsHigh().mean);
        QVERIFY(gauge.readDriving(under)->bound == LevelBound::atMost);
        QCOMPARE(gauge.readDriving(under)->added.mean, gauge.read(under)->added.mean);
    }

    void sendersInSeriesAreLessSureByTheirUnequalEmptying()
    {
        const Volume spread = seriesSpread(Volume::fromLitres(35), Volume::fromLitres(15));
        const SenderReading half{Signal::of(2.05), std::nullopt};
        const double alone = oneSender().read(half)->added.sd.litres();
        const double series = oneSender().inSeries(spread).read(half)->added.sd.litres();
        QVERIFY(std::abs(series - std::hypot(alone, spread.litres())) < 1e-12);
    }

    void wherePouredTheCurvesShapeDoesNotMatter()
    {
        const Gauge gauge = oneSender();
        QVERIFY(gauge.known(Volume::fromLitres(20)).sd < gauge.known(Volume::fromLitres(27)).sd);
    }

    void theSweepTellsAShortFromAStop()
    {
        const Gauge gauge = oneSender();
        const auto fault = [&](double volts) { return gauge.faultOf({Signal::of(volts), {}}, Sender{}); };
        QVERIFY(fault(0.0) == CircuitFault::shorted);
        QVERIFY(fault(8.5) == CircuitFault::impossible);
        QVERIFY(!fault(0.45));
        QVERIFY(!fault(2.0));
        QVERIFY(twoLobes().faultOf({Signal::of(2.0), Signal::of(0.0)}, Sender{}) == CircuitFault::shorted);
    }
};

UNDERMARK_TEST(GaugeTest)
#include "gauge_test.moc"
