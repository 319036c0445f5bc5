// SPDX-License-Identifier: GPL-3.0-or-later
//
// Drives that a car speaks of, and the trips in its logbook afterwards.
#include "app/screen/base/screen.h"
#include "tests/support/speaking_car.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <fstream>

using namespace undermark;

namespace {

// The trips that the car wrote itself, newest last.
std::vector<Trip> tripsWritten(const Car& car)
{
    std::vector<Trip> trips;
    if (const auto log = car.log())
        for (const Entry<Trip>& trip : log->trips)
            if (trip.value.journalId)
                trips.push_back(trip.value);
    return trips;
}

// The first seconds, before the speed tells a mode, are a trip of the car's first mode.
double kmWritten(const Car& car)
{
    double km = 0;
    for (const Trip& trip : tripsWritten(car))
        km += trip.distance.km();
    return km;
}

} // namespace

class TripWriterTest : public QObject {
    Q_OBJECT
private slots:
    void aDriveIsInTheLogbookOnceItIsOver()
    {
        test::DemoCar car;
        Screen screen(car);
        test::SpeakingCar speaking(screen.feed);
        speaking.startAt(1.5);
        speaking.drive(72, 300, 1.5);
        speaking.drive(0, 5, 1.5);
        QVERIFY(tripsWritten(car).empty());
        speaking.silence(30);
        QVERIFY(std::fabs(kmWritten(car) - speaking.km()) < 0.05);
        QVERIFY(!screen.now.live()->notices().size());
    }

    // What the screen said while the sender spoke, it says afterwards, and after another start,
    // and so does a car that only has the logbook.
    void theLevelAtItsEndAnswersAfterwardsAsItDid()
    {
        test::DemoCar car;
        QString sure;
        {
            Screen screen(car);
            test::SpeakingCar speaking(screen.feed);
            speaking.startAt(1.5);
            speaking.drive(72, 300, 1.5);
            speaking.drive(0, 60, 1.5);
            speaking.silence(5);
            sure = screen.now.sureNumber();
            QVERIFY(screen.now.live()->level().has_value());
            speaking.silence(30);
            QVERIFY(!screen.now.live()->level().has_value());
            QCOMPARE(screen.now.sureNumber(), sure);
            QVERIFY2(screen.now.age().contains("level kept"), qPrintable(screen.now.age()));
        }
        QCOMPARE(car.log()->levels.size(), std::size_t(1));
        QVERIFY(car.log()->levels[0].value.origin == LevelOrigin::followed);
        QCOMPARE(Screen(car).now.sureNumber(), sure);
        const auto now = car.now();
        QVERIFY(now && now->outlook.asOf.has_value());
        QCOMPARE(QString::number(int(distances(now->outlook.toZero).p99.km())), sure);
    }

    // Said by the driver, it is that mode's; fuel that goes in ends a drive and begins another.
    void byModeAndUpToTheRefuel()
    {
        test::DemoCar car;
        Screen screen(car);
        test::SpeakingCar speaking(screen.feed);
        const std::string mode = car.log()->modes.back().value.name;
        screen.now.live()->setMode(mode);
        speaking.startAt(1.88); // 25 L
        speaking.drive(72, 300, 1.88);
        speaking.drive(0, 60, 1.88);
        speaking.drive(0, 60, 0.80); // to 45 L
        speaking.drive(0, 60, 0.80);
        speaking.drive(72, 60, 0.80);
        const std::vector<Trip> trips = tripsWritten(car);
        QCOMPARE(trips.size(), std::size_t(1));
        QVERIFY(car.log()->levels.empty()); // it has the fuel in it that no fill tells of yet
        QCOMPARE(trips[0].mode, mode);
        QVERIFY(std::fabs(trips[0].distance.km() - 6) < 0.1);
    }

    // The program's end writes what was driven, and the next start nothing twice.
    void theEndOfTheProgram()
    {
        test::DemoCar car;
        {
            Screen screen(car);
            test::SpeakingCar speaking(screen.feed);
            speaking.startAt(1.5);
            speaking.drive(72, 200, 1.5);
        }
        QVERIFY(std::fabs(kmWritten(car) - 4) < 0.05);
        Screen again(car);
        test::SpeakingCar speaking(again.feed);
        speaking.startAt(1.5);
        speaking.drive(36, 20, 1.5);
        QVERIFY(std::fabs(kmWritten(car) - 4) < 0.05);
    }

    void recordingsAreNoTrips()
    {
        test::DemoCar car;
        QTemporaryDir folder;
        const std::string file = folder.filePath("drive.txt").toStdString();
        std::ofstream out(file);
        out << "signal,speed_kmh,distance_km\n";
        for (int i = 0; i < 400; ++i)
            out << "1.5,72," << i * .02 << '\n';
        out.close();
        Screen screen(car);
        Seconds now{};
        screen.feed.setClock([&now] { return now; });
        SourceOptions options;
        options.sources = {"lines:" + file};
        QVERIFY(screen.feed.follow(options));
        for (int i = 0; i < 1000; ++i) {
            now += Seconds(.1);
            screen.feed.look();
        }
        QVERIFY(tripsWritten(car).empty());
    }

    // Another program keeps the journal: said, and the rest of the screen goes on.
    void whyNoneAreWritten()
    {
        test::DemoCar car;
        auto held = DriveKeeper::start(car);
        QVERIFY(held);
        Screen screen(car);
        test::SpeakingCar speaking(screen.feed);
        speaking.startAt(1.5);
        speaking.drive(72, 120, 1.5);
        const auto notices = screen.now.live()->notices();
        QCOMPARE(notices.size(), std::size_t(1));
        QVERIFY(screen.now.live()->level().has_value());
    }
};

UNDERMARK_TEST(TripWriterTest)
#include "trip_writer_test.moc"
