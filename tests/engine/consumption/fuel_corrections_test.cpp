// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/fuel_corrections.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class FuelCorrectionsTest : public QObject {
    Q_OBJECT

    static double factor(double density, double celsius)
    {
        return volumeCorrection(density, Temperature::fromCelsius(celsius)).value();
    }

    static Fill fill(double litres, std::optional<double> celsius, std::optional<std::string> blend)
    {
        Fill f;
        f.volume = Volume::fromLitres(litres);
        if (celsius)
            f.temperature = Temperature::fromCelsius(*celsius);
        f.blend = std::move(blend);
        return f;
    }

private slots:
    // Recomputed apart from the project from the constants of API MPMS 11.1 /
    // ASTM D1250 (1980), printed with five decimals.
    void volumeAtFifteenDegreesIsThatOfTheStandard_data()
    {
        QTest::addColumn<double>("density");
        QTest::addColumn<double>("celsius");
        QTest::addColumn<double>("expected");
        QTest::newRow("petrol -20") << 745.0 << -20.0 << 1.04187;
        QTest::newRow("petrol 0") << 745.0 << 0.0 << 1.01809;
        QTest::newRow("petrol 30") << 745.0 << 30.0 << 0.98171;
        QTest::newRow("petrol 40") << 745.0 << 40.0 << 0.96941;
        QTest::newRow("diesel 0") << 835.0 << 0.0 << 1.01274;
        QTest::newRow("diesel 30") << 835.0 << 30.0 << 0.98716;
        QTest::newRow("heavy diesel 30") << 845.0 << 30.0 << 0.98740;
    }

    void volumeAtFifteenDegreesIsThatOfTheStandard()
    {
        QFETCH(double, density);
        QFETCH(double, celsius);
        QFETCH(double, expected);
        QVERIFY(std::abs(factor(density, celsius) - expected) <= 0.5e-5);
    }

    void fiftyLitresAtThirtyDegrees()
    {
        QVERIFY(std::abs(50 * factor(745, 30) - 49.0854) <= 0.5e-4);   // .98171 of them, as above
        QCOMPARE(factor(745, 15), 1.0);
    }

    void densitiesOutsideTheTablesGiveNothing()
    {
        QVERIFY(!volumeCorrection(652, Temperature::fromCelsius(20)));
        QVERIFY(!volumeCorrection(1076, Temperature::fromCelsius(20)));
        QVERIFY(!volumeCorrection(std::nan(""), Temperature::fromCelsius(20)));
    }

    // e10 about 96.6 % of e0 per litre: published; e85 73.4 % of e10: from memory.
    void blendsHoldTheEnergyOfTheTable()
    {
        QCOMPARE(energyOfBlend("e0").value(), 1.0);
        QVERIFY(std::abs(energyOfBlend("E10").value() - 0.966) < 1e-12);
        QVERIFY(std::abs(energyOfBlend("e85").value() / energyOfBlend("e10").value() - 0.734) < 1e-12);
        QCOMPARE(energyOfBlend("diesel").value(), 1.0);
        QVERIFY(energyOfBlend("e5").value() > energyOfBlend("e10").value());
        QVERIFY(!energyOfBlend("mystery"));
        QVERIFY(!energyOfBlend("e150"));
    }

    void switchedOffNothingChanges()
    {
        const std::vector fills{fill(40, 30, "e85"), fill(30, 0, "e10")};
        const CorrectedFills same = correctFills(fills, {});
        QVERIFY(same.fills == fills);
        QVERIFY(same.changes.empty());
    }

    void whatChangedIsSaid()
    {
        const std::vector fills{fill(40, 30, "e85"), fill(50, 30, "e10"), fill(20, {}, {})};
        const CorrectedFills both = correctFills(fills, {true, true, FuelKind::petrol});
        QCOMPARE(both.changes.size(), std::size_t(3));
        QVERIFY(std::abs(both.fills[0].volume.litres() - 40 * factor(745, 30)) < 1e-12);
        // Burnt until the second fill: what the first one brought.
        QVERIFY(std::abs(both.fills[1].volume.litres() - 50 * factor(745, 30) * 0.966 * 0.734) < 1e-9);
        QVERIFY(std::abs(both.fills[2].volume.litres() - 20 * 0.966) < 1e-12);
        QCOMPARE(both.unknown, std::size_t(1));   // the third has no temperature
        QCOMPARE(both.changes[1].before.litres(), 50.0);
        QVERIFY(english(both.changes[1].why.back()).find("energy") != std::string::npos);
    }
};

UNDERMARK_TEST(FuelCorrectionsTest)
#include "fuel_corrections_test.moc"
