// SPDX-License-Identifier: GPL-3.0-or-later
//
// A car that speaks: Now follows it, a refuel is asked about and logged in a few touches; and
// the real program by a pipe, at the pace of the road.
#include "app/car/demo_logbook.h"
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/journeys/real_program.h"
#include "tests/support/speaking_car.h"
#include "tests/support/test_main.h"

#include <QTest>
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
