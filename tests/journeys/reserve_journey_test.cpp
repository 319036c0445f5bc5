// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is under the zero mark, proved by touch: driven past it from "needle at zero" on, and
// measured; and a trip and a forgotten fill told afterwards.
#include "app/car/demo_logbook.h"
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/support/test_main.h"

#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;
using test::Hand;

class ReserveJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void aProofOfTheReserveFromNeedleAtZero_data() { test::addScreenSizes(); }
    void aProofOfTheReserveFromNeedleAtZero()
    {
        QFETCH(QSize, size);
        const test::LoopWatch watch("needle at zero");
        QTemporaryDir folder;
        test::OpenScreen start(demo(folder), size, "now");
        Hand hand(*start.window);
        QVERIFY(hand.touch("Needle at zero now"));
        QVERIFY(hand.sees("sure past the zero mark"));
        QVERIFY(hand.touch("Tell a reading or the odometer"));
        QVERIFY(hand.touchPad("154300"));
        QVERIFY(hand.touch("Answer for this"));
        QTest::qWait(1100); // the log counts in seconds
        QVERIFY(hand.touch("Pump"));
        QVERIFY(hand.touchField("fuel put in"));
        QVERIFY(hand.touchPad("49"));
        QVERIFY(hand.touchField("odometer"));
        QVERIFY(hand.touchPad("154340"));
        QVERIFY(hand.touch("Save this fill"));
        QVERIFY(hand.finds("49 L saved"));
        QVERIFY(hand.touch("Now"));
        QVERIFY(hand.touch("Note as a proof: 40 km past zero and still running"));
        QCOMPARE(start.car.log()->proofs.back().value.distance->mean, Distance::fromKm(40));
        QVERIFY(hand.touch("Tank"));
        QVERIFY(hand.touch("Reserve"));
        QVERIFY2(hand.finds("40 km"), "the evidence tells of it");
        qInfo("%d touches; longest %.0f ms of work", hand.touches(), watch.longest() * 1e3);
    }
    void theNextProofIsNotedWhereItIsProposed_data() { test::addScreenSizes(); }
    void theNextProofIsNotedWhereItIsProposed()
    {
        QFETCH(QSize, size);
        const test::LoopWatch watch("next proof");
        QTemporaryDir folder;
        test::OpenScreen start(demo(folder), size, "tank");
        Hand hand(*start.window);
        const std::size_t proofs = start.car.log()->proofs.size();
        QVERIFY(hand.touch("Reserve"));
        QVERIFY(hand.touch("It is done: note it"));
        QVERIFY(hand.sees("A proof of the hidden reserve"));
        QVERIFY(hand.touchPad("5"));
        QVERIFY(hand.touch("Add it to the log"));
        QVERIFY(hand.finds("Evidence"));
        QCOMPARE(start.car.log()->proofs.size(), proofs + 1);
    }
    void aTripAndAForgottenFillAreToldAfterwards_data() { test::addScreenSizes(); }
    void aTripAndAForgottenFillAreToldAfterwards()
    {
        QFETCH(QSize, size);
        const test::LoopWatch watch("told afterwards");
        QTemporaryDir folder;
        test::OpenScreen start(demo(folder), size, "logbook");
        Hand hand(*start.window);
        const VehicleLog before = *start.car.log();
        QVERIFY(hand.touch("A trip"));
        QVERIFY(hand.touchPad("82"));
        QVERIFY(hand.touch("Motorway"));
        QVERIFY(hand.touch("Add it to the log"));
        QVERIFY(hand.touch("A forgotten fill"));
        QVERIFY(hand.touchPad("12")); // days ago
        QVERIFY(hand.touch("Back to the litres"));
        QVERIFY(hand.touchPad("31"));
        QVERIFY(hand.touch("Save this fill"));
        QVERIFY(hand.touch("A proof"));
        QVERIFY(hand.touch("Back"));
        const VehicleLog after = *start.car.log();
        QCOMPARE(after.trips.size(), before.trips.size() + 1);
        QCOMPARE(after.trips.back().value.mode, std::string(kMotorway));
        QCOMPARE(after.fills.size(), before.fills.size() + 1);
        QCOMPARE(after.proofs.size(), before.proofs.size());
    }

private:
    static QString demo(const QTemporaryDir& folder)
    {
        const QString file = folder.filePath("demo.sqlite");
        return makeDemoLogbook(file.toStdString(), Existing::refuse) ? file : QString();
    }
};

UNDERMARK_TEST(ReserveJourneyTest)
#include "reserve_journey_test.moc"
