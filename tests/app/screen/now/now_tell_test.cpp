// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/now/now_view_model.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;
using namespace std::chrono_literals;

namespace {

enum TellField { Odometer, Reading };

void typeInto(NowTell& tell, int field, const QString& text)
{
    tell.form()->select(field);
    for (const QChar key : text)
        tell.form()->press(key);
}

} // namespace

class NowTellTest : public QObject {
    Q_OBJECT
private slots:
    void theOdometerShortensTheAnswerByWhatWasDriven()
    {
        test::DemoCar car;
        NowViewModel now(car);
        const int before = now.sureNumber().toInt();
        const double last = test::lastFill(car).odometer->km();
        typeInto(*now.tell(), Odometer, QString::number(last + 400)); // 276 are in the log
        now.tell()->take();
        QVERIFY(now.tell()->notices().isEmpty());
        QVERIFY2(now.sureNumber().toInt() < before - 100, qPrintable(now.sureNumber()));
        QCOMPARE(now.age(), "odometer, just now");
        car.pass(10min);
        now.refresh();
        QCOMPARE(now.age(), "odometer, 10 min ago");
        now.tell()->drop();
        QCOMPARE(now.sureNumber().toInt(), before);
        QVERIFY(now.age().startsWith("log, "));
    }
    void aReadingIsAnsweredForAsTheCommandLineDoes()
    {
        test::DemoCar car;
        NowViewModel now(car);
        typeInto(*now.tell(), Reading, "1.5");
        now.tell()->take();
        Question question;
        question.signal = Signal::of(1.5);
        const auto known = *car.knowledge();
        const Distances there = distances(outlook(*known, question)->toZero);
        QCOMPARE(now.sureNumber(), QString::number(int(there.p99.km())));
        QCOMPARE(now.age(), "reading, just now");
    }
    void aReadingKeptInTheLogAnswersTheSameAndAfterAnotherStart()
    {
        QTemporaryDir folder;
        const QString file = folder.filePath("screen.ini");
        test::DemoCar car;
        QString sure;
        {
            NowViewModel now(car, {}, file);
            QVERIFY(now.tell()->canKeep());
            now.tell()->keepInLog(); // what?
            QVERIFY(now.tell()->notices()[0].problem() && car.log()->levels.empty());
            typeInto(*now.tell(), Odometer, QString::number(test::lastFill(car).odometer->km() + 300));
            typeInto(*now.tell(), Reading, "1.5");
            now.tell()->take();
            sure = now.sureNumber();
            QSignalSpy stored(&now, &NowViewModel::stored);
            now.tell()->keepInLog();
            QCOMPARE(stored.size(), 1);
            QCOMPARE(now.tell()->standing(), "");
            QCOMPARE(now.sureNumber(), sure);
            QCOMPARE(now.age(), "level kept, just now");
        }
        const LevelRecord level = car.log()->levels.back().value;
        QVERIFY(level.signal == Signal::of(1.5) && level.odometer && level.origin == LevelOrigin::typed);
        car.pass(2h);
        NowViewModel again(car, {}, file);
        QCOMPARE(again.sureNumber(), sure);
        QCOMPARE(again.age(), "level kept, 2 h ago");
        QVERIFY(car.takeBack(car.log()->levels.back().id));
        again.refresh();
        QVERIFY(again.age().startsWith("log, "));
        typeInto(*again.tell(), Reading, "1.5"); // in one go
        again.tell()->keepInLog();
        QCOMPARE(again.age(), "level kept, just now");
        QCOMPARE(again.sureNumber(), sure);
        const QString one = again.sureNumber();
        Car elsewhere = test::reopenedCar(car.folder());
        QCOMPARE(QString::number(int(distances(elsewhere.now()->outlook.toZero).p99.km())), one);
    }
    // One of two tanks says nothing of the sum by itself: it is kept, and still told.
    void ofSeveralTanksAReadingIsKeptAndStaysTold()
    {
        test::DemoCar car;
        test::addAuxTank(car, true);
        NowViewModel now(car);
        typeInto(*now.tell(), Reading, "1.5");
        now.tell()->keepInLog();
        QCOMPARE(car.log()->levels.size(), std::size_t(1));
        QCOMPARE(now.age(), "reading, just now");
    }
    void anOdometerThatRunsBackwardsIsRefusedAndNothingChanges()
    {
        test::DemoCar car;
        NowViewModel now(car);
        const QString before = now.sureNumber();
        QSignalSpy taken(now.tell(), &NowTell::taken);
        typeInto(*now.tell(), Odometer, "12");
        now.tell()->take();
        QVERIFY(now.tell()->notices()[0].problem());
        QCOMPARE(taken.size(), 0);
        QCOMPARE(now.sureNumber(), before);
        QVERIFY(now.age().startsWith("log, "));
        now.tell()->take(); // nothing typed
        QVERIFY(now.tell()->notices()[0].problem());
    }
    void needleAtZeroMakesPastZeroTheLargeNumberAndTheOdometerCountsItDown()
    {
        test::DemoCar car;
        NowViewModel now(car);
        const int sure = now.rows()[1].sure.toInt();
        QVERIFY(sure > 20);
        now.tell()->needleAtZero();
        QCOMPARE(now.age(), "needle at zero, just now");
        QCOMPARE(now.sureNumber().toInt(), sure);
        QVERIFY(now.sureCaption().contains("past the zero mark"));
        typeInto(*now.tell(), Odometer, "150000");
        now.tell()->take(); // there
        QCOMPARE(now.sureNumber().toInt(), sure);
        typeInto(*now.tell(), Odometer, "150016");
        now.tell()->take();
        QCOMPARE(now.sureNumber().toInt(), sure - 16);
        typeInto(*now.tell(), Odometer, "149000"); // backwards
        now.tell()->take();
        QVERIFY(now.tell()->notices()[0].problem());
        QCOMPARE(now.sureNumber().toInt(), sure - 16);
        typeInto(*now.tell(), Odometer, "150500"); // long past it: nothing is sure, never less
        now.tell()->take();
        QCOMPARE(now.sureNumber().toInt(), 0);
    }
    // 27 km past zero, still running when fuel went in: that is known of the reserve now.
    void needleAtZeroIsOfferedAsAProofOnceFuelWentIn()
    {
        QTemporaryDir folder;
        const QString file = folder.filePath("screen.ini");
        test::DemoCar car;
        {
            NowViewModel now(car, {}, file);
            QCOMPARE(now.tell()->proofWord(), "");
            now.tell()->needleAtZero();
            typeInto(*now.tell(), Odometer, "150000");
            now.tell()->take();
            QCOMPARE(now.tell()->proofWord(), ""); // it is not over
            car.pass(1h);
            Fill fill = test::lastFill(car);
            fill.time = car.time();
            fill.odometer = Distance::fromKm(150027);
            QVERIFY(car.recordFill(fill));
            now.refresh();
            QVERIFY2(now.tell()->proofWord().contains("27 km past zero"), qPrintable(now.tell()->proofWord()));
        }
        NowViewModel now(car, {}, file); // the offer outlives the program
        QVERIFY(now.tell()->proofWord().contains("27 km past zero"));
        const std::size_t before = car.log()->proofs.size();
        now.tell()->noteProof();
        const Proof proof = car.log()->proofs.back().value;
        QCOMPARE(car.log()->proofs.size(), before + 1);
        QVERIFY(proof.kind == ProofKind::pastZero);
        QCOMPARE(proof.distance->mean, Distance::fromKm(27));
        QCOMPARE(now.tell()->proofWord(), "");
        QCOMPARE(NowViewModel(car, {}, file).tell()->proofWord(), ""); // answered for good
    }
    void whatWasNotSoIsNoProof()
    {
        test::DemoCar car;
        NowViewModel now(car);
        now.tell()->needleAtZero(); // no odometer told: it cannot be known how far it was
        car.pass(1h);
        Fill fill = test::lastFill(car);
        fill.time = car.time();
        fill.odometer = *fill.odometer + Distance::fromKm(400);
        QVERIFY(car.recordFill(fill));
        now.refresh();
        QCOMPARE(now.tell()->proofWord(), "");
        now.tell()->needleAtZero();
        typeInto(*now.tell(), Odometer, QString::number(fill.odometer->km() + 480));
        now.tell()->take();
        car.pass(1h);
        fill.time = car.time();
        fill.odometer = *fill.odometer + Distance::fromKm(500);
        QVERIFY(car.recordFill(fill));
        now.refresh();
        QVERIFY(now.tell()->proofWord().contains("20 km"));
        const std::size_t before = car.log()->proofs.size();
        now.tell()->dropProof();
        QCOMPARE(now.tell()->proofWord(), "");
        QCOMPARE(car.log()->proofs.size(), before);
    }
    void whatWasToldOutlivesTheProgramUntilTheLogKnowsMore()
    {
        QTemporaryDir folder;
        const QString file = folder.filePath("screen.ini");
        test::DemoCar car;
        {
            NowViewModel now(car, {}, file);
            now.tell()->needleAtZero();
        }
        car.pass(3h);
        NowViewModel again(car, {}, file);
        QCOMPARE(again.age(), "needle at zero, 3 h ago");
        Fill fill = test::lastFill(car);
        fill.time = car.time();
        fill.odometer = *fill.odometer + Distance::fromKm(500);
        QVERIFY(car.recordFill(fill));
        again.refresh();
        QCOMPARE(again.age(), "log, just now");
        QCOMPARE(NowViewModel(car, {}, file).age(), "log, just now");
    }
};

UNDERMARK_TEST(NowTellTest)
#include "now_tell_test.moc"
