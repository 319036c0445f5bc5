// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/level_tracker.h"
#include "tests/support/allocations.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <random>
#include <vector>

using namespace undermark;

namespace {

// A drive written down second by second: the reading is the true level with
// plain noise, or whatever a test puts in its place.
struct Drive {
    explicit Drive(double startL, TrackerSettings settings = plain())
        : level(startL), tracker(settings)
    {
    }

    static TrackerSettings plain()
    {
        TrackerSettings settings;
        settings.highest = Volume::fromLitres(50.0);
        settings.rate = {Consumption::fromLitresPer100Km(8.0), Consumption::fromLitresPer100Km(1.0)};
        return settings;
    }

    static LevelObservation reading(double litres, ReadingKind kind = ReadingKind::exact)
    {
        return {kind, {Volume::fromLitres(litres), Volume::fromLitres(0.3)}, {}};
    }

    // One second at `kmh` with what the sender says (nothing: no reading).
    void second(double kmh, std::optional<LevelObservation> said)
    {
        level -= kmh > 0.0 ? 0.08 * kmh / 3600.0 : 0.8 / 3600.0;
        TrackerSample sample;
        sample.time = Seconds(time);
        sample.speed = Speed::fromKmPerHour(kmh);
        sample.level = said;
        time += 1.0;
        take(tracker.add(sample));
    }

    void take(std::span<const TrackerEvent> happened)
    {
        events.insert(events.end(), happened.begin(), happened.end());
        const double now = tracker.state().level.mean.litres();
        bool said = false;
        for (const TrackerEvent& event : happened)
            said = said || event.kind == TrackerEventKind::refuel
                || event.kind == TrackerEventKind::correction;
        rose = rose || (known && now > shown + 1e-12 && !said);
        known = tracker.state().mode != TrackerMode::waiting;
        shown = now;
    }

    void run(double seconds, double kmh, double noise = 1.0)
    {
        for (double s = 0; s < seconds; ++s)
            second(kmh, reading(level + (kmh > 0 ? noise : 0.05) * normal(random)));
    }

    // The sender answers `said` whatever the tank does.
    void runSaying(double seconds, double kmh, std::optional<LevelObservation> said)
    {
        for (double s = 0; s < seconds; ++s)
            second(kmh, said);
    }

    int count(TrackerEventKind kind) const
    {
        int n = 0;
        for (const TrackerEvent& event : events)
            n += event.kind == kind;
        return n;
    }

    const TrackerEvent* first(TrackerEventKind kind) const
    {
        for (const TrackerEvent& event : events)
            if (event.kind == kind)
                return &event;
        return nullptr;
    }

    bool hasFault(FaultCode code) const
    {
        const TrackerEvent* fault = first(TrackerEventKind::fault);
        return fault && fault->fault == code && count(TrackerEventKind::fault) == 1;
    }

    double off() const { return tracker.state().level.mean.litres() - level; }
    double sd() const { return tracker.state().level.sd.litres(); }

