// SPDX-License-Identifier: GPL-3.0-or-later
//
// The first minutes with letters of 200 %, in German, upright, and turned over on the way:
// nothing typed is lost, and every page answers.
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/support/test_main.h"

#include <QRegularExpression>
#include <QTest>

using namespace undermark;
using test::Hand;

class LargeLettersJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void theFirstMinutesInLargeLettersTurnedOverOnTheWay()
    {
        const test::LoopWatch watch("large letters");
        QTemporaryDir folder;
        test::OpenWith with;
        with.language = "de";
        with.textPercent = 200;
        test::OpenScreen start(folder.filePath("first.undermark"), kUpright, "now", with);
        Hand hand(*start.window);
        QVERIFY(hand.sees("Welcher Wagen?"));
        QVERIFY(hand.touchPad("5"));
        turn(start, kFlat);
        QVERIFY(hand.touchPad("0")); // of the same number
        turn(start, kUpright);
        QVERIFY2(hand.touch("Wagen anlegen"), qPrintable(hand.texts().join(" | ")));
        QVERIFY(hand.touch("Füllung eintragen"));
        QVERIFY(hand.touch("Füllung sichern"));
        turn(start, kFlat); // while it asks
        QTest::qWait(kDoubleTapOver);
        QVERIFY2(hand.touch("Ja, so sichern"), qPrintable(hand.texts().join(" | ")));
        QVERIFY2(hand.sees("50 L gesichert"), qPrintable(hand.texts().join(" | ")));
        turn(start, kUpright);
        QVERIFY(hand.sees("50 L gesichert")); // and not the form again
        QCOMPARE(start.car.log()->fills.size(), std::size_t(1));
        QCOMPARE(start.car.log()->fills[0].value.volume, Volume::fromLitres(50));
        for (const Page& page : start.screen.pages()) {
            QVERIFY2(hand.touch(page.title), qPrintable(page.title));
            for (const QSize size : {kFlat, kUpright}) {
                turn(start, size);
                QVERIFY2(hand.texts().size() > 6, qPrintable(page.title + ": " + hand.texts().join(" | ")));
            }
        }
        QVERIFY(hand.touch("Jetzt"));
        QVERIFY2(hand.finds("sicher bis zur Nullmarke"), qPrintable(hand.texts().join(" | ")));
    }

private:
    static constexpr int kDoubleTapOver = 750; // ms
    static constexpr QSize kUpright{480, 800}, kFlat{800, 480};

    static void turn(test::OpenScreen& open, QSize size)
    {
        open.window->resize(size);
        QTRY_COMPARE(open.window->size(), size);
        QTest::qWait(50); // until layouts are at rest
    }
};

UNDERMARK_TEST(LargeLettersJourneyTest)
#include "large_letters_journey_test.moc"
