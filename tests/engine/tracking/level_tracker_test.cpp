// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/allocations.h"
#include "tests/support/level_drive.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;
using Drive = undermark::test::LevelDrive;

class LevelTrackerTest : public QObject {
    Q_OBJECT
private slots:
    void followsAPlainDriveWithoutAWord()
    {
        Drive drive(40.0);
        drive.run(4 * 3600, 80);
        QCOMPARE(drive.events.size(), std::size_t(0));
        QVERIFY(!drive.rose);
        QVERIFY2(std::abs(drive.off()) < 3.0 * drive.sd(), qPrintable(QString::number(drive.off())));
        QVERIFY(drive.sd() < 1.0);
    }

    void learnsTheScaleOfTheSource()
    {
        TrackerSettings settings = Drive::plain();
        settings.rate = {Consumption::fromLitresPer100Km(6.0), Consumption::fromLitresPer100Km(1.5)};
        Drive drive(45.0, settings);
        drive.run(5 * 3600, 90);
        QVERIFY(drive.count(TrackerEventKind::fault) == 0);
        const double scale = drive.tracker.state().scale.mean.ratio();
        QVERIFY2(std::abs(scale - 8.0 / 6.0) < 0.1, qPrintable(QString::number(scale)));
    }

    void aFillAtAHaltIsFoundAndAskedAbout()
    {
        Drive drive(20.0);
        drive.run(1800, 60);
        drive.run(180, 0);
        drive.level += 25.0;
        drive.run(240, 0);
        drive.run(1800, 60);
        QCOMPARE(drive.count(TrackerEventKind::refuel), 1);
        QCOMPARE(drive.events.size(), std::size_t(1));
        const TrackerEvent& refuel = *drive.first(TrackerEventKind::refuel);
        QVERIFY2(std::abs(refuel.litres.mean.litres() - 25.0) < 1.0,
                 qPrintable(QString::number(refuel.litres.mean.litres())));
        QVERIFY(std::abs(refuel.onset.count() - 1980.0) <= 60.0);
        QVERIFY(std::abs(drive.off()) < 1.5);
    }

    void aPartialFillWithTheEngineIdlingIsFound()
    {
        Drive drive(20.0);
        drive.run(1800, 60);
        drive.run(120, 0);
        for (int s = 0; s < 15; ++s) {
            drive.level += 4.0 / 15.0;
            drive.run(1, 0);
        }
        drive.run(180, 0);
        drive.run(600, 60);
        QCOMPARE(drive.count(TrackerEventKind::refuel), 1);
        QVERIFY(std::abs(drive.first(TrackerEventKind::refuel)->litres.mean.litres() - 4.0) < 0.5);
    }

    void aReadingThatDipsAndComesBackAtAHaltIsNoRefuel()
    {
        // Depths of 4 to 16 % of the range, from 20 s to three minutes long, at the
        // beginning of the halt or within it.
        for (const double depth : {2.0, 3.3, 5.0, 8.0})
            for (const double seconds : {20.0, 45.0, 90.0, 180.0})
                for (const double wait : {0.0, 100.0}) {
                    Drive drive(42.75);
                    drive.run(1800, 60);
                    drive.run(wait, 0);
                    for (int s = 0; s < seconds; ++s)
                        drive.second(0, Drive::reading(drive.level - depth));
                    drive.run(400, 0);
                    drive.run(600, 60);
                    QVERIFY2(drive.count(TrackerEventKind::refuel) == 0,
                             qPrintable(QString("%1 L, %2 s").arg(depth).arg(seconds)));
                    QVERIFY(std::abs(drive.off()) < 1.5);
                }
    }

    void aReadingThatSettlesLateIsNoRefuel()
    {
        for (const double depth : {3.0, 6.0, 9.0})
            for (const double seconds : {20.0, 60.0, 120.0}) {
                Drive drive(35.0);
                drive.run(1800, 60);
                double missing = depth;
                for (int s = 0; s < 600; ++s, missing *= std::exp(-1.0 / seconds))
                    drive.second(0, Drive::reading(drive.level - missing));
                QCOMPARE(drive.count(TrackerEventKind::refuel), 0);
            }
    }

    void afterADipAFillIsStillFound()
    {
        Drive drive(30.0);
        drive.run(1800, 60);
        drive.run(90, 0);
        for (int s = 0; s < 45; ++s)
            drive.second(0, Drive::reading(drive.level - 4.0));
        drive.run(120, 0);
        for (int s = 0; s < 15; ++s) {
            drive.level += 6.0 / 15.0;
            drive.run(1, 0);
        }
        drive.run(240, 0);
        QCOMPARE(drive.count(TrackerEventKind::refuel), 1);
        QVERIFY(std::abs(drive.first(TrackerEventKind::refuel)->litres.mean.litres() - 6.0) < 0.7);
    }

