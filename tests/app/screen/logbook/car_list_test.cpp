// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/car_list.h"

#include "app/screen/base/screen.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

QStringList namesIn(const CarList& list)
{
    QStringList names;
    for (const CarLine& line : list.lines())
        names.append(line.name);
    return names;
}

CarLine lineOf(const CarList& list, const QString& name)
{
    for (const CarLine& line : list.lines())
        if (line.name == name)
            return line;
    return {};
}

} // namespace

class CarListTest : public QObject {
    Q_OBJECT
private slots:
    void ofFewCarsOnlyWhatIsDueIsTold()
    {
        test::DemoCar car;
        Vehicle ibis;
        ibis.name = "Ibis";
        ibis.capacity = Volume::fromLitres(60);
        QVERIFY(car.setUp(ibis));
        CarList list(car);
        list.setWatched(true);
        QVERIFY(!list.many());
        QCOMPARE(list.due().size(), 2);
        QCOMPARE(list.due()[1], (Fact{"Ibis", "calibrate it: there is no calibration yet"}));
        for (int number = 3; number <= 7; ++number) {
            ibis.name = "Ibis " + std::to_string(number);
            QVERIFY(car.setUp(ibis));
        }
        list.refresh();
        QVERIFY(list.many());
        QVERIFY(list.due().isEmpty());
    }
    void ofManyEachTellsItsCalibrationHandOverAndWhatIsDue()
    {
        const test::TestFolder folder;
        Car car = test::carInState("workshop", folder.path);
        CarList list(car);
        list.setWatched(true);
        QVERIFY(list.many());
        QCOMPARE(list.count(), "30 of 30 cars");
        const CarLine shown = lineOf(list, "Ouzel wagon"), old = lineOf(list, "Rally car 7"),
                      fresh = lineOf(list, "Rally car 8");
        QVERIFY(shown.shown && !old.shown);
        QVERIFY2(shown.detail.contains("handed over on 2025-04-19"), qPrintable(shown.detail));
        QVERIFY2(old.detail.startsWith("calibrated 800 days ago\ncalibrate it again"), qPrintable(old.detail));
        QCOMPARE(fresh.detail, "calibrate it: there is no calibration yet");
    }
    // What `vehicle list` with the same wish lists: both ask isWanted (car_file_test.cpp).
    void manyAreFoundByNameByWhatIsDueAndByAnOldCalibration()
    {
        const test::TestFolder folder;
        Car car = test::carInState("workshop", folder.path);
        CarList list(car);
        list.setWatched(true);
        list.setName("CAR 2");
        QCOMPARE(list.lines().size(), 11); // 2, and 20 to 29
        QCOMPARE(list.count(), "11 of 30 cars");
        list.setName("");
        list.choose(2);
        QCOMPARE(list.choices()[0].current, 2);
        QVERIFY(namesIn(list).contains("Rally car 7"));
        QVERIFY(!namesIn(list).contains("Rally car 8"));
        list.choose(1);
        std::size_t due = 0;
        const auto logs = car.logs();
        for (const VehicleLog& log : *logs)
            due += isWanted(carFileOf(log, car.time()), {.name = {}, .due = true}, car.time());
        QCOMPARE(std::size_t(list.lines().size()), due);
    }
    void aLineFoundShowsItsCar()
    {
        const test::TestFolder folder;
        Car car = test::carInState("workshop", folder.path);
        Screen screen(car);
        CarList& list = *screen.logbook.cars();
        list.setWatched(true);
        list.setName("car 17");
        QCOMPARE(list.lines().size(), 1);
        screen.settings.chooseCar(list.lines()[0].row);
        QCOMPARE(car.vehicle()->value.name, std::string("Rally car 17"));
        QVERIFY(list.lines()[0].shown);
    }
    void nothingIsReadWhileNobodyLooks()
    {
        test::DemoCar car;
        CarList list(car);
        QVERIFY(list.lines().isEmpty());
        list.setWatched(true);
        QCOMPARE(list.lines().size(), 1);
        list.setWatched(false);
        QVERIFY(list.lines().isEmpty());
    }
};

UNDERMARK_TEST(CarListTest)
#include "car_list_test.moc"
