// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/drive_keeper.h"

#include "app/car/told.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <fstream>
#include <sys/stat.h>

using namespace undermark;
using namespace undermark::test;

namespace {

struct KeptGoing {
    double now = 0.0, km = 0.0;

    bool go(DriveKeeper& keeper, double kmh, double seconds, const std::string& mode = {})
    {
        bool fine = true;
        for (int i = 0; i < int(seconds); ++i) {
            now += 1.0;
            km += kmh / 3600;
            Sample sample;
            sample.time = Seconds(now);
            sample.speed = Speed::fromKmPerHour(kmh);
            sample.distance = Distance::fromKm(km);
            fine = fine && keeper.take(sample, mode).has_value();
        }
        return fine;
    }
};

std::vector<Trip> ownTrips(Car& car)
{
    std::vector<Trip> trips;
    const auto log = car.log();
    for (const Entry<Trip>& trip : log->trips)
        if (trip.value.journalId)
            trips.push_back(trip.value);
    return trips;
}

std::vector<LevelRecord> levelsKept(Car& car)
{
    std::vector<LevelRecord> levels;
    for (const Entry<LevelRecord>& level : car.log()->levels)
        levels.push_back(level.value);
    return levels;
}

FollowedTank holding(double litres)
{
    return {std::nullopt, {Volume::fromLitres(litres), Volume::fromLitres(0.3)}};
}

double kmOf(const std::vector<Trip>& trips)
{
    double km = 0.0;
    for (const Trip& trip : trips)
        km += trip.distance.km();
    return km;
}

} // namespace

