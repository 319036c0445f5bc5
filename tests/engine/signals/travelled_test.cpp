// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/travelled.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class TravelledTest : public QObject {
    Q_OBJECT

    static void count(Travelled& way, double km, double s) { way.takeCount(Distance::fromKm(km), Seconds(s)); }
    static void speed(Travelled& way, double kmh, double s)
    {
        way.takeSpeed(Speed::fromKmPerHour(kmh), Seconds(s), Seconds(2));
    }

private slots:
    void speedAloneIsAddedUp()
    {
        Travelled way;
        for (int s = 0; s <= 3600; ++s)
            speed(way, 90.0, s);
        QVERIFY(std::abs(way.distance().km() - 90.0) < 1e-9);
    }

    // A count in steps of 125 m and a speedometer that shows 8 % too much: the way is the
    // wheels', never more than a step ahead of them, and smooth in between.
    void theWheelsCountIsFollowedAndSpeedFillsItsSteps()
    {
        Travelled way;
        double before = 0.0, most = 0.0;
        for (int i = 0; i <= 36000; ++i) { // an hour at 72 km/h
            const double s = 0.1 * i, km = 72.0 * s / 3600.0;
            speed(way, 72.0 * 1.08, s);
            if (i % 10 == 0)
                count(way, 500.0 + 0.125 * std::floor(km / 0.125), s);
            const double now = way.distance().km();
            QVERIFY(now >= before);
            most = std::max(most, std::abs(now - km));
            before = now;
        }
        QVERIFY2(most < 0.125, qPrintable(QString::number(most)));
        QVERIFY(std::abs(before - 72.0) < 0.125);
    }

    void noWayIsCountedTwiceWhereTheCountComesBack()
    {
        Travelled way;
        for (int s = 0; s <= 600; ++s) {
            speed(way, 100.0, s);
            if (s < 100 || s > 400)
                count(way, 100.0 * s / 3600.0, s);
        }
        QVERIFY(std::abs(way.distance().km() - 100.0 / 6.0) < 1e-3);
    }

    void aCountThatGoesBackOrLeapsIsANewOne()
    {
        Travelled way;
        count(way, 1000.0, 0);
        count(way, 1001.0, 60);
        QCOMPARE(way.distance().km(), 1.0);
        count(way, 5.0, 70);      // another dash
        count(way, 6.0, 130);
        QCOMPARE(way.distance().km(), 2.0);
        count(way, 40000.0, 131); // and a third
        QCOMPARE(way.distance().km(), 2.0);
        count(way, 40000.5, 160);
        QCOMPARE(way.distance().km(), 2.5);
    }

    void silenceAddsOnlyWhatASpeedIsGoodFor()
    {
        Travelled way;
        speed(way, 90.0, 0);
        speed(way, 90.0, 1000);
        QVERIFY(std::abs(way.distance().km() - 90.0 * 2 / 3600) < 1e-12);
    }

    void anotherClockCountsNothingInBetween()
    {
        Travelled way;
        speed(way, 90.0, 1000);
        count(way, 10.0, 1000);
        way.clockJumped();
        speed(way, 90.0, 0);
        count(way, 10.5, 0);
        QCOMPARE(way.distance().km(), 0.5);
    }
};

UNDERMARK_TEST(TravelledTest)
#include "travelled_test.moc"