    double level;
    double time = 0.0;
    LevelTracker tracker;
    std::vector<TrackerEvent> events;
    double shown = 0.0;
    bool known = false, rose = false;
    std::mt19937_64 random{7};
    std::normal_distribution<double> normal;
};

} // namespace

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

    void aStuckFloatIsFoundBeforeThreeLitresAreGone()
    {
        Drive drive(30.0);
        drive.run(3600, 80);
        const double onset = drive.level;
        const double stuck = drive.level;
        while (drive.count(TrackerEventKind::fault) == 0 && onset - drive.level < 8.0)
            drive.second(80, Drive::reading(stuck));
        QVERIFY(drive.hasFault(FaultCode::stuck));
        QVERIFY2(onset - drive.level < 3.5, qPrintable(QString::number(onset - drive.level)));
        QVERIFY(drive.tracker.onFault());
        // The level is counted anew from the onset: what misled it is undone.
        QVERIFY2(std::abs(drive.off()) < 1.2, qPrintable(QString::number(drive.off())));
        const double sd = drive.sd();
        drive.runSaying(3600, 80, Drive::reading(stuck));
        QVERIFY(drive.sd() > sd);
        QVERIFY(std::abs(drive.off()) < 3.0 * drive.sd());
        QVERIFY(!drive.rose);
        // The float comes free: the sender is taken back.
        drive.run(600, 80);
        QCOMPARE(drive.count(TrackerEventKind::faultCleared), 1);
        QVERIFY(!drive.tracker.onFault());
    }

    void aTankTrulyAboveTheUpperStopIsNotCalledStuck()
    {
        TrackerSettings settings = Drive::plain();
        Drive drive(49.0, settings);
        while (drive.level > 45.0)
            drive.second(80, Drive::reading(45.0, ReadingKind::atLeast));
        drive.run(1800, 80);
        QCOMPARE(drive.count(TrackerEventKind::fault), 0);
        QCOMPARE(drive.count(TrackerEventKind::onUpperStop), 1);
        QVERIFY(std::abs(drive.off()) < 3.0 * drive.sd());
    }

    void aFloatThatStaysOnTheUpperStopIsFound()
    {
        Drive drive(48.0);
        for (int s = 0; s < 8 * 3600 && drive.count(TrackerEventKind::fault) == 0; ++s)
            drive.second(80, Drive::reading(45.0, ReadingKind::atLeast));
        QVERIFY(drive.hasFault(FaultCode::stuckAtStop));
        QVERIFY2(drive.level > 34.0, qPrintable(QString::number(drive.level)));
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

    void anOpenAndAShortedWireAreTold()
    {
        Drive open(30.0);
        open.run(900, 60);
        open.runSaying(120, 60, Drive::reading(0.0, ReadingKind::tooHigh));
        QVERIFY(open.hasFault(FaultCode::open));
        QVERIFY(std::abs(open.off()) < 2.0);
        open.run(300, 60);
        QCOMPARE(open.count(TrackerEventKind::faultCleared), 1);

        Drive shorted(30.0);
        shorted.run(900, 60);
        shorted.runSaying(120, 60, Drive::reading(0.0));   // reads empty, within the range
        QVERIFY(shorted.hasFault(FaultCode::shortCircuit));
        QVERIFY(std::abs(shorted.off()) < 2.0);
    }

    void anOffsetJumpWhileDrivingIsAFaultAndNotARefuel()
    {
        for (const double step : {8.0, -8.0}) {
            Drive drive(30.0);
            drive.run(1800, 80);
            for (int s = 0; s < 300; ++s)
                drive.second(80, Drive::reading(drive.level + step + drive.normal(drive.random)));
            QVERIFY(drive.hasFault(FaultCode::offsetJump));
            QCOMPARE(drive.count(TrackerEventKind::refuel), 0);
            QVERIFY(std::abs(drive.off()) < 2.0);
        }
    }

    void silenceIsADropoutAndPasses()
    {
        Drive drive(30.0);
        drive.run(900, 60);
        const double sd = drive.sd();
        drive.runSaying(900, 60, std::nullopt);
        QVERIFY(drive.hasFault(FaultCode::dropout));
        QVERIFY(drive.sd() > sd);
        QVERIFY(std::abs(drive.off()) < 1.5);
        drive.run(300, 60);
        QCOMPARE(drive.count(TrackerEventKind::faultCleared), 1);
    }

    void aLooseContactIsToldAndDoesNotMoveTheLevel()
    {
        Drive drive(30.0);
        drive.run(900, 60);
        for (int s = 0; s < 900; ++s)
            drive.second(60, s % 5 == 0 ? Drive::reading(0.0, ReadingKind::tooLow)
                                        : Drive::reading(drive.level + drive.normal(drive.random)));
        QVERIFY(drive.hasFault(FaultCode::intermittent));
        QVERIFY(!drive.tracker.onFault());
        QVERIFY(std::abs(drive.off()) < 1.5);
    }

    void anImplausibleSourceIsTold()
    {
        TrackerSettings settings = Drive::plain();
        settings.rate = {Consumption::fromLitresPer100Km(2.0), Consumption::fromLitresPer100Km(1.0)};
        Drive drive(48.0, settings);
        drive.run(6 * 3600, 90);
        QVERIFY(drive.first(TrackerEventKind::fault));
        bool told = false;
        for (const TrackerEvent& event : drive.events)
            told = told || (event.kind == TrackerEventKind::fault
                            && event.fault == FaultCode::sourceScale);
        QVERIFY(told);
        QVERIFY(std::abs(drive.off()) < 2.0);
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
