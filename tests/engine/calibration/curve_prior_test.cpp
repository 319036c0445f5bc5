// SPDX-License-Identifier: GPL-3.0-or-later
//
// How sure a level between the points of a calibration is. Whether the figures hold on
// tanks of many shapes is tests/accuracy/calibration_campaign's business.
#include "engine/calibration/curve_prior.h"
#include "engine/calibration/gauge.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class CurvePriorTest : public QObject {
    Q_OBJECT
    // Straight, or bent by so many litres half way, up to 50 L over 4 V.
    static Gauge gauge(const std::vector<double>& litres, double bend = 0.0)
    {
        std::vector<CalibrationPoint> points;
        for (const double l : litres) {
            const double bent = l - bend * 4.0 * (l / 50.0) * (1.0 - l / 50.0);
            points.push_back({Volume::fromLitres(l), Signal::of(0.5 + 0.08 * bent), {}, {}, 5});
        }
        Sender sender;
        sender.resolution = Signal::of(0.001);
        return *Gauge::calibrate(points, sender);
    }
    static double sdAt(const Gauge& gauge, double volts)
    {
        return gauge.read({Signal::of(volts), {}})->added.sd.litres();
    }

private slots:
    void twoPointsAreNoStraightLine()
    {
        // A quarter more than 0.145 of the tank, half way: 9.1 L.
        QVERIFY(std::abs(sdAt(gauge({0, 50}), 2.5) - 9.3) < 0.4);
    }

    void threePointsDoNotKnowTheMiddleOfTheTank()
    {
        const double sd = sdAt(gauge({0, 5, 50}), 2.7);
        QVERIFY2(sd > 0.07 * 50 && sd < 0.13 * 50, qPrintable(QString::number(sd)));
    }

    void aBaseByChanceNearTheLineDoesNotShrinkThat()
    {
        QVERIFY(sdAt(gauge({0, 5, 50}), 2.7) >= sdAt(gauge({0, 5, 50}, 4.0), 2.7) * 0.8);
        const calibration::Miss hit{0.0, 1.0};
        QCOMPARE(calibration::shapeScale(std::vector{hit}), 1.0);
        QVERIFY(calibration::shapeScale(std::vector{calibration::Miss{3.0, 1.0}}) > 1.2);
        QVERIFY(calibration::shapeScale(std::vector{hit, hit, hit, hit}) < 0.9);
    }

    void everyPointMoreMakesTheLevelSurer()
    {
        double before = 100.0;
        for (const int n : {2, 3, 4, 5, 8, 12}) {
            std::vector<double> litres;
            for (int i = 0; i < n; ++i)
                litres.push_back(50.0 * i / (n - 1));
            double worst = 0.0;
            for (double volts = 0.6; volts < 4.0; volts += 0.05)
                worst = std::max(worst, sdAt(gauge(litres), volts));
            QVERIFY2(worst < before, qPrintable(QString("%1: %2").arg(n).arg(worst)));
            before = worst;
        }
    }

    void aPointIsSurerThanTheGapBesideIt()
    {
        const Gauge five = gauge({0, 5, 20, 35, 50});
        QVERIFY(sdAt(five, 0.5 + 0.08 * 20) < sdAt(five, 0.5 + 0.08 * 27.5));
    }

    void anUpperStopThatWasNotSeenIsNotReadAsExact()
    {
        const auto full = gauge({0, 5, 50}).read({Signal::of(4.5), {}});
        QVERIFY(full->added.sd > Volume::fromLitres(2.0));   // 12 % of the tank may hide there
        QVERIFY(gauge({0, 5, 50}).known(Volume::fromLitres(50)).sd < Volume::fromLitres(1.0));
    }

    void aReadingHasNoiseMoreWhileTheCarMoves()
    {
        const Gauge many = gauge({0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50});
        const SenderReading half{Signal::of(2.5), {}};
        const double rest = many.readDriving(half)->added.sd.litres();
        const double moving = many.readDriving(half, {}, Motion::moving)->added.sd.litres();
        QVERIFY(moving > 1.8 && moving < 2.3);   // 3.6 % of 50 L, and what there is at rest
        QVERIFY(rest < 1.0);
        const double stated = many.readDriving(half, Signal::of(0.4))->added.sd.litres();
        QVERIFY(std::abs(stated - std::hypot(5.0, rest)) < 0.1);
        // Past the last point there is no curve to say how far: no more than all there is.
        QVERIFY(many.readDriving({Signal::of(4.5), {}}, Signal::of(0.4))->added.sd.litres() < 5.5);
    }

    void theNeedlesZeroIsLowerOnTheWayDown()
    {
        const Gauge poured = gauge({0, 5, 20, 35, 50});
        const Estimate<Volume> up = poured.known(Volume::fromLitres(5));
        const Estimate<Volume> down = poured.knownDriving(Volume::fromLitres(5));
        QCOMPARE(down.mean, up.mean - poured.readsHigh().mean);
        QVERIFY(down.sd > up.sd && poured.readsHigh().mean > Volume());
    }

    void readingsOnTheWayDownTellThePlayAsFarAsTheCurveIsSure()
    {
        // Five points up, three down that stand 0.06 V (0.75 L) off; three points up say
        // nothing of it: there the curve's own shape may be the difference.
        const auto withDown = [](std::vector<double> up) {
            std::vector<CalibrationPoint> points;
            for (const double l : up)
                points.push_back({Volume::fromLitres(l), Signal::of(0.5 + 0.08 * l), {}, {}, 5});
            for (const double l : {35.0, 30.0, 27.5})
                points.push_back({Volume::fromLitres(l), Signal::of(0.56 + 0.08 * l), {}, {}, 5});
            Sender sender;
            sender.resolution = Signal::of(0.001);
            return Gauge::calibrate(points, sender)->readsHigh();
        };
        const Estimate<Volume> many = withDown({0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50});
        const Estimate<Volume> few = withDown({0, 5, 50});
        const Estimate<Volume> assumed = assumedHysteresis(Volume::fromLitres(50));
        QVERIFY(std::abs(many.mean.litres() - 0.75) < 0.1);
        QVERIFY(many.sd < 0.6 * assumed.sd);
        QVERIFY(few.sd > 0.9 * assumed.sd);
    }
};

UNDERMARK_TEST(CurvePriorTest)
#include "curve_prior_test.moc"