    void aFillWhileTheLoggerWasOffIsFound()
    {
        Drive drive(15.0);
        drive.run(1800, 60);
        drive.time += 900.0;
        drive.level += 20.0;
        drive.run(900, 60);
        QCOMPARE(drive.count(TrackerEventKind::gap), 1);
        QCOMPARE(drive.count(TrackerEventKind::refuel), 1);
        QCOMPARE(drive.count(TrackerEventKind::fault), 0);
        QVERIFY(std::abs(drive.first(TrackerEventKind::refuel)->litres.mean.litres() - 20.0) < 2.0);
    }

    void whatThePumpShowedReplacesWhatTheFloatSaw()
    {
        Drive drive(15.0);
        drive.run(900, 60);
        drive.run(150, 0);
        drive.level += 20.0;
        drive.run(180, 0);
        QCOMPARE(drive.count(TrackerEventKind::refuel), 1);
        const double seen = drive.first(TrackerEventKind::refuel)->litres.mean.litres();
        const double before = drive.tracker.state().level.mean.litres();
        drive.tracker.tellFill({Volume::fromLitres(24.0), Volume::fromLitres(0.1)});
        const double after = drive.tracker.state().level.mean.litres();
        QVERIFY2(std::abs(after - before - (24.0 - seen)) < 0.3, qPrintable(QString::number(after)));
        // What was told is not found once more.
        drive.level += 4.0;
        drive.run(600, 0);
        QCOMPARE(drive.count(TrackerEventKind::refuel), 1);
    }

    void onTheLowerStopConsumptionCarriesOn()
    {
        Drive drive(8.0);
        while (drive.level > 5.0)
            drive.run(1, 80);
        const double atStop = drive.level;
        drive.runSaying(1800, 80, Drive::reading(5.0, ReadingKind::atMost));
        QCOMPARE(drive.count(TrackerEventKind::fault), 0);
        QCOMPARE(drive.count(TrackerEventKind::onLowerStop), 1);
        QVERIFY(std::abs(drive.tracker.state().level.mean.litres() - drive.level)
                < 0.5 * (atStop - drive.level));
    }

    void aClockThatGoesBackIsSurvivedAndSaid()
    {
        Drive drive(30.0);
        drive.run(900, 60);
        drive.time -= 500.0;
        drive.run(900, 60);
        QCOMPARE(drive.count(TrackerEventKind::clockJump), 1);
        QCOMPARE(drive.events.size(), std::size_t(1));
        QVERIFY(std::abs(drive.off()) < 1.5);
    }

    void startsFromTheLastKnownState()
    {
        TrackerSettings settings = Drive::plain();
        settings.lastKnown = {Volume::fromLitres(22.0), Volume::fromLitres(0.4)};
        settings.sinceLastKnown = Seconds(8 * 3600);
        Drive drive(22.0, settings);
        QCOMPARE(drive.tracker.state().level.mean.litres(), 22.0);
        drive.run(60, 0);
        QVERIFY(drive.sd() < 0.7);
        // Filled in between: the first readings say so.
        Drive filled(45.0, settings);
        filled.run(300, 0);
        QCOMPARE(filled.count(TrackerEventKind::refuel), 1);
        QVERIFY(std::abs(filled.off()) < 1.0);
    }

    void levelAloneIsEnough()
    {
        TrackerSettings settings = Drive::plain();
        settings.rate.reset();
        LevelTracker tracker(settings);
        std::mt19937_64 random(3);
        std::normal_distribution<double> normal(0.0, 1.0);
        double level = 40.0;
        int events = 0;
        for (int s = 0; s < 4 * 3600; ++s) {
            level -= 7.0 / 3600.0;
            TrackerSample sample;
            sample.time = Seconds(s);
            sample.level = Drive::reading(level + normal(random));
            events += int(tracker.add(sample).size());
        }
        QCOMPARE(events, 0);
        QVERIFY(std::abs(tracker.state().level.mean.litres() - level) < 2.0);
    }

    void noSampleAllocates()
    {
        Drive drive(45.0);
        drive.events.reserve(1000);
        drive.run(60, 60);
        const long before = g_allocations;
        drive.run(3600, 60);
        drive.run(300, 0);
        drive.level += 5.0;
        drive.run(300, 0);
        drive.runSaying(3600, 80, Drive::reading(30.0));
        drive.time += 5000.0;
        drive.run(3600, 60);
        QCOMPARE(g_allocations - before, 0L);
        QVERIFY(!drive.events.empty());
    }
};

UNDERMARK_TEST(LevelTrackerTest)
#include "level_tracker_test.moc"
