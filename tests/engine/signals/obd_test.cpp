// SPDX-License-Identifier: GPL-3.0-or-later
//
// Mode 01 values against other implementations of SAE J1979.
#include "engine/signals/obd.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <vector>

using namespace undermark;

class ObdTest : public QObject {
    Q_OBJECT
    static std::optional<double> valueOf(ObdPid pid, std::vector<std::uint8_t> bytes) { return obdValue(pid, bytes); }

private slots:
    void valuesAreThoseOfTheStandard()
    {
        // secdev/scapy, obd.uts and pids_20_3F.py (printed with three decimals)
        QVERIFY(std::abs(*valueOf(ObdPid::level, {0x1A}) - 10.196) < 5e-4);
        // brendan-w/python-OBD, tests
        QCOMPARE(*valueOf(ObdPid::level, {0xFF}), 100.0);
        QCOMPARE(*valueOf(ObdPid::fuelRate, {0xFF, 0xFF}), 3276.75);
        QCOMPARE(*valueOf(ObdPid::airFlow, {0x00, 0x01}), 0.01);
        // SAE J1979 / ISO 15031-5, worked out by hand
        QCOMPARE(*valueOf(ObdPid::speed, {0x4A}), 74.0);
        QVERIFY(std::abs(*valueOf(ObdPid::level, {0x7F}) - 49.803922) < 1e-6);
        QCOMPARE(*valueOf(ObdPid::fuelRate, {0x01, 0x2C}), 15.0);
        QCOMPARE(*valueOf(ObdPid::airFlow, {0x03, 0xB8}), 9.52);
        QCOMPARE(*valueOf(ObdPid::odometer, {0x00, 0x01, 0x86, 0xA0}), 10000.0); // from memory
        QCOMPARE(*valueOf(ObdPid::fuelType, {4}), 4.0);
    }

    void tooFewBytesAreNoValue()
    {
        QVERIFY(!valueOf(ObdPid::odometer, {0, 1, 2}));
        QVERIFY(!valueOf(ObdPid::fuelRate, {1}));
        QVERIFY(!valueOf(ObdPid::level, {}));
        QVERIFY(!valueOf(static_cast<ObdPid>(0x0C), {1, 2, 3, 4}));
    }

    // 14.7 to 1 by mass, 745 g/L: 0.3287 L/h for each g/s (from memory).
    void airIsFuelOfAPetrolEngine() { QVERIFY(std::abs(petrolLitresPerHour(1.0) - 0.3287) < 5e-5); }
};

UNDERMARK_TEST(ObdTest)
#include "obd_test.moc"
