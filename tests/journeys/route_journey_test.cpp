// SPDX-License-Identifier: GPL-3.0-or-later
//
// A navigator's way by touch alone: a route made from nothing, driven, planned again; and a
// look at every page of the demo car, with a load told on the way.
#include "app/car/demo_logbook.h"
#include "engine/tables/route_file.h"
#include "engine/base/instant_text.h"
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/journeys/real_program.h"
#include "tests/support/test_main.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;
using test::Hand;

namespace {

#define SEES(part) QVERIFY2(hand.sees(part), qPrintable(hand.texts().join(" | ")))
#define TOUCH(name) QVERIFY2(hand.touch(name), qPrintable(QString(name) + " among " + hand.texts().join(" | ")))

// What the command line prints; nothing where it fails.
std::optional<QByteArray> commandLine(const QString& logbook, const QStringList& words)
{
    QProcess cli;
    cli.start(UNDERMARK_CLI, QStringList{"--logbook", logbook} + words);
    if (!cli.waitForFinished(60000) || cli.exitCode() != 0)
        return std::nullopt;
    return cli.readAllStandardOutput();
}

// The demo car, with a full tank whatever the date.
bool filledToday(const QString& logbook)
{
    return makeDemoLogbook(logbook.toStdString(), Existing::refuse) &&
           commandLine(logbook, {"fill", "add", "--litres", "30", "--odometer-km", "154290", "--full"});
}

// The distance to the zero mark that the command line calls sure, km rounded down.
int sureByTheCommandLine(const QString& logbook, const QStringList& more = {})
{
    const auto printed = commandLine(logbook, QStringList{"range", "--json"} + more);
    const QJsonObject answer = QJsonDocument::fromJson(printed.value_or("")).object();
    return int(answer["to_zero_km"].toObject()["p99"].toDouble(-1));
}

} // namespace

class RouteJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void aRouteFromNothingDrivenAndPlannedAgain_data() { test::addScreenSizes(); }
    void aRouteFromNothingDrivenAndPlannedAgain()
    {
        QFETCH(QSize, size);
        QTemporaryDir folder;
        const test::LoopWatch watch("route from nothing");
        const QList<QLine> gestures = walk(folder, size);
        qInfo("%d touches; longest %.0f ms of work", test::touchesOf(gestures), watch.longest() * 1e3);
    }
    void theSameInTheRealProgram()
    {
        if (const QString missing = test::RealProgram::missing(); !missing.isEmpty())
            QSKIP(qPrintable(missing));
        const QSize size = test::kScreenSizes.front();
        QTemporaryDir own;
        const QList<QLine> gestures = walk(own, size);
        QTemporaryDir folder;
        const QString file = folder.filePath("demo.sqlite");
        QVERIFY(filledToday(file));
        touchedThere(gestures, {"--logbook", file, "--page", "ahead"}, size);
        checkSaved(folder);
    }

    void theDemoIsWalkedThroughAllPages_data() { test::addScreenSizes(); }
    void theDemoIsWalkedThroughAllPages()
    {
        QFETCH(QSize, size);
        QTemporaryDir folder;
        const test::LoopWatch watch("demo");
        const QList<QLine> gestures = lookAround(folder, size);
        qInfo("%d touches; longest %.0f ms of work", test::touchesOf(gestures), watch.longest() * 1e3);
    }
    void theRealProgramShowsTheDemo()
    {
        if (const QString missing = test::RealProgram::missing(); !missing.isEmpty())
            QSKIP(qPrintable(missing));
        const QSize size = test::kScreenSizes.front();
        QTemporaryDir own, folder;
        touchedThere(lookAround(own, size), {"--demo", "--logbook", folder.filePath("demo.sqlite")}, size);
    }

