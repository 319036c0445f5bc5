// SPDX-License-Identifier: GPL-3.0-or-later
//
// A fill of the log corrected, the correction undone, ruled on, taken out and brought back: by
// touch, with what stands said at each step.
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/journeys/real_program.h"
#include "tests/support/test_main.h"

#include <QRegularExpression>
#include <QTest>

using namespace undermark;
using test::Hand;

class CorrectionJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void aFillIsCorrectedUndoneRuledOnAndTakenOut_data() { test::addScreenSizes(); }
    void aFillIsCorrectedUndoneRuledOnAndTakenOut()
    {
        QFETCH(QSize, size);
        const test::LoopWatch watch("correction");
        test::OpenDemo demo(size, "logbook");
        Hand hand(*demo.open->window);
        const Fill before = demo.fills().back().value; // README: 38.43 L
        walk(hand, [&] { return demo.fills().back().value; });
        if (QTest::currentTestFailed())
            return;
        QCOMPARE(demo.fills().size(), std::size_t(13));
        Fill corrected = before;
        corrected.volume = Volume::fromLitres(37);
        QCOMPARE(demo.fills().back().value, corrected);
    }
    void theSameInTheRealProgram()
    {
        if (const QString missing = test::RealProgram::missing(); !missing.isEmpty())
            QSKIP(qPrintable(missing));
        const QSize size(800, 480);
        test::OpenDemo demo(size, "logbook");
        Hand hand(*demo.open->window);
        walk(hand, [&] { return demo.fills().back().value; });
        if (QTest::currentTestFailed())
            return;
        QTemporaryDir folder;
        const QString file = folder.filePath("demo.sqlite");
        const QString wrong =
            test::walk({"--demo", "--logbook", file, "--page", "logbook"}, size, hand.gestures());
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
        const Result<Car> car = Car::open(file.toStdString(), OpenMode::readOnly);
        QVERIFY(car.has_value());
        QCOMPARE(car->log()->fills.size(), std::size_t(13));
        QCOMPARE(car->log()->fills.back().value, demo.fills().back().value);
    }

private:
    // `last` gives the last fill of the log.
    static void walk(Hand& hand, const std::function<Fill()>& last)
    {
        const Fill before = last();
        QVERIFY(hand.touch("Fills"));
        QVERIFY(hand.touchLine("Fill, 2026-08-29"));
        correct(hand, "39");
        if (QTest::currentTestFailed())
            return;
        QVERIFY2(hand.sees("39.0 L"), qPrintable(hand.texts().join(" | ")));
        QCOMPARE(last().volume, Volume::fromLitres(39));

        QVERIFY(hand.touch("Undo the correction"));
        QVERIFY2(hand.sees("As before, it is: 38.4 L, full, 153907 km"), qPrintable(hand.texts().join(" | ")));
        QCOMPARE(last(), before);
        QVERIFY(!hand.texts().contains("Undo the correction")); // there is none any more

        QVERIFY(hand.touch("Leave it out"));
        QVERIFY(hand.sees("Lift the ruling"));
        QCOMPARE(last().counted, std::optional(false));
        QVERIFY(hand.touch("Lift the ruling"));
        QVERIFY(hand.sees("Leave it out"));
        QCOMPARE(last(), before);

        correct(hand, "37");
        QVERIFY(hand.touch("Take out")); // whole, and not back to what was corrected
        QVERIFY(hand.touch("Undo taking out"));
        QVERIFY2(hand.sees("37.0 L, full"), qPrintable(hand.texts().join(" | ")));
        QVERIFY(hand.touch("Settings"));
        QVERIFY(!hand.texts().contains("Undo taking out")); // only where it was done
    }
    // From the opened entry, its litres.
    static void correct(Hand& hand, const QString& litres)
    {
        QVERIFY(hand.touch("Correct"));
        QVERIFY(hand.sees("fuel put in"));
        for (int i = 0; i < 4; ++i)
            QVERIFY(hand.touch("Erase"));
        QVERIFY(hand.touchPad(litres));
        QVERIFY(hand.touch("Save the correction"));
    }
};

UNDERMARK_TEST(CorrectionJourneyTest)
#include "correction_journey_test.moc"
