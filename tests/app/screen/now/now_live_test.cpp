// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Now page over a car that speaks: driven, refuelled, gone silent.
#include "app/screen/base/screen.h"
#include "tests/support/speaking_car.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>

using namespace undermark;

namespace {

// By the demo's calibration (app/car/demo_logbook.cpp), between two of its points.
double voltsAt(double litres)
{
    constexpr double kVolts[] = {3.02, 2.84, 2.61, 2.37, 2.13, 1.88, 1.62, 1.35, 1.08, 0.80, 0.55};
    const auto below = std::min(std::size_t(litres / 5), std::size(kVolts) - 2);
    return kVolts[below] + (kVolts[below + 1] - kVolts[below]) * (litres / 5 - double(below));
}

Fill fillOf(double litres)
{
    Fill fill;
    fill.time = systemTime();
    fill.volume = Volume::fromLitres(litres);
    fill.extent = FillExtent::partial;
    return fill;
}

struct LiveScreen {
    test::DemoCar car;
    Screen screen{car};
    test::SpeakingCar speaking{screen.feed};
    NowLive& live = *screen.now.live();

    explicit LiveScreen(double litres = 40) { speaking.startAt(voltsAt(litres)); }
    // At 10 L/100 km.
    void drive(double kmh, double seconds, double fromLitres)
    {
        speaking.drive(kmh, seconds, voltsAt(fromLitres - kmh / 36000 * seconds));
    }
    bool says(const QString& part) const
    {
        for (const NoticeText& notice : screen.now.notices())
            if (notice.text.contains(part))
                return true;
        return false;
    }
};

} // namespace