class DriveKeeperTest : public QObject {
    Q_OBJECT

private slots:
    void aDriveIsATripAModeOnceItIsSilentAtAHalt()
    {
        DemoCar car;
        auto keeper = DriveKeeper::start(car);
        QVERIFY2(keeper, keeper ? "" : describe(keeper.error()).c_str());
        KeptGoing drive;
        QVERIFY(drive.go(*keeper, 36, 301));
        QVERIFY(drive.go(*keeper, 120, 900));
        QVERIFY(drive.go(*keeper, 0, 5));
        QVERIFY(ownTrips(car).empty());
        QVERIFY(!*keeper->look(Seconds(drive.now + 5)));
        QVERIFY(*keeper->look(Seconds(drive.now + 11)));
        const auto trips = ownTrips(car);
        // the first sample says from where
        QVERIFY(std::abs(kmOf(trips) - (drive.km - 0.01)) < 1e-9);
        QCOMPARE(trips.size(), std::size_t(3)); // over the open road to the motorway
        for (const Trip& trip : trips)
            QVERIFY(trip.mode == kTown || trip.mode == kOpenRoad || trip.mode == kMotorway);
        QVERIFY(!*keeper->look(Seconds(drive.now + 1000)));
        QVERIFY(!*keeper->end());
    }
    // Nobody has said how it is driven, and the speed tells after half a minute.
    void theFirstHalfMinuteIsOfTheModeThatTheSpeedThenSays()
    {
        DemoCar car;
        auto keeper = DriveKeeper::start(car);
        KeptGoing drive;
        QVERIFY(drive.go(*keeper, 125, 301));
        QVERIFY(*keeper->end());
        const auto trips = ownTrips(car);
        QCOMPARE(trips.size(), std::size_t(1));
        QCOMPARE(trips[0].mode, kMotorway);
        QVERIFY(std::abs(trips[0].distance.km() - 300 * 125 / 3600.0) < 1e-9);
    }
    void aDriveTooShortToTellIsOfTheFirstMode()
    {
        DemoCar car;
        auto keeper = DriveKeeper::start(car);
        KeptGoing drive;
        QVERIFY(drive.go(*keeper, 125, 20));
        QVERIFY(*keeper->end());
        QCOMPARE(ownTrips(car).size(), std::size_t(1));
        QCOMPARE(ownTrips(car)[0].mode, car.log()->modes.front().value.name);
    }
    void theDriversModeIsTaken()
    {
        DemoCar car;
        auto keeper = DriveKeeper::start(car);
        KeptGoing drive;
        QVERIFY(drive.go(*keeper, 120, 101, kSpecialStage));
        QVERIFY(*keeper->end());
        QCOMPARE(ownTrips(car).size(), std::size_t(1));
        QCOMPARE(ownTrips(car)[0].mode, kSpecialStage);
    }
    // As a kill leaves it: the journal of a program that is not there any more, and again
    // where the kill came after the trips were recorded.
    void whatAKilledProgramLeftIsRecordedOnce()
    {
        DemoCar car;
        const auto file = car.folder() / "drive-journal.jsonl";
        std::string text;
        {
            auto keeper = DriveKeeper::start(car);
            KeptGoing drive;
            QVERIFY(drive.go(*keeper, 60, 306, kOpenRoad));
            struct stat status{};
            QCOMPARE(::stat(file.c_str(), &status), 0);
            QCOMPARE(status.st_mode & 07777U, 0600U);
            std::ifstream in(file);
            text.assign(std::istreambuf_iterator<char>(in), {});
        }
        QVERIFY(std::ranges::count(text, '\n') >= 30);
        for (int again = 0; again < 2; ++again) {
            std::ofstream(file) << text << text.substr(0, 40); // and a line cut short
            QVERIFY(DriveKeeper::start(car));
            const auto trips = ownTrips(car);
            QCOMPARE(trips.size(), std::size_t(1));
            QVERIFY(trips[0].distance.km() <= 305 / 60.0 && trips[0].distance.km() >= 295 / 60.0);
            QCOMPARE(std::filesystem::file_size(file), std::uintmax_t(0));
        }
    }
    void theLevelAtTheEndOfADriveIsKeptAndAnsweredFrom()
    {
        DemoCar car;
        auto keeper = DriveKeeper::start(car);
        KeptGoing drive;
        keeper->tell({holding(31)});
        QVERIFY(drive.go(*keeper, 60, 120));
        keeper->tell({holding(29.5)}); // newer than the last line of the journal
        QVERIFY(*keeper->end());
        const auto levels = levelsKept(car);
        QCOMPARE(levels.size(), std::size_t(1));
        QVERIFY(levels[0].added == holding(29.5).added && levels[0].origin == LevelOrigin::followed);
        QVERIFY(levels[0].time == ownTrips(car)[0].time);
        Question followed;
        followed.followed = levels[0].added;
        const auto known = *car.knowledge();
        const auto live = outlook(*known, followed), later = outlook(*known, {});
        QVERIFY(live && later && later->asOf == levels[0].time);
        QVERIFY(live->usable == later->usable && distances(live->toDry).p99 == distances(later->toDry).p99);
        QVERIFY(!*keeper->end());
        QCOMPARE(levelsKept(car).size(), std::size_t(1));
    }
    void aLevelOfAKilledProgramIsKeptOnceAndOneOfATankThatIsGoneHoldsUpNothing()
    {
        DemoCar car;
        const auto file = car.folder() / "drive-journal.jsonl";
        std::string text;
        {
            auto keeper = DriveKeeper::start(car);
            KeptGoing drive;
            keeper->tell({holding(31), {"no such tank", holding(5).added}});
            QVERIFY(drive.go(*keeper, 60, 306, kOpenRoad));
            std::ifstream in(file);
            text.assign(std::istreambuf_iterator<char>(in), {});
        }
        for (int again = 0; again < 2; ++again) {
            std::ofstream(file) << text;
            QVERIFY(DriveKeeper::start(car));
            QCOMPARE(levelsKept(car).size(), std::size_t(1));
            QCOMPARE(ownTrips(car).size(), std::size_t(1));
            QCOMPARE(std::filesystem::file_size(file), std::uintmax_t(0));
        }
    }
    // What went in is in the level that is followed, and will be in the log.
    void afterFuelNoLevelIsKeptBeforeItsFillIsLogged()
    {
        DemoCar car;
        auto keeper = DriveKeeper::start(car);
        KeptGoing drive;
        keeper->tell({holding(20)});
        QVERIFY(drive.go(*keeper, 60, 120));
        keeper->tell({holding(40)});
        QVERIFY(*keeper->fuelWentIn());
        QVERIFY(drive.go(*keeper, 60, 120));
        QVERIFY(*keeper->end());
        QVERIFY(levelsKept(car).empty());
        car.pass(std::chrono::minutes(5));
        Fill fill = lastFill(car);
        fill.time = car.time();
        fill.extent = FillExtent::partial;
        fill.odometer.reset();
        fill.volume = Volume::fromLitres(20);
        QVERIFY(car.record(fill));
        keeper->tell({holding(37)});
        QVERIFY(drive.go(*keeper, 60, 120));
        QVERIFY(*keeper->end());
        QCOMPARE(levelsKept(car).size(), std::size_t(1));
        const auto known = *car.knowledge();
        Question followed;
        followed.followed = holding(37).added;
        QVERIFY(outlook(*known, {})->usable == outlook(*known, followed)->usable); // the 20 L once
    }
    void aJournalIsKeptByOneProgramAtATime()
    {
        DemoCar car;
        auto keeper = DriveKeeper::start(car);
        QVERIFY(keeper);
        const auto second = DriveKeeper::start(car);
        QVERIFY(!second);
        QCOMPARE(second.error().code, ErrorCode::busy);
    }
    void aClockThatWentBackPutsNoTripBeforeTheLogsNewest()
    {
        DemoCar car;
        const Instant newest = *lastRecorded(*car.log());
        car.pass(-std::chrono::days(400));
        auto keeper = DriveKeeper::start(car);
        KeptGoing drive;
        keeper->tell({holding(30)});
        QVERIFY(drive.go(*keeper, 60, 100));
        QVERIFY(*keeper->end());
        QVERIFY(ownTrips(car)[0].time >= newest);
        QVERIFY(levelsKept(car).empty()); // nobody knows what it is newer than
    }
};

UNDERMARK_TEST(DriveKeeperTest)
#include "drive_keeper_test.moc"
