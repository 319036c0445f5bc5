// SPDX-License-Identifier: GPL-3.0-or-later
//
// Everything once by the keyboard alone: from no logbook to a car, a fill, a range, a plan, a
// correction, a trip, a proof and other units.
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QRegularExpression>
#include <QTest>

using namespace undermark;
using test::Hand;

namespace {

constexpr int kDoubleTapOver = 750; // ms

} // namespace

class KeyboardJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void everythingOnceByTheKeyboardAlone()
    {
        const test::LoopWatch watch("keyboard");
        QTemporaryDir folder;
        QFile route(folder.filePath("sunday.csv"));
        QVERIFY(route.open(QIODevice::WriteOnly));
        route.write("name,at_km,mode,fuel,price_per_l\nHome,0,open road,none,\nMere,60,open road,pump,1.8\nSea,110,,none,\n");
        route.close();
        test::OpenWith with;
        with.roots = folder.path();
        test::OpenScreen start(folder.filePath("first.undermark"), {800, 480}, "now", with);
        Hand hand(*start.window);
        setUp(hand);
        if (!QTest::currentTestFailed())
            fill(hand, start);
        if (!QTest::currentTestFailed())
            plan(hand);
        if (!QTest::currentTestFailed())
            calibrate(hand, start);
        if (!QTest::currentTestFailed())
            correct(hand, start);
        if (!QTest::currentTestFailed())
            tell(hand, start);
        if (!QTest::currentTestFailed())
            settings(hand);
        QCOMPARE(hand.touches(), 0);
    }

private:
    static void setUp(Hand& hand)
    {
        QVERIFY(hand.sees("Which car?"));
        QVERIFY(hand.press("name: My car"));
        QVERIFY(hand.tabTo("cursorPosition"));
        hand.key(Qt::Key_A, Qt::ControlModifier);
        hand.type("Van");
        QVERIFY(hand.press("Take the name"));
        QVERIFY(hand.sees("name: Van"));
        QVERIFY(hand.press("Diesel"));
        hand.type("50");
        QVERIFY(hand.press("Set up this car"));
        QVERIFY2(hand.sees("Fill the tank"), qPrintable(hand.texts().join(" | ")));
    }
    static void fill(Hand& hand, test::OpenScreen& start)
    {
        QVERIFY(hand.press("Log a fill"));
        QVERIFY(hand.press("Save this fill"));
        QTest::qWait(kDoubleTapOver);
        QVERIFY(hand.press("Yes, save the guesses"));
        QVERIFY2(hand.sees("50 L saved"), qPrintable(hand.texts().join(" | ")));
        QCOMPARE(start.car.log()->fills.size(), std::size_t(1));
        hand.key(Qt::Key_PageUp, Qt::ControlModifier);
        QVERIFY(hand.sees("sure to the zero mark"));
        QVERIFY(hand.press("Usual mix: change"));
        QVERIFY(hand.press("Motorway"));
        QVERIFY(hand.sees("Motorway: change"));
    }
    static void plan(Hand& hand)
    {
        QVERIFY(hand.press("Ahead"));
        QVERIFY(hand.press("sunday.csv"));
        QVERIFY2(hand.sees("sunday, 110 km"), qPrintable(hand.texts().join(" | ")));
        QVERIFY(hand.press("Tank"));
        QVERIFY(hand.press("Reserve"));
        QVERIFY(hand.sees("hidden reserve"));
    }
    static void calibrate(Hand& hand, test::OpenScreen& start)
    {
        CalibrationGuide& guide = *start.screen.tank.guide();
        QVERIFY(hand.press("Calibrate"));
        for (int i = 0; i < guide.cautions().size(); ++i)
            QVERIFY2(hand.press(guide.cautions()[i].text), qPrintable(guide.cautions()[i].text));
        QVERIFY(hand.press("All of it holds"));
        QVERIFY(!guide.preparing());
        hand.type("3.02");
        QVERIFY(hand.press("Take this reading"));
        QVERIFY(hand.press("Leave it here")); // what was taken is kept
        QVERIFY(guide.started());
    }
    static void correct(Hand& hand, test::OpenScreen& start)
    {
        QVERIFY(hand.press("Logbook"));
        QVERIFY(hand.tabTo("spoken")); // a line of the list
        hand.key(Qt::Key_Return);
        QVERIFY(hand.press("Correct"));
        QVERIFY(hand.sees("fuel put in"));
        for (int i = 0; i < 2; ++i)
            hand.key(Qt::Key_Backspace);
        hand.type("48");
        QVERIFY(hand.press("Save the correction"));
        QVERIFY(hand.sees("48.0 L"));
        QCOMPARE(start.car.log()->fills[0].value.volume, Volume::fromLitres(48));
        QVERIFY(hand.press("Undo the correction"));
        QVERIFY2(hand.sees("As before, it is: 50.0 L, full"), qPrintable(hand.texts().join(" | ")));
        hand.key(Qt::Key_Escape);
        QVERIFY(hand.sees("Fills"));
    }
    static void tell(Hand& hand, test::OpenScreen& start)
    {
        QVERIFY(hand.press("A trip"));
        hand.type("82");
        QVERIFY(hand.press("Motorway"));
        QVERIFY(hand.press("Add it to the log"));
        QVERIFY(hand.press("A proof"));
        QVERIFY(hand.press("Past zero, still running"));
        hand.type("9");
        QVERIFY(hand.press("Add it to the log"));
        QVERIFY(hand.press("A forgotten fill"));
        hand.type("3"); // days ago
        QVERIFY(hand.press("Back to the litres"));
        hand.type("31");
        QVERIFY(hand.press("Save this fill"));
        const VehicleLog log = *start.car.log();
        QCOMPARE(log.fills.size(), std::size_t(2));
        QCOMPARE(log.trips.size(), std::size_t(1));
        QCOMPARE(log.trips[0].value.mode, std::string(kMotorway));
        QCOMPARE(log.trips[0].value.distance, Distance::fromKm(82));
        QCOMPARE(log.proofs.size(), std::size_t(1));
        QCOMPARE(log.proofs[0].value.distance->mean, Distance::fromKm(9));
    }
    static void settings(Hand& hand)
    {
        QVERIFY(hand.press("Settings"));
        QVERIFY(hand.press("miles"));
        QVERIFY(hand.press("Night"));
        QVERIFY(hand.sees("Day"));
        QVERIFY(hand.press("Now"));
        QVERIFY2(hand.sees("mi"), qPrintable(hand.texts().join(" | ")));
    }
};

UNDERMARK_TEST(KeyboardJourneyTest)
#include "keyboard_journey_test.moc"
