// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/car_sheet.h"
#include "app/screen/tank/tank_view_model.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>

using namespace undermark;

namespace {

enum Field { CapacityField, LeftBehindField, UnusableField, LampField, MassField, SupplyField };
// Of a further tank that is not calibrated and reads volts as they are.
constexpr int TransferFieldOfTank = 4;

void type(CarSheet& sheet, int field, const QString& text)
{
    sheet.form()->select(field);
    while (!sheet.form()->fields()[field].text.isEmpty())
        sheet.form()->erase();
    for (const QChar key : text)
        sheet.form()->press(key);
}

bool says(const CarSheet& sheet, const QString& part)
{
    const auto notices = sheet.notices();
    return std::any_of(notices.begin(), notices.end(),
                       [&](const NoticeText& notice) { return notice.text.contains(part); });
}

} // namespace

class CarSheetTest : public QObject {
    Q_OBJECT
private slots:
    void aCarIsRenamedAndTheRestStaysToTheLastDigit()
    {
        test::DemoCar car;
        const Vehicle before = car.vehicle()->value;
        const std::size_t fills = car.log()->fills.size();
        CarSheet sheet(car);
        QSignalSpy stored(&sheet, &CarSheet::stored);
        sheet.refresh();
        QCOMPARE(sheet.name(), "Ouzel wagon");
        sheet.setName(" Wren wagon ");
        sheet.save();
        QCOMPARE(stored.count(), 1);
        Vehicle expected = before;
        expected.name = "Wren wagon";
        QCOMPARE(car.vehicle()->value, expected);
        QCOMPARE(car.log()->fills.size(), fills); // it is the same car
    }
    void aNameOfAnotherCarIsRefusedAndNothingIsStored()
    {
        test::DemoCar car;
        Vehicle second;
        second.name = "Dipper van";
        second.capacity = Volume::fromLitres(70);
        QVERIFY(car.setUp(second));
        CarSheet sheet(car);
        sheet.refresh();
        type(sheet, CapacityField, "80");
        sheet.setName("Ouzel wagon");
        sheet.save();
        QVERIFY(sheet.notices()[0].problem());
        QCOMPARE(car.vehicle()->value, second);
        sheet.startOver();
        QCOMPARE(sheet.name(), "Dipper van");
        QCOMPARE(sheet.form()->fields()[0].text, "70");
    }
    void whatContradictsTheCalibrationIsSaidBeforeItIsSaved()
    {
        test::DemoCar car; // 50 L were poured in, read from 3.02 to 0.55 V
        CarSheet sheet(car);
        sheet.refresh();
        QVERIFY(sheet.notices().isEmpty());
        type(sheet, CapacityField, "45");
        QVERIFY(says(sheet, "less than the 50.0 L"));
        type(sheet, CapacityField, "60");
        QVERIFY(says(sheet, "takes 51.6 L")); // 1.6 L were left behind
        type(sheet, LampField, "60");
        QVERIFY(says(sheet, "lamp"));
        type(sheet, SupplyField, "2");
        QVERIFY(says(sheet, "3.02"));
        QCOMPARE(car.vehicle()->value.capacity, Volume::fromLitres(52));
    }
    void whatWasPouredIsOfferedAsTheCapacity()
    {
        test::DemoCar car;
        CarSheet sheet(car);
        sheet.refresh();
        QVERIFY(sheet.pouredWord().isEmpty()); // 51.6 L and 52 L are one
        type(sheet, CapacityField, "60");
        sheet.save();
        QVERIFY2(sheet.pouredWord().contains("51.6 L"), qPrintable(sheet.pouredWord()));
        sheet.takePoured();
        QCOMPARE(car.vehicle()->value.capacity, Volume::fromLitres(51.6));
        QVERIFY(sheet.pouredWord().isEmpty());
    }
    void anEstimateKeepsItsSpreadAndAnEmptyFieldIsNotKnown()
    {
        test::DemoCar car;
        CarSheet sheet(car);
        sheet.refresh();
        type(sheet, LeftBehindField, "2");
        type(sheet, LampField, "");
        sheet.save();
        const Vehicle vehicle = car.vehicle()->value;
        QCOMPARE(vehicle.leftBehind->mean, Volume::fromLitres(2));
        QCOMPARE(vehicle.leftBehind->sd, Volume::fromLitres(0.5));
        QVERIFY(!vehicle.lamp);
        QVERIFY(!vehicle.unusable);
    }
    void fuelCircuitAndUnitAreChosen()
    {
        test::DemoCar car;
        CarSheet sheet(car);
        sheet.refresh();
        const auto option = [&sheet](int choice, const QString& name) {
            return int(sheet.choices()[choice].options.indexOf(name));
        };
        sheet.choose(0, option(0, "Diesel"));
        sheet.choose(2, option(2, "%"));
        QCOMPARE(sheet.choices()[1].current, option(1, "per cent")); // the unit tells of it
        sheet.save();
        QVERIFY(car.vehicle()->value.fuel == FuelKind::diesel);
        QCOMPARE(car.vehicle()->value.sender.unit, "%");
    }
    // As `vehicle tank add` with the same numbers.
    void aFurtherTankIsAddedAndItsSheetIsShown()
    {
        test::DemoCar car;
        const Vehicle own = car.vehicle()->value;
        TankViewModel tank(car);
        CarSheet& sheet = *tank.sheet();
        QVERIFY(sheet.ofCar() && tank.tanks().isEmpty());
        sheet.addTank();
        QVERIFY(sheet.adding() && sheet.renamable());
        sheet.save(); // how much it takes is missing
        QVERIFY(sheet.notices()[0].problem());
        QVERIFY(car.log()->tanks.empty());
        sheet.setName("roof");
        type(sheet, CapacityField, "40");
        sheet.choose(0, int(TankFeed::pumpedOver));
        QCOMPARE(sheet.form()->fields().last().name, "pumped over, in a minute");
        type(sheet, TransferFieldOfTank, "2.5");
        sheet.save();
        ExtraTank expected;
        expected.name = "roof";
        expected.capacity = Volume::fromLitres(40);
        expected.feed = TankFeed::pumpedOver;
        expected.transfer = FlowRate::fromLitresPerHour(150);
        QCOMPARE(car.log()->tanks.size(), std::size_t(1));
        QCOMPARE(car.log()->tanks[0].value, expected);
        QCOMPARE(car.vehicle()->value, own);
        QCOMPARE(tank.tanks()[0].current, 1); // the page is about the new one
        QVERIFY(!sheet.adding() && !sheet.renamable());
        QCOMPARE(sheet.form()->fields()[0].text, "40");
    }
    void aFurtherTanksSheetIsChangedAndTheRestOfItStays()
    {
        test::DemoCar car;
        ExtraTank aux = test::auxTank();
        aux.feed = TankFeed::pumpedOver;
        aux.transfer = FlowRate::fromLitresPerHour(123.4);
        aux.leftBehind = Estimate<Volume>{Volume::fromLitres(1.25), Volume::fromLitres(0.3)};
        aux.sender.unit = "ohm";
        QVERIFY(car.record(aux));
        const Vehicle own = car.vehicle()->value;
        TankViewModel tank(car);
        tank.selectTank(1);
        CarSheet& sheet = *tank.sheet();
        QCOMPARE(sheet.form()->fields()[0].text, "30");
        sheet.setName("another"); // a tank keeps its name
        type(sheet, CapacityField, "31");
        sheet.save();
        aux.capacity = Volume::fromLitres(31);
        QCOMPARE(car.log()->tanks[0].value, aux);
        sheet.choose(0, int(TankFeed::shared));
        sheet.save();
        aux.feed = TankFeed::shared;
        QCOMPARE(car.log()->tanks[0].value, aux);
        QCOMPARE(car.vehicle()->value, own);
        type(sheet, CapacityField, "99");
        tank.selectTank(0); // what was typed of the other tank is dropped
        QCOMPARE(sheet.form()->fields()[0].text, "52");
        QVERIFY(sheet.ofCar());
    }
    void aTankOfANameThatIsTakenIsRefusedAndLeavingAddsNothing()
    {
        test::DemoCar car;
        QVERIFY(car.record(test::auxTank()));
        TankViewModel tank(car);
        tank.sheet()->addTank();
        tank.sheet()->setName("aux");
        type(*tank.sheet(), CapacityField, "20");
        tank.sheet()->save();
        QVERIFY(tank.sheet()->notices()[0].problem());
        tank.refresh(); // somebody writes elsewhere
        QVERIFY(tank.sheet()->adding());
        QCOMPARE(tank.sheet()->form()->fields()[0].text, "20");
        tank.sheet()->startOver();
        QVERIFY(!tank.sheet()->adding() && tank.sheet()->ofCar());
        QCOMPARE(car.log()->tanks.size(), std::size_t(1));
        QCOMPARE(car.log()->tanks[0].value, test::auxTank());
    }
    void whatIsTypedIsNotLostToWhatHappensElsewhere()
    {
        test::DemoCar car;
        CarSheet sheet(car);
        sheet.refresh();
        type(sheet, CapacityField, "55");
        sheet.refresh();
        QCOMPARE(sheet.form()->fields()[0].text, "55");
    }
};

UNDERMARK_TEST(CarSheetTest)
#include "car_sheet_test.moc"