class NowLiveTest : public QObject {
    Q_OBJECT
private slots:
    void theLevelAndTheDistanceCountDownWithTheRoad()
    {
        LiveScreen at;
        QVERIFY(at.speaking.isOpen());
        QVERIFY(!at.live.level());
        QVERIFY(at.screen.now.age().startsWith("log"));
        at.drive(72, 10, 40);
        QVERIFY(at.screen.now.age().startsWith("listening to the sender: log"));
        at.drive(72, 110, 40);
        QVERIFY(at.live.level());
        QVERIFY(std::abs(at.live.level()->mean.litres() - 40) < 1.5);
        QCOMPARE(at.screen.now.age(), "sender 0 s ago");
        const int before = at.screen.now.sureNumber().toInt();
        QCOMPARE(before, int(distances((*nowState(**at.car.knowledge(), at.screen.now.question())).outlook.toZero).p99.km()));
        at.drive(72, 3000, 39.7);
        const int after = at.screen.now.sureNumber().toInt();
        QVERIFY2(after < before - 40 && after > before - 110, qPrintable(QString("%1 %2").arg(before).arg(after)));
        QVERIFY(at.screen.now.notices().isEmpty());
    }
    // As when an adapter is exchanged, or another port is kept with the car.
    void anotherSourceOfTheSameCarGoesOnWithTheLevel()
    {
        LiveScreen at;
        at.drive(72, 300, 40);
        const double before = at.live.level()->mean.litres();
        at.speaking.connect();
        at.drive(72, 120, 39.4);
        QVERIFY(!at.says("clock jumped"));
        QVERIFY(at.live.level());
        QCOMPARE(at.screen.now.age(), "sender 0 s ago");
        QVERIFY(at.live.level()->mean.litres() < before);
        QVERIFY(std::abs(at.live.level()->mean.litres() - 39.16) < 0.6);
        QVERIFY(at.live.refuelWord().isEmpty());
    }
    void aSilentSourceIsGreyedAndThenTheLogAnswers()
    {
        LiveScreen at;
        at.drive(72, 120, 40);
        QSignalSpy others(&at.screen.now, &NowViewModel::asksOtherwise);
        at.speaking.silence(2.5);
        QVERIFY(!at.live.quiet());
        at.speaking.silence(2);
        QVERIFY(at.live.quiet());
        QVERIFY(at.live.level());
        QCOMPARE(at.screen.now.age(), "sender 4 s ago");
        at.speaking.silence(8);
        QVERIFY(!at.live.level());
        QCOMPARE(others.count(), 1);
        QVERIFY2(at.screen.now.age().startsWith("source silent for 12 s: log, "), qPrintable(at.screen.now.age()));
        QCOMPARE(at.screen.now.sureNumber(), QString::number(int(distances(at.car.now()->outlook.toZero).p99.km())));
        at.drive(72, 1, 39.7);
        QVERIFY(at.live.level());
        QVERIFY(!at.live.quiet());
    }
    void aRefuelIsAskedAboutAndThePumpTeachesTheLevel()
    {
        LiveScreen at(30);
        QSignalSpy seen(&at.live, &NowLive::refuelSeen);
        at.drive(72, 600, 30);
        at.drive(0, 120, 28.8);
        at.speaking.drive(0, 90, voltsAt(40.8)); // 12 L go in
        at.speaking.drive(0, 240, voltsAt(40.8));
        QCOMPARE(seen.count(), 1);
        QVERIFY(at.live.stands());
        QVERIFY2(at.live.refuelWord().contains(" L went in: log it"), qPrintable(at.live.refuelWord()));
        QVERIFY(std::abs(at.live.refuel()->mean.litres() - 12) < 1.0);
        QCOMPARE(at.screen.pump.form()->text(0), UnitFormat().typed(at.live.refuel()->mean));
        QVERIFY2(at.screen.pump.notices()[0].text.startsWith("The sender saw 1"), qPrintable(at.screen.pump.notices()[0].text));
        QCOMPARE(at.screen.pump.extent(), int(FillExtent::partial));
        const double before = at.live.level()->mean.litres() - at.live.refuel()->mean.litres();
        at.screen.pump.form()->select(0);
        for (const QChar key : QString("11.5"))
            at.screen.pump.form()->press(key);
        at.screen.pump.save();
        QVERIFY(at.screen.pump.saved());
        QVERIFY(at.live.refuelWord().isEmpty());
        QVERIFY2(std::abs(at.live.level()->mean.litres() - before - 11.5) < 0.05,
                 qPrintable(QString::number(at.live.level()->mean.litres())));
        QCOMPARE((*at.car.knowledge())->log.fills.back().value.volume.litres(), 11.5);
    }
    void whatIsPouredAfterTheClickIsProposedWithTheRest()
    {
        LiveScreen at(30);
        at.drive(0, 200, 30);
        at.speaking.drive(0, 1, voltsAt(40));
        at.speaking.drive(0, 150, voltsAt(40));
        const double first = at.live.refuel()->mean.litres();
        QCOMPARE(at.screen.pump.form()->text(0), UnitFormat().typed(Volume::fromLitres(first)));
        at.speaking.drive(0, 1, voltsAt(45));
        at.speaking.drive(0, 150, voltsAt(45));
        QVERIFY(std::abs(at.live.refuel()->mean.litres() - 15) < 0.7);
        QCOMPARE(at.screen.pump.form()->text(0), UnitFormat().typed(at.live.refuel()->mean));
    }
    void whereNoneWentInTheSenderIsAtFault()
    {
        LiveScreen at(30);
        at.drive(72, 600, 30);
        at.drive(0, 120, 28.8);
        at.speaking.drive(0, 90, voltsAt(40.8));
        at.speaking.drive(0, 240, voltsAt(40.8));
        QVERIFY(!at.live.refuelWord().isEmpty());
        at.live.denyFill();
        QVERIFY(at.live.refuelWord().isEmpty());
        QVERIFY(std::abs(at.live.level()->mean.litres() - 28.8) < 1.0);
        QVERIFY(at.says("shifted in one step"));
        at.drive(72, 60, 40.8);
        QVERIFY2(at.screen.now.age().startsWith("by consumption alone"), qPrintable(at.screen.now.age()));
    }
    // A pump that stops half way: a notice that names tank and litres, until it goes on.
    void aFurtherTankThatIsHeardCountsAndItsPumpIsWatched()
    {
        LiveScreen at(25);
        ExtraTank aux = test::auxTank();
        aux.feed = TankFeed::pumpedOver;
        QVERIFY(at.car.record(aux));
        Calibration poured;
        poured.time = systemTime();
        poured.tank = "aux";
        for (const double litres : {0.0, 10.0, 20.0, 30.0})
            poured.points.push_back({Volume::fromLitres(litres), Signal::of(litres / 10), {}, {}, 4});
        QVERIFY(at.car.record(poured));
        at.screen.now.refresh();
        double own = 25.0, beside = 24.0;
        const auto drive = [&](double minutes, double pumpedLPerMin) {
            for (int i = 0; i < int(2 * minutes); ++i) {
                beside -= pumpedLPerMin / 2;
                own += pumpedLPerMin / 2 - 72 * 30 / 36000.0;
                at.speaking.sayBeside(beside / 10);
                at.speaking.drive(72, 30, voltsAt(own));
            }
        };
        drive(5, 0);
        const Estimate<Volume> both = nowState(**at.car.knowledge(), at.screen.now.question())->outlook.usable;
        QVERIFY2(std::abs(both.mean.litres() - own - beside) < 2.5, qPrintable(QString::number(both.mean.litres() - own - beside)));
        drive(20, 0);
        drive(5, 2);
        QVERIFY(!at.says("No more fuel comes over"));
        drive(45, 0);
        QVERIFY(at.says("No more fuel comes over from aux"));
        QVERIFY2(at.says("14"), "litres left in it");
        drive(3, 2);
        drive(10, 0);
        QVERIFY(!at.says("No more fuel comes over"));
    }
    void theQuestionExpiresAndAFillLoggedLaterIsNotCountedTwice()
    {
        LiveScreen at(30);
        at.drive(72, 600, 30);
        at.drive(0, 120, 28.8);
        at.speaking.drive(0, 90, voltsAt(40.8));
        at.speaking.drive(0, 240, voltsAt(40.8));
        QVERIFY(!at.live.refuelWord().isEmpty());
        at.drive(72, 700, 40.8);
        QVERIFY(at.live.refuelWord().isEmpty());
        const double before = at.live.level()->mean.litres();
        at.live.tellFill({{}, {}, fillOf(12)});
        QCOMPARE(at.live.level()->mean.litres(), before);
    }
    // Only what lasts is asked about: the reading has to stay for whole blocks of half a minute,
    // three where it rose before it had come to rest. So the question comes within two minutes,
    // and the page says within one that the level has risen.
    void aSuddenRiseIsSaidWithinAMinuteAndAskedAboutWithinTwo()
    {
        for (const double stoodS : {20.0, 45.0, 75.0, 120.0, 200.0}) {
            for (const double phaseS : {0.0, 9.0, 17.0, 26.0}) {
                LiveScreen at(30);
                at.drive(72, 600 + phaseS, 30);
                const double left = 30 - 0.002 * (600 + phaseS);
                at.speaking.drive(0, stoodS, voltsAt(left));
                at.speaking.drive(0, 1, voltsAt(left + 10));
                double said = 0, asked = 0;
                for (double s = 1; s <= 120 && asked == 0; s += 1) {
                    at.speaking.drive(0, 1, voltsAt(left + 10));
                    if (said == 0 && at.screen.now.age().startsWith("the level has risen"))
                        said = s;
                    if (!at.live.refuelWord().isEmpty())
                        asked = s;
                }
                const QString told = QString("stood %1 s, %2 s into a block: said after %3 s, asked after %4 s")
                                         .arg(stoodS).arg(phaseS).arg(said).arg(asked);
                QVERIFY2(said > 0 && said <= 60 && asked > said, qPrintable(told));
                QVERIFY2(std::abs(at.live.refuel()->mean.litres() - 10) < 1.0, qPrintable(told));
            }
        }
    }
    // Undone on whichever page, or corrected: the level is what it would be had it been so from
    // the beginning, and the question is open again.
    void aFillTakenBackOrCorrectedIsUnlearnt()
    {
        LiveScreen at(30);
        at.drive(72, 600, 30);
        at.drive(0, 120, 28.8);
        at.speaking.drive(0, 90, voltsAt(40.8));
        at.speaking.drive(0, 240, voltsAt(40.8));
        const double seen = at.live.level()->mean.litres();
        const QString question = at.live.refuelWord();
        at.screen.pump.form()->select(0);
        for (const QChar key : QString("8"))
            at.screen.pump.form()->press(key);
        at.screen.pump.save();
        QVERIFY(at.live.level()->mean.litres() < seen - 3);
        at.screen.pump.undo();
        QCOMPARE(at.live.level()->mean.litres(), seen);
        QCOMPARE(at.live.refuelWord(), question);
        const auto id = at.car.record(fillOf(8));
        QVERIFY(id);
        at.live.tellFill({*id, {}, fillOf(8)});
        QVERIFY(at.car.revise(*id, fillOf(11.5)));
        at.screen.now.refresh();
        QVERIFY(std::abs(at.live.level()->mean.litres() - (28.8 + 11.5)) < 0.5);
        QVERIFY(at.live.refuelWord().isEmpty());
    }
    // Twenty litres that never went in are believed, then the sender's word is a fault; taken
    // back there is none.
    void aFillThatNeverWasMakesNoFaultOnceItIsTakenBack()
    {
        LiveScreen at(20);
        at.drive(72, 300, 20);
        const auto id = at.car.record(fillOf(20));
        QVERIFY(id);
        at.live.tellFill({*id, {}, fillOf(20)});
        at.drive(72, 300, 19.4);
        QVERIFY(at.says("shifted in one step"));
        QVERIFY(at.car.takeBack(*id));
        at.screen.now.refresh();
        QVERIFY(!at.says("shifted in one step"));
        QVERIFY(std::abs(at.live.level()->mean.litres() - 18.8) < 1.0);
    }
    void aModeIsProposedByTheSpeedAndTakenByATouchOnly()
    {
        LiveScreen at;
        QCOMPARE(at.live.modeWord(), "");
        at.drive(125, 120, 40);
        QCOMPARE(at.screen.now.modeIndex(), 0);
        QCOMPARE(at.live.modeWord(), "Motorway, by the speed: take it");
        at.screen.now.takeProposedMode();
        QCOMPARE(at.screen.now.mode(), "Motorway");
        QCOMPARE(at.live.modeWord(), "");
        at.screen.now.selectMode(1); // the driver knows better
        QCOMPARE(at.live.modeWord(), "");
        at.drive(30, 400, 39);
        QCOMPARE(at.live.modeWord(), ""); // town, as the driver said
        at.drive(70, 400, 38.5);
        QCOMPARE(at.live.modeWord(), "Open road, by the speed: take it");
    }
    void whatTheSourceSaysWrongIsSaid()
    {
        LiveScreen at;
        at.speaking.write("ERR 7");
        at.drive(72, 60, 40);
        QVERIFY(at.says("not understood: 'ERR 7'"));
    }
    void aMovingCarLocksWhatIsTyped()
    {
        LiveScreen at;
        at.screen.lock.follow(at.screen.feed);
        at.drive(72, 10, 40);
        QVERIFY(at.screen.lock.locked());
        at.drive(0, 5, 40);
        QVERIFY(!at.screen.lock.locked());
    }
};

UNDERMARK_TEST(NowLiveTest)
#include "now_live_test.moc"
