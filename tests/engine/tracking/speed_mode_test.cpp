// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/speed_mode.h"

#include "engine/base/records.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

struct SpeedLog {
    SpeedMode mode;
    double now = 0.0;

    std::string at(double kmh, double seconds)
    {
        for (double s = 0.0; s < seconds; s += 0.5, now += 0.5)
            mode.add(Seconds(now), Speed::fromKmPerHour(kmh));
        return mode.mode().value_or("");
    }
};

} // namespace

class SpeedModeTest : public QObject {
    Q_OBJECT

private slots:
    void nothingIsSaidBeforeHalfAMinute()
    {
        SpeedLog drive;
        QCOMPARE(drive.at(60, 25), "");
        QCOMPARE(drive.at(60, 10), kOpenRoad);
    }
    void eachModeHasItsSpeeds()
    {
        QCOMPARE(SpeedLog().at(30, 60), kTown);
        QCOMPARE(SpeedLog().at(44, 60), kTown);
        QCOMPARE(SpeedLog().at(46, 60), kOpenRoad);
        QCOMPARE(SpeedLog().at(94, 60), kOpenRoad);
        QCOMPARE(SpeedLog().at(96, 60), kMotorway);
    }
    void aboutABoundItDoesNotFlicker()
    {
        SpeedLog drive;
        QCOMPARE(drive.at(44, 300), kTown);
        QCOMPARE(drive.at(49, 1200), kTown);
        QCOMPARE(drive.at(51, 1200), kOpenRoad);
        QCOMPARE(drive.at(41, 1200), kOpenRoad);
        QCOMPARE(drive.at(39, 1200), kTown);
        QCOMPARE(drive.at(130, 1200), kMotorway);
        QCOMPARE(drive.at(91, 1200), kMotorway);
        QCOMPARE(drive.at(89, 1200), kOpenRoad);
    }
    void haltsAndSilenceCountForNothing()
    {
        SpeedLog drive;
        QCOMPARE(drive.at(130, 600), kMotorway);
        QCOMPARE(drive.at(0, 3600), kMotorway);
        drive.now += 86400;
        QCOMPARE(drive.at(130, 1), kMotorway);
        drive.now -= 172800; // a clock set back
        QCOMPARE(drive.at(130, 1), kMotorway);
    }
    // 30 + 90 exp(-t / 60 s) km/h is under 40 after 132 s.
    void itFollowsWithinAboutTwoMinutes()
    {
        SpeedLog drive;
        drive.at(120, 1200);
        QCOMPARE(drive.at(30, 15), kMotorway);
        QCOMPARE(drive.at(30, 115), kOpenRoad);
        QCOMPARE(drive.at(30, 5), kTown);
    }
};

UNDERMARK_TEST(SpeedModeTest)
#include "speed_mode_test.moc"
