// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/format.h"
#include "engine/signals/nmea.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class NmeaTest : public QObject {
    Q_OBJECT

    static std::string withSum(const std::string& body)
    {
        unsigned sum = 0;
        for (const char c : body)
            sum ^= static_cast<unsigned char>(c);
        return format("$%s*%02X", body.c_str(), sum);
    }

private slots:
    // The sentence that manuals of NMEA 0183 print; 22.4 kn = 41.4848 km/h.
    void rmcSaysSpeedPlaceAndTime()
    {
        NmeaFix fix;
        QCOMPARE(parseNmea("$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A", fix), Heard::value);
        QVERIFY(std::abs(fix.place->latitude - 48.1173) < 1e-9);
        QVERIFY(std::abs(fix.place->longitude - 11.516667) < 5e-7);
        QVERIFY(std::abs(fix.speed->kmPerHour() - 41.4848) < 1e-9);
        // 2094-03-23 12:35:19 (two digits of the year), by Python's datetime
        QCOMPARE(fix.utc->count(), 3920186119.0);
    }

    void southAndWestAreNegative()
    {
        NmeaFix fix;
        QCOMPARE(parseNmea(withSum("GNRMC,000001.50,A,3330.0,S,07030.0,W,10.0,,010126,,,A"), fix), Heard::value);
        QCOMPARE(fix.place->latitude, -33.5);
        QCOMPARE(fix.place->longitude, -70.5);
        QCOMPARE(fix.utc->count(), 1767225601.5); // 2026-01-01 00:00:01.5, by Python's datetime
        QCOMPARE(fix.speed->kmPerHour(), 18.52);
    }

    void vtgSaysSpeed()
    {
        NmeaFix fix;
        QCOMPARE(parseNmea(withSum("GPVTG,054.7,T,034.4,M,005.5,N,010.2,K,A"), fix), Heard::value);
        QCOMPARE(fix.speed->kmPerHour(), 10.2);
        QVERIFY(!fix.utc && !fix.place);
        QCOMPARE(parseNmea(withSum("GPVTG,,T,,M,0.0,N,0.0,K,N"), fix), Heard::nothing);
    }

    void voidFixesAndOtherSentencesAreNothing()
    {
        NmeaFix fix;
        for (const char* body : {"GPRMC,123519,V,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W",
                                 "GPRMC,,V,,,,,,,,,,N", "GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,",
                                 "PUBX,00", "GPRMC", "", "GPRMC,1,A,9999.0,N,1.0,E,-5,,,"}) {
            QCOMPARE(parseNmea(withSum(body), fix), Heard::nothing);
            QVERIFY(!fix.speed && !fix.place);
        }
    }

    void aWrongOrMissingChecksumIsGarbled()
    {
        NmeaFix fix;
        for (const char* line : {"$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6B",
                                 "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W",
                                 "GPRMC,123519,A*6A", "", "$", "*00", "$*", "$*0", "$*zz", "$GPRMC*6A9"})
            QCOMPARE(parseNmea(line, fix), Heard::garbled);
    }

    // Found by fuzzing: more digits than a whole number holds are no place.
    void aPlaceOfFiftyDigitsIsUnknown()
    {
        NmeaFix fix;
        QCOMPARE(parseNmea(withSum("GPRMC,123519,A,4" + std::string(50, '9') + "07.038,N,01131.000,E,022.4,084.4,230394,003.1,W"),
                           fix), Heard::value);
        QVERIFY(!fix.place);
        QVERIFY(fix.speed);
    }

    void anImpossibleTimeOrSpeedIsUnknown()
    {
        NmeaFix fix;
        QCOMPARE(parseNmea(withSum("GPRMC,243519,A,4807.038,N,01131.000,E,022.4,084.4,310294,003.1,W"), fix), Heard::value);
        QVERIFY(!fix.utc);
        QCOMPARE(parseNmea(withSum("GPRMC,123519,A,4807.038,N,01131.000,E,99999,084.4,230394,003.1,W"), fix), Heard::value);
        QVERIFY(!fix.speed && fix.place);
    }
};

UNDERMARK_TEST(NmeaTest)
#include "nmea_test.moc"
