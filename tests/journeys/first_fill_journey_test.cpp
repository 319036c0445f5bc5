// SPDX-License-Identifier: GPL-3.0-or-later
//
// The first minutes: no logbook, a car set up by touch, a first fill on the guesses, and the
// first range. In all the sizes of small screens, in the process and in the real program.
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

namespace {

constexpr int kTouchesOfAFill = 4;       // at most, on guesses
constexpr int kTouchesToTheFirstRange = 12;
constexpr int kNoDoubleTap = 750; // ms between two touches of one place

} // namespace

class FirstFillJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void aFirstCarAndItsFirstFillByTouch_data() { test::addScreenSizes(); }
    void aFirstCarAndItsFirstFillByTouch()
    {
        QFETCH(QSize, size);
        const test::LoopWatch watch("first fill by touch");
        QTemporaryDir folder;
        test::OpenScreen start(folder.filePath("first.undermark"), size, "now");
        Hand hand(*start.window);
        walk(hand);
        if (QTest::currentTestFailed())
            return;
        QCOMPARE(start.car.log()->fills.size(), std::size_t(1));
        qInfo("%d touches from nothing to the first range; longest %.0f ms of work", hand.touches(),
              watch.longest() * 1e3);
    }
    void theSameInTheRealProgram_data() { aFirstCarAndItsFirstFillByTouch_data(); }
    void theSameInTheRealProgram()
    {
        if (const QString missing = test::RealProgram::missing(); !missing.isEmpty())
            QSKIP(qPrintable(missing));
        QFETCH(QSize, size);
        QList<QLine> gestures;
        {
            QTemporaryDir own;
            test::OpenScreen start(own.filePath("first.undermark"), size, "now");
            Hand hand(*start.window);
            walk(hand);
            gestures = hand.gestures();
        }
        if (QTest::currentTestFailed())
            return;
        QTemporaryDir folder;
        const QString file = folder.filePath("first.undermark");
        const QString wrong = test::walk({"--logbook", file}, size, gestures);
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
        const Result<Car> car = Car::open(file.toStdString(), OpenMode::readOnly);
        QVERIFY(car.has_value());
        QCOMPARE(car->log()->fills.size(), std::size_t(1));
        QCOMPARE(car->log()->fills[0].value.volume, Volume::fromLitres(50));
    }

private:
    static void walk(Hand& hand)
    {
        QVERIFY(hand.sees("Which car?"));
        QVERIFY(hand.touchPad("50"));
        QVERIFY(hand.touch("Set up this car"));
        QVERIFY(hand.sees("Fill the tank"));
        const int before = hand.touches();
        QVERIFY(hand.touch("Log a fill"));
        QVERIFY(hand.touch("Save this fill")); // it asks, as nothing was typed
        QTest::qWait(kNoDoubleTap);
        QVERIFY(hand.touch("Yes, save the guesses"));
        QVERIFY2(hand.sees("50 L saved"), qPrintable(hand.texts().join(" | ")));
        qInfo("%d touches for a fill on guesses", hand.touches() - before);
        QVERIFY(hand.touches() - before <= kTouchesOfAFill);
        QVERIFY(hand.touch("Now"));
        QVERIFY2(hand.sees("sure to the zero mark"), qPrintable(hand.texts().join(" | ")));
        QVERIFY(hand.touches() <= kTouchesToTheFirstRange);
        QVERIFY(hand.touch("Night")); // it still answers
        QVERIFY(hand.sees("Day"));
    }
};

UNDERMARK_TEST(FirstFillJourneyTest)
#include "first_fill_journey_test.moc"
