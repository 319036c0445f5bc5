// SPDX-License-Identifier: GPL-3.0-or-later
//
// A navigator's way by touch alone: a route made from nothing, driven, planned again; and a
// look at every page of the demo car, with a load told on the way.
#include "app/car/demo_logbook.h"
#include "engine/tables/route_file.h"
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

// The distance to the zero mark that the command line calls sure, km rounded down.
int sureByTheCommandLine(const QString& logbook, const QStringList& more = {})
{
    QProcess range;
    range.start(UNDERMARK_CLI, QStringList{"--logbook", logbook, "range", "--json"} + more);
    range.waitForFinished(60000);
    const QJsonObject answer = QJsonDocument::fromJson(range.readAllStandardOutput()).object();
    return int(answer["to_zero_km"].toObject()["p99"].toDouble());
}

} // namespace

class RouteJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void aRouteFromNothingDrivenAndPlannedAgain_data()
    {
        QTest::addColumn<QSize>("size");
        for (const QSize size : test::kScreenSizes)
            QTest::addRow("%dx%d", size.width(), size.height()) << size;
    }
    void aRouteFromNothingDrivenAndPlannedAgain()
    {
        QFETCH(QSize, size);
        QTemporaryDir folder;
        const test::LoopWatch watch("route from nothing");
        const QList<QPoint> places = walk(folder, size);
        qInfo("%d touches; longest %.0f ms of work", int(places.size()), watch.longest() * 1e3);
    }
    void theSameInTheRealProgram()
    {
        if (const QString missing = test::RealProgram::missing(); !missing.isEmpty())
            QSKIP(qPrintable(missing));
        const QSize size = test::kScreenSizes.front();
        QTemporaryDir own;
        const QList<QPoint> places = walk(own, size);
        if (QTest::currentTestFailed())
            return;
        QTemporaryDir folder;
        const QString file = folder.filePath("demo.sqlite");
        QVERIFY(makeDemoLogbook(file.toStdString(), Existing::refuse));
        test::RealProgram program({"--logbook", file, "--page", "ahead"}, size);
        QVERIFY2(program.atRest(), "it does not come to rest at the start");
        for (qsizetype i = 0; i < places.size(); ++i)
            QVERIFY2(program.touch(places[i]), qPrintable(QString("frozen after touch %1").arg(i + 1)));
        QVERIFY(program.end());
        const QByteArray printed = program.printed();
        QVERIFY2(!printed.contains("qrc:/"), printed.constData()); // a warning about a page
        checkSaved(folder);
    }

    void theDemoIsWalkedThroughAllPages_data() { aRouteFromNothingDrivenAndPlannedAgain_data(); }
    void theDemoIsWalkedThroughAllPages()
    {
        QFETCH(QSize, size);
        QTemporaryDir folder;
        const QString file = folder.filePath("demo.sqlite");
        QVERIFY(makeDemoLogbook(file.toStdString(), Existing::refuse));
        const test::LoopWatch watch("demo");
        test::OpenScreen open(file, size, "now");
        open.screen.ahead.setRoute(demoRoute(), "Seven Weirs Rally"); // as --demo does
        Hand hand(*open.window);
        SEES("sure to the zero mark");
        QCOMPARE(open.screen.now.sureNumber().toInt(), sureByTheCommandLine(file)); // the usual mix, both
        TOUCH("Usual mix: change");
        TOUCH("It burns as the log says, not more (towing, a roof box …)");
        TOUCH("20 %");
        SEES("towing: 20 % more");
        QCOMPARE(open.screen.now.sureNumber().toInt(), sureByTheCommandLine(file, {"--burns-more", "20"}));
        TOUCH("Ahead");
        SEES("Harrow Mill pump");
        for (const char* tab : {"Route", "What if", "From here", "Stops"})
            TOUCH(tab);
        TOUCH("Write the fuel card");
        SEES("fuel-card.pdf");
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
        qInfo("%d touches; longest %.0f ms of work", hand.touches(), watch.longest() * 1e3);
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
    // Over a demo logbook in `folder`; where it was touched.
    static QList<QPoint> walk(const QTemporaryDir& folder, QSize size)
    {
        const QString file = folder.filePath("demo.sqlite");
        const auto made = makeDemoLogbook(file.toStdString(), Existing::refuse);
        test::OpenScreen open(file, size, "ahead");
        Hand hand(*open.window);
        if (made)
            makeRoute(hand, folder);
        return hand.places();
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
        QVERIFY(hand.touchPad("360"));
        TOUCH("Take the numbers");
        TOUCH("Back to the plan");
        SEES("New route, 480 km");
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
        SEES("420 km");
        SEES("here");
    }
};

UNDERMARK_TEST(RouteJourneyTest)
#include "route_journey_test.moc"