private:
    static void checkSaved(const QTemporaryDir& folder)
    {
        const auto saved = readRouteFile(folder.filePath("routes/New route.csv").toStdString());
        QVERIFY(saved.has_value());
        QCOMPARE(saved->route.points.size(), std::size_t(3));
        QCOMPARE(saved->route.points[1].name, std::string("Weir"));
        QCOMPARE(saved->route.points[1].at.km(), 120.0);
        QCOMPARE(saved->route.points[1].fuel, FuelSource::zone);
    }
    // The same touches in the program itself.
    static void touchedThere(const QList<QLine>& gestures, const QStringList& arguments, QSize size)
    {
        if (QTest::currentTestFailed())
            return;
        const QString wrong = test::walk(arguments, size, gestures);
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
    }
    // Over a logbook in `folder`; what was done there.
    static QList<QLine> walk(const QTemporaryDir& folder, QSize size)
    {
        const QString file = folder.filePath("demo.sqlite");
        const bool made = filledToday(file);
        test::OpenScreen open(file, size, "ahead");
        Hand hand(*open.window);
        if (made)
            makeRoute(hand, folder);
        return hand.gestures();
    }
    static void makeRoute(Hand& hand, const QTemporaryDir& folder)
    {
        TOUCH("New route");
        SEES("row 2 of 2");
        QVERIFY(hand.touchPad("120"));
        TOUCH("Fuel"); // takes the number
        TOUCH("Refuel zone");
        TOUCH("Row");
        TOUCH("Letters");
        TOUCH("Clear");
        QVERIFY(hand.touchPad("Weir"));
        TOUCH("Take the name");
        SEES("row 2 of 2, at 120.0 km");
        TOUCH("Add a row after this one");
        SEES("row 3 of 3");
        QVERIFY(hand.touchPad("480"));
        TOUCH("Take the numbers");
        TOUCH("Back to the plan");
        SEES("New route, 600 km");
        SEES("Weir");
        SEES("1 stop, ");
        TOUCH("Route");
        TOUCH("Save the route");
        SEES("Written to");
        checkSaved(folder);
        TOUCH("From here"); // 60 km are driven
        TOUCH("Plan from here");
        SEES("Where the car is on the route comes first.");
        QVERIFY(hand.touchPad("60"));
        TOUCH("Plan from here");
        TOUCH("Stops");
        SEES("540 km");
        SEES("here");
        TOUCH("Write the fuel card");
        SEES("fuel-card.pdf");
    }
    // Every page of the demo, and a load told on the way; what was done there.
    static QList<QLine> lookAround(const QTemporaryDir& folder, QSize size)
    {
        const QString file = folder.filePath("demo.sqlite");
        test::OpenWith with;
        with.demo = true; // at its own time, as --demo shows it
        test::OpenScreen open(file, size, "now", with);
        open.screen.ahead.setRoute(demoRoute(), "Seven Weirs Rally"); // as --demo does
        Hand hand(*open.window);
        lookAt(hand, open, file);
        return hand.gestures();
    }
    static void lookAt(Hand& hand, test::OpenScreen& open, const QString& file)
    {
        const NowViewModel& now = open.screen.now;
        const QStringList day{"--date", QString::fromStdString(instantText(open.car.time()))};
        SEES("sure to the zero mark");
        QCOMPARE(now.sureNumber().toInt(), sureByTheCommandLine(file, day)); // the usual mix, both
        TOUCH("Usual mix: change");
        TOUCH("It burns as the log says, not more (towing, a roof box …)");
        TOUCH("20 %");
        SEES("towing: 20 % more");
        QCOMPARE(now.sureNumber().toInt(), sureByTheCommandLine(file, day + QStringList{"--burns-more", "20"}));
        TOUCH("Ahead");
        SEES("Seven Weirs Rally");
        SEES("towing: 20 % more"); // it is planned with
        for (const char* tab : {"Route", "What if", "From here", "Stops"})
            TOUCH(tab);
        TOUCH("Tank");
        for (const char* tab : {"Gauge table", "Reserve", "Curve"})
            TOUCH(tab);
        TOUCH("Logbook");
        for (const char* tab : {"Rates", "Transfer", "Settings"})
            TOUCH(tab);
        TOUCH("Pump");
        SEES("fuel put in");
        TOUCH("Now");
        SEES("towing: 20 % more");
    }
};

UNDERMARK_TEST(RouteJourneyTest)
#include "route_journey_test.moc"
