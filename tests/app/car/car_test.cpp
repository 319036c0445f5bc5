// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/car.h"
#include "app/car/open_car.h"
#include "app/car/plan_request.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <fstream>

using namespace undermark;

namespace {

// 20 L 200 km after the demo car's last fill.
Fill fillOf(Car& car)
{
    Fill fill;
    fill.time = car.time();
    fill.volume = Volume::fromLitres(20);
    fill.odometer = *test::lastFill(car).odometer + Distance::fromKm(200);
    return fill;
}

Vehicle ibis()
{
    Vehicle vehicle;
    vehicle.name = "Ibis";
    vehicle.capacity = Volume::fromLitres(60);
    return vehicle;
}

} // namespace

class CarTest : public QObject {
    Q_OBJECT
private slots:
    void whereThereIsNoCarEveryQuestionHasTheOneReason()
    {
        const test::TestFolder folder;
        Car car = test::carInState("unknown", folder.path);
        const std::string why = describe(car.knowledge().error());
        QVERIFY(why.find("no reading and no fill yet") != std::string::npos);
        QCOMPARE(describe(car.now().error()), why);
        QCOMPARE(describe(car.likelyFill().error()), why);
        QCOMPARE(describe(car.planRequest({}).error()), why);
        QCOMPARE(describe(car.record(Fill{}).error()), why);
        QCOMPARE(describe(car.recordFill(Fill{}).error()), why);
        QCOMPARE(describe(car.takeBack({}).error()), why);
        QCOMPARE(describe(car.logCount(std::nullopt).error()), why);
        QCOMPARE(describe(car.exportEverything(car.folder()).error()), why);
        QCOMPARE(describe(car.cars().error()), why);
        QCOMPARE(describe(car.setUp(ibis()).error()), why); // what is there is not written over
        QVERIFY(!car.writtenElsewhere());
    }
    void theDemoCarIsAWayOnWhereTheLogbookIsDamaged()
    {
        const test::TestFolder folder;
        const std::filesystem::path file = folder.path / "log.sqlite";
        std::ofstream(file) << "no logbook";
        Car car = openCar({file, false});
        QCOMPARE(car.now().error().code, ErrorCode::damaged);
        qputenv("XDG_DATA_HOME", QByteArray::fromStdString(folder.path.string()));
        const auto shown = car.showDemo();
        qunsetenv("XDG_DATA_HOME");
        QVERIFY(shown);
        QCOMPARE(car.now()->vehicle, "Ouzel wagon");
        QVERIFY(!car.now()->outlook.unlogged); // at its own time, or it would be months old
        QCOMPARE(std::filesystem::file_size(file), std::uintmax_t(10)); // as it was
    }
    void aFirstCarMakesItsLogbook()
    {
        test::EmptyCar car;
        QCOMPARE(car.knowledge().error().code, ErrorCode::notFound);
        QVERIFY(car.cars()->empty());
        QVERIFY(!std::filesystem::exists(car.folder() / "new.sqlite"));
        QVERIFY(car.setUp(ibis()));
        QCOMPARE(car.vehicle()->value, ibis());
        QVERIFY(std::filesystem::exists(car.folder() / "new.sqlite"));
    }
    // 45 km a day at 8 L/100 km: so much is guessed a week after the last fill.
    void aFillIsGuessedWithTheRoadThatNobodyWroteDown()
    {
        test::EmptyCar car;
        QVERIFY(car.setUp(ibis()));
        Fill full;
        full.time = car.time();
        full.volume = Volume::fromLitres(36);
        full.odometer = Distance::fromKm(20'000);
        for (int i = 0; i < 6; ++i) {
            QVERIFY(car.record(full));
            full.time += std::chrono::days(10);
            full.odometer = *full.odometer + Distance::fromKm(450);
        }
        car.pass(std::chrono::days(50));
        QVERIFY(car.likelyFill()->volume < Volume::fromLitres(0.1));
        car.pass(std::chrono::days(7));
        const Fill guess = *car.likelyFill();
        const double road = guess.odometer->km() - (20'000 + 5 * 450);
        QVERIFY2(std::abs(road - 315) < 20, qPrintable(QString::number(road)));
        QVERIFY2(std::abs(guess.volume.litres() - 315 * 0.08) < 3, qPrintable(QString::number(guess.volume.litres())));
    }
    void everythingIsAboutTheCarThatIsShown()
    {
        test::DemoCar car;
        const std::string ouzel = car.shownCar();
        QVERIFY(car.setUp(ibis()));
        QCOMPARE(car.log()->vehicle.value, ibis());
        QCOMPARE(car.logCount(std::nullopt)->rows, 0);
        QCOMPARE(car.knowledge().value()->vehicle(), ibis());
        QCOMPARE(car.cars()->size(), 2u);
        QVERIFY(car.showCar(ouzel));
        QCOMPARE(car.now()->vehicle, "Ouzel wagon");
        QCOMPARE(car.showCar("nobody").error().code, ErrorCode::notFound);
        QCOMPARE(car.shownCar(), ouzel);
    }
    void whatIsKnownIsLearntAgainOnlyAfterAChangeWhoeverMadeIt()
    {
        test::DemoCar car;
        const Knowledge before = *car.knowledge();
        QCOMPARE(*car.knowledge(), before);
        const auto id = car.record(fillOf(car));
        QVERIFY(id);
        const Knowledge after = *car.knowledge();
        QCOMPARE(after->log.fills.size(), before->log.fills.size() + 1);
        QVERIFY(!car.writtenElsewhere()); // its own
        Car other = test::reopenedCar(car.ownFolder.path);
        QVERIFY(other.takeBack(*id));
        QVERIFY(car.writtenElsewhere());
        QVERIFY(!car.writtenElsewhere());
        QCOMPARE(car.knowledge().value()->log.fills.size(), before->log.fills.size());
        QCOMPARE(after->log.fills.size(), before->log.fills.size() + 1); // what was given stays
    }
    void whatIsRecordedIsOnDiskWithTheClocksTime()
    {
        test::DemoCar car;
        car.pass(std::chrono::hours(1));
        Fill fill = fillOf(car);
        const auto id = car.record(fill);
        QVERIFY(id);
        fill.volume = Volume::fromLitres(21);
        car.pass(std::chrono::hours(1));
        QVERIFY(car.revise(*id, fill));
        Car again = test::reopenedCar(car.ownFolder.path);
        QCOMPARE(test::lastFill(again), fill);
        const auto history = again.history(*id, fill);
        QCOMPARE(history->size(), 2u);
        QCOMPARE((*history)[0].recorded, test::testTime() + std::chrono::hours(1));
        QCOMPARE((*history)[1].recorded, test::testTime() + std::chrono::hours(2));
        QVERIFY(again.takeBack(*id));
        QCOMPARE(test::lastFill(car).volume, Volume::fromLitres(20));
    }
    void aFillTeachesWhatTheLogbookTeachesAfterIt()
    {
        test::DemoCar car;
        const Knowledge before = *car.knowledge();
        const auto lesson = car.recordFill(fillOf(car));
        const Knowledge after = *car.knowledge();
        QVERIFY(lesson);
        QCOMPARE(lesson->rate.before->mean, before->consumption.model.forecast().rate.mean);
        QCOMPARE(lesson->rate.after->mean, after->consumption.model.forecast().rate.mean);
        QCOMPARE(lesson->entry, after->log.fills.back().id);
    }
    void eachModeHasItsOwnAnswer()
    {
        test::DemoCar car;
        const NowState town = *car.now(kTown), stage = *car.now(kSpecialStage);
        QVERIFY(stage.outlook.rate.mean > town.outlook.rate.mean);
        QVERIFY(distances(stage.outlook.toDry).p99 < distances(town.outlook.toDry).p99);
        QCOMPARE(car.now("gravel").error().code, ErrorCode::notFound);
        const Outlook asked = *outlook(**car.knowledge(), [] {
            Question question;
            question.mode = kTown;
            return question;
        }());
        QCOMPARE(distances(town.outlook.toZero).p50, distances(asked.toZero).p50);
    }
};

UNDERMARK_TEST(CarTest)
#include "car_test.moc"
