// SPDX-License-Identifier: GPL-3.0-or-later
//
// The hand-over sheet by touch.
#include "app/screen/tank/tank_view_model.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTest>

using namespace undermark;

namespace {

QString factOf(const TankViewModel& tank, const QString& name)
{
    for (const Fact& fact : tank.curveFacts())
        if (fact.name == name)
            return fact.value;
    return {};
}

} // namespace

class TankSheetTest : public QObject {
    Q_OBJECT
private slots:
    void theSheetIsWrittenBesideTheLogbook()
    {
        test::DemoCar car;
        TankViewModel tank(car);
        QVERIFY(tank.sheetDone().isEmpty());
        tank.writeSheet();
        const QString file = QString::fromStdString((car.folder() / "hand-over-sheet.pdf").string());
        QVERIFY2(tank.sheetDone().contains(file), qPrintable(tank.sheetDone()));
        QFile pdf(file);
        QVERIFY(pdf.open(QIODevice::ReadOnly));
        QVERIFY(pdf.readAll().startsWith("%PDF"));
    }
    void ofAFurtherTankSheetAndTableHaveItsNameInTheirs()
    {
        test::DemoCar car;
        ExtraTank tank = test::auxTank();
        tank.name = "../roof";
        QVERIFY(car.record(tank));
        Calibration calibration = car.log()->calibration->value;
        calibration.tank = tank.name;
        QVERIFY(car.record(calibration));
        TankViewModel page(car);
        page.selectTank(1);
        page.writeSheet();
        page.exportTable();
        QVERIFY2(page.sheetDone().contains("Written"), qPrintable(page.sheetDone()));
        QVERIFY(std::filesystem::exists(car.folder() / "hand-over-sheet----roof.pdf"));
        QVERIFY(std::filesystem::exists(car.folder() / "gauge-table----roof.csv"));
        QVERIFY(!std::filesystem::exists(car.folder() / "hand-over-sheet.pdf"));
        QVERIFY(!std::filesystem::exists(car.folder() / "gauge-table.csv"));
    }
    void aPhotoThatIsNotThereIsSaid()
    {
        test::DemoCar car;
        Photo photo;
        photo.time = car.time();
        photo.sha256 = std::string(64, 'a');
        QVERIFY(car.record(photo).has_value());
        TankViewModel tank(car);
        tank.writeSheet();
        QVERIFY2(tank.sheetDone().contains("not beside the logbook"), qPrintable(tank.sheetDone()));
    }
    void whetherItWasVerifiedStandsAmongTheFacts()
    {
        test::DemoCar car;
        TankViewModel tank(car);
        QCOMPARE(factOf(tank, "verified"), QStringLiteral("not yet"));
        VerificationRecord tried;
        tried.time = car.time();
        tried.confidence = Probability::of(0.99);
        QVERIFY(car.record(tried).has_value());
        tank.refresh();
        QVERIFY(factOf(tank, "verified").startsWith("NOT PASSED, "));
        tried.passed = true;
        QVERIFY(car.record(tried).has_value());
        tank.refresh();
        QVERIFY(factOf(tank, "verified").startsWith("passed, "));
    }
    void withoutACarNothingIsWritten()
    {
        test::EmptyCar car;
        TankViewModel tank(car);
        tank.writeSheet();
        QVERIFY(tank.sheetDone().isEmpty());
    }
};

UNDERMARK_TEST(TankSheetTest)
#include "tank_sheet_test.moc"
