// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/driven_ways.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

struct Going {
    DrivenWays ways;
    double now = 0.0, km = 100.0;

    void go(double kmh, double seconds, const std::string& mode)
    {
        for (int i = 0; i < int(10 * seconds); ++i) {
            now += 0.1;
            km += kmh * 0.1 / 3600;
            Sample sample;
            sample.time = Seconds(now);
            sample.distance = Distance::fromKm(km);
            ways.add(sample, mode);
        }
    }
    double kmIn(std::size_t i) const { return ways.ways()[i].way.km(); }
};

} // namespace

class DrivenWaysTest : public QObject {
    Q_OBJECT

private slots:
    void theWaysOfAllModesAreTogetherTheWholeWay()
    {
        Going drive;
        drive.go(0, 5, "town");
        QVERIFY(drive.ways.ways().empty());
        drive.go(36, 100, "town");
        drive.go(120, 600, "motorway");
        drive.go(36, 50, "town");
        QCOMPARE(drive.ways.ways().size(), std::size_t(2));
        QVERIFY(std::abs(drive.kmIn(0) - 1.5) < 1e-9);
        QVERIFY(std::abs(drive.kmIn(1) - 20.0) < 1e-9);
        drive.ways.startAnew();
        QVERIFY(drive.ways.ways().empty());
        drive.go(36, 100, "town"); // what was driven before is not counted again
        QVERIFY(std::abs(drive.kmIn(0) - 1.0) < 1e-9);
    }
    void silenceAndADistanceThatBeginsAnewLoseNothing()
    {
        Going drive;
        drive.go(72, 100, "town");
        drive.now += 60;
        drive.km += 1.2; // the wheels' count over a silence
        drive.go(72, 100, "town");
        QVERIFY(std::abs(drive.kmIn(0) - 5.198) < 1e-9); // but the first step, from nowhere
        drive.km = 0;
        drive.go(72, 50, "town");
        QVERIFY(std::abs(drive.kmIn(0) - 6.196) < 1e-9); // and that one
        Sample unknown;
        unknown.time = Seconds(drive.now + 1);
        drive.ways.add(unknown, "town");
        QVERIFY(std::abs(drive.kmIn(0) - 6.196) < 1e-9);
    }
    void aWayMayTurnOutToBeOfAnotherMode()
    {
        Going drive;
        drive.go(0, 5, "");
        drive.go(36, 50, "");
        drive.go(36, 100, "town");
        drive.ways.rename("", "town");
        QCOMPARE(drive.ways.ways().size(), std::size_t(1));
        QCOMPARE(drive.ways.ways()[0].mode, std::string("town"));
        QVERIFY(std::abs(drive.kmIn(0) - 1.5) < 1e-9);
        drive.ways.rename("motorway", "town"); // of which there is none
        QVERIFY(std::abs(drive.kmIn(0) - 1.5) < 1e-9);
    }
    void itIsOverAfterTenSecondsOfSilenceThatBeganAtAHalt()
    {
        Going drive;
        QVERIFY(!drive.ways.over(Seconds(1e6)));
        drive.go(72, 100, "town");
        QVERIFY(!drive.ways.over(Seconds(drive.now + 500))); // a tunnel, a loose plug
        QVERIFY(drive.ways.over(Seconds(drive.now + 601)));
        drive.go(0, 60, "town"); // a light: no silence
        QVERIFY(!drive.ways.over(Seconds(drive.now + 9.9)));
        QVERIFY(drive.ways.over(Seconds(drive.now + 10.1)));
    }
};

UNDERMARK_TEST(DrivenWaysTest)
#include "driven_ways_test.moc"
