// SPDX-License-Identifier: GPL-3.0-or-later
//
// A car that speaks: Now follows it, a refuel is asked about and logged in a few touches; and
// the real program by a pipe, at the pace of the road.
#include "app/car/demo_logbook.h"
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/journeys/real_program.h"
#include "tests/support/cli_runner.h"
#include "tests/support/pseudo_terminal.h"
#include "tests/support/speaking_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <cmath>

using namespace undermark;

namespace {

// By the demo's calibration (app/car/demo_logbook.cpp).
constexpr double k30Litres = 1.62, k29Litres = 1.672, k40Litres = 1.08;

void goOn(test::SpeakingCar& car, double kmh, double seconds, double signal)
{
    for (; seconds > 0; seconds -= 10) {
        car.drive(kmh, 10, signal);
        QCoreApplication::processEvents();
    }
}

// A tank of 50 L that says %, as a J1939 bus steps it: 0.4 % of level.
constexpr int k30LitresSteps = 150, k40LitresSteps = 200;

std::string framesAtAHalt(int steps)
{
    char bytes[80];
    std::snprintf(bytes, sizeof bytes, "T18FEFC318FF%02XFFFFFFFFFFFF\rT18FEF1008FF0000FFFFFFFFFF\r", unsigned(steps));
    return bytes;
}

bool setUpByTheCommandLine(const test::CliRunner& run)
{
    const QString points = run.file("points.csv", "total_l,signal\n0,0\n10,20\n20,40\n30,60\n40,80\n50,100\n");
    for (const QString& line : {QString("vehicle add --name Linnet --capacity-l 50 --fuel diesel --circuit percent --signal-unit %"),
                                "calibrate " + points + " --save --zero-at-l 5",
                                QString("fill add --litres 44 --odometer-km 20000 --full --date 2026-01-10"),
                                QString("fill add --litres 40 --odometer-km 20500 --full --date 2026-02-10")})
        if (const test::CliAnswer answer = run(line); answer.exitCode != 0) {
            qWarning("%s: %s", qPrintable(line), answer.err.constData());
            return false;
        }
    return true;
}

// Empty where something is not there to be touched.
QList<QLine> touchesToLogARefuel(const QString& logbook, QSize size)
{
    QTemporaryDir folder;
    const QString like = folder.filePath("like.sqlite");
    if (!QFile::copy(logbook, like))
        return {};
    test::OpenScreen open(like, size, "now");
    test::SpeakingCar car(open.screen.feed);
    test::Hand hand(*open.window);
    car.startAt(60);
    goOn(car, 0, 70, 60);
    goOn(car, 0, 1, 80);
    goOn(car, 0, 120, 80);
    const bool found = hand.sees("The sender saw") && hand.touch("Now") && hand.touch(open.screen.now.live()->refuelWord())
        && hand.touch("Save this fill") && (QTest::qWait(800), hand.touch("Yes, save the guesses")) && hand.sees("L saved");
    if (!found)
        qWarning("%s", qPrintable(hand.texts().join(" | ")));
    return found ? hand.gestures() : QList<QLine>();
}

} // namespace

class LiveJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }

    void aDriveAndARefuelByTouch_data() { test::addScreenSizes(); }
    void aDriveAndARefuelByTouch()
    {
        QFETCH(QSize, size);
        const test::LoopWatch watch("live");
        test::OpenDemo demo(size, "now");
        test::SpeakingCar car(demo.open->screen.feed);
        test::Hand hand(*demo.open->window);
        car.startAt(k30Litres);
        goOn(car, 72, 300, k29Litres);
        QVERIFY2(hand.finds("sender 0 s ago"), qPrintable(hand.texts().join(" | ")));
        goOn(car, 0, 120, k29Litres);
        goOn(car, 0, 60, k40Litres); // 11 L go in
        goOn(car, 0, 200, k40Litres);
        QVERIFY(!demo.open->screen.now.live()->refuelWord().isEmpty());
        const int before = hand.touches();
        QVERIFY2(hand.sees("The sender saw 11"), qPrintable(hand.texts().join(" | "))); // by itself
        QVERIFY(hand.touchPad("11.2"));
        QVERIFY2(hand.touch("Save this fill"), qPrintable(hand.texts().join(" | ")));
        QVERIFY2(hand.sees("11.2 L saved"), qPrintable(hand.texts().join(" | ")));
        QVERIFY(hand.touches() - before <= 7);
        QCOMPARE(demo.fills().back().value.volume, Volume::fromLitres(11.2));
        QVERIFY(demo.open->screen.now.live()->refuelWord().isEmpty());
    }

    // Ten times a second something comes; a frame is drawn where the range was asked anew (every
    // half minute, as an engine idles) and at no other time.
    void nothingIsDrawnWhileTheSameIsSaid()
    {
        test::OpenDemo demo({800, 480}, "now");
        test::SpeakingCar car(demo.open->screen.feed);
        test::Hand hand(*demo.open->window);
        car.startAt(k30Litres);
        goOn(car, 0, 120, k30Litres);
        QVERIFY(hand.finds("sender 0 s ago"));
        QTest::qWait(500);
        QSignalSpy frames(demo.open->window, &QQuickWindow::frameSwapped);
        QSignalSpy asked(&demo.open->screen.now, &NowViewModel::changed);
        qsizetype stray = 0;
        for (int look = 0, askedAt = -10; look < 250; ++look) {
            const qsizetype askedBefore = asked.count(), drawnBefore = frames.count();
            car.drive(0, 0.5, k30Litres);
            QTest::qWait(10);
            if (asked.count() > askedBefore)
                askedAt = look;
            if (look > askedAt + 5)
                stray += frames.count() - drawnBefore;
        }
        QVERIFY2(asked.count() >= 3 && asked.count() <= 5, qPrintable(QString::number(asked.count())));
        QCOMPARE(stray, 0);
        car.silence(4);
        QVERIFY(QTest::qWaitFor([&, before = frames.count()] { return frames.count() > before; })); // which is said
    }

    // Set up by the command line, at the pace of the road: an adapter on a serial line, two
    // minutes at the pump. Pump comes by itself; the driver goes back to Now, touches what it
    // says there, and saves the litres that are proposed. Where to touch is found in a window
    // of this process over the same logbook.
    void aRefuelIsLoggedByTouchInTheRealProgram()
    {
        if (const QString missing = test::RealProgram::missing(); !missing.isEmpty())
            QSKIP(qPrintable(missing));
        constexpr QSize size(800, 480);
        const test::CliRunner run;
        const test::PseudoTerminal line;
        if (line.name().empty())
            QSKIP("there are no pseudo-terminals here");
        QVERIFY(setUpByTheCommandLine(run));
        const QList<QLine> touches = touchesToLogARefuel(run.logbook(), size);
        QVERIFY(!touches.isEmpty());
        QCOMPARE(run("vehicle source add slcan:" + QString::fromStdString(line.name()) + ",j1939").exitCode, 0);

        int steps = k30LitresSteps;
        QTimer says;
        connect(&says, &QTimer::timeout, &says, [&] { line.write(framesAtAHalt(steps)); });
        says.start(500);
        test::RealProgram program({"--logbook", run.logbook(), "--page", "now"}, size);
        QVERIFY(program.atRest());
        QTest::qWait(65000); // two blocks of half a minute: the level is known and steady
        const auto divider = [&] { return program.picture().copy(QRect(touches[0].p1() - QPoint(20, 20), QSize(40, 40))); };
        const QImage onNow = divider();
        steps = k40LitresSteps;
        QVERIFY(QTest::qWaitFor([&] { return divider() != onNow; }, 150000)); // another page, by itself
        QVERIFY(program.atRest());
        for (const QLine& touch : touches)
            QVERIFY(program.move(touch));
        QVERIFY(program.end());
        QCOMPARE(program.printed(), QByteArray());
        const auto fills = run("log --json").json()["fills"];
        QCOMPARE(fills.size(), std::size_t(3));
        QVERIFY2(std::ranges::any_of(fills, [](const auto& fill) { return std::abs(fill["litres"].template get<double>() - 10) < 0.5; }),
                 fills.dump().c_str());
    }

    // Three quarters of a minute of driving through a pipe: the picture changes by itself, a
    // touch is answered meanwhile, and what was driven is in the log once the program is ended.
    void theRealProgramFollowsAPipeAndWritesTheTrip()
    {
        if (const QString missing = test::RealProgram::missing(); !missing.isEmpty())
            QSKIP(qPrintable(missing));
        QTemporaryDir folder;
        const QString file = folder.filePath("demo.sqlite"), pipe = folder.filePath("car");
        QVERIFY(makeDemoLogbook(file.toStdString(), Existing::refuse));
        QCOMPARE(::mkfifo(qPrintable(pipe), 0600), 0);
        test::RealProgram program({"--logbook", file, "--page", "now", "--source", "lines:" + pipe}, {800, 480});
        QVERIFY(program.atRest());
        std::ofstream car(pipe.toStdString());
        car << "signal,speed_kmh,distance_km\n" << std::flush;
        const QImage before = program.picture();
        for (int i = 0; i < 90; ++i) {
            car << "1.62,72," << 100 + i * 0.01 << '\n' << std::flush;
            QTest::qWait(500);
        }
        QVERIFY(program.picture() != before); // it listens, and the level is the car's
        QVERIFY(program.end());
        QCOMPARE(program.printed(), QByteArray());
        const Result<Car> driven = Car::open(file.toStdString(), OpenMode::readOnly);
        const Result<VehicleLog> log = driven ? driven->log() : fail(driven.error());
        QVERIFY(log.has_value());
        double km = 0;
        for (const Entry<Trip>& trip : log->trips)
            if (trip.value.journalId)
                km += trip.value.distance.km();
        QVERIFY2(std::abs(km - 0.89) < 0.03, qPrintable(QString::number(km)));
    }
};

UNDERMARK_TEST(LiveJourneyTest)
#include "live_journey_test.moc"
