// SPDX-License-Identifier: GPL-3.0-or-later
//
// A second car beside the first: set up, renamed on its sheet, and back to the first.
#include "app/car/demo_logbook.h"
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/journeys/real_program.h"
#include "tests/support/test_main.h"

#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;
using test::Hand;

class CarsJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void aSecondCarIsSetUpRenamedAndLeftForTheFirst_data() { test::addScreenSizes(); }
    void aSecondCarIsSetUpRenamedAndLeftForTheFirst()
    {
        QFETCH(QSize, size);
        const test::LoopWatch watch("second car");
        QTemporaryDir folder;
        const QString file = folder.filePath("demo.sqlite");
        QVERIFY(makeDemoLogbook(file.toStdString(), Existing::refuse));
        test::OpenScreen start(file, size, "logbook");
        Hand hand(*start.window);
        walk(hand);
        if (QTest::currentTestFailed())
            return;
        isThere(start.car);
        QVERIFY(start.car.vehicle()->value.name == "Ouzel wagon");
        qInfo("%d touches; longest %.0f ms of work", hand.touches(), watch.longest() * 1e3);
    }
    void theSameInTheRealProgram()
    {
        if (const QString missing = test::RealProgram::missing(); !missing.isEmpty())
            QSKIP(qPrintable(missing));
        const QSize size(480, 800);
        QTemporaryDir own, folder;
        const QString ownFile = own.filePath("demo.sqlite"), file = folder.filePath("demo.sqlite");
        QVERIFY(makeDemoLogbook(ownFile.toStdString(), Existing::refuse));
        QVERIFY(makeDemoLogbook(file.toStdString(), Existing::refuse));
        test::OpenScreen start(ownFile, size, "logbook");
        Hand hand(*start.window);
        walk(hand);
        if (QTest::currentTestFailed())
            return;
        const QString wrong = test::walk({"--logbook", file, "--page", "logbook"}, size, hand.gestures());
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
        Result<Car> car = Car::open(file.toStdString(), OpenMode::readOnly);
        QVERIFY(car.has_value());
        isThere(*car);
    }

private:
    static void walk(Hand& hand)
    {
        QVERIFY(hand.touch("Settings"));
        QVERIFY(hand.touch("Another car"));
        QVERIFY(hand.sees("Which car?"));
        QVERIFY(hand.touch("Diesel"));
        QVERIFY(hand.touchPad("70"));
        QVERIFY(hand.touch("Set up this car"));
        QVERIFY(hand.touch("Tank"));
        QVERIFY(hand.touch("Car"));
        QVERIFY(hand.touch("name: My car"));
        QVERIFY(hand.touch("Clear"));
        for (const QString& letter : QStringList{"D", "i", "p", "p", "e", "r"}) // the first one is a capital
            QVERIFY(hand.touch(letter));
        QVERIFY(hand.touch("Take the name"));
        QVERIFY(hand.sees("name: Dipper"));
        QVERIFY(hand.touchField("usable when the lamp lights"));
        QVERIFY(hand.touchPad("9"));
        QVERIFY(hand.touch("Save the sheet"));
        QVERIFY(hand.touch("Logbook"));
        QVERIFY(hand.finds("Dipper")); // among the cars to choose from
        QVERIFY(hand.touch("Ouzel wagon"));
        QVERIFY(hand.touch("Now"));
        QVERIFY(hand.sees("Ouzel wagon"));
    }
    static void isThere(Car& car)
    {
        const auto cars = car.cars();
        QCOMPARE(cars->size(), std::size_t(2));
        QCOMPARE(cars->at(1).value.name, std::string("Dipper"));
        QVERIFY(cars->at(1).value.fuel == FuelKind::diesel);
        QCOMPARE(cars->at(1).value.lamp, std::optional(Volume::fromLitres(9)));
    }
};

UNDERMARK_TEST(CarsJourneyTest)
#include "cars_journey_test.moc"
