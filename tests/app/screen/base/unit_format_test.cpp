// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/screen_settings.h"
#include "app/screen/base/unit_format.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <limits>

using namespace undermark;

class UnitFormatTest : public QObject {
    Q_OBJECT
private slots:
    void aDistanceIsRoundedDown()
    {
        const UnitFormat format;
        QCOMPARE(format.distance(Distance::fromKm(148.99)), "148");
        QCOMPARE(format.distance(Distance::fromKm(148.0 - 1e-12)), "148");
        QCOMPARE(format.distanceWithUnit(Distance::fromKm(0.9)), "0 km");
    }
    void aDistanceIsNeverShownBelowZero()
    {
        QCOMPARE(UnitFormat().distance(Distance::fromKm(-12)), "0");
    }
    void aSpreadIsRoundedUp()
    {
        const Estimate<Volume> level{Volume::fromLitres(13.84), Volume::fromLitres(0.61)};
        QCOMPARE(UnitFormat().volume(level), "13.8 ± 0.7 L");
        const Estimate<Volume> sharp{Volume::fromLitres(13.84), Volume::fromLitres(0.01)};
        QCOMPARE(UnitFormat().volume(sharp), "13.8 ± 0.1 L");
    }
    void aNumberWithoutSpreadShowsNone()
    {
        QCOMPARE(UnitFormat().volume(Estimate<Volume>{Volume::fromLitres(5), {}}), "5.0 L");
    }
    void theSameQuantityIsShownInTheUsersUnits()
    {
        // 100 km, 20 L and 8 L/100 km: 62.1 mi; 5.3 US and 4.4 imperial gallons;
        // 29.4 and 35.3 miles per gallon, by the exact definitions of NIST HB 44.
        const Estimate<Volume> fuel{Volume::fromLitres(20), {}};
        const Estimate<Consumption> rate{Consumption::fromLitresPer100Km(8), {}};
        QCOMPARE(UnitFormat(Units::us()).distanceWithUnit(Distance::fromKm(100)), "62 mi");
        QCOMPARE(UnitFormat(Units::us()).volume(fuel), "5.3 gal");
        QCOMPARE(UnitFormat(Units::us()).rate(rate), "29.4 mpg");
        QCOMPARE(UnitFormat(Units::imperial()).volume(fuel), "4.4 gal");
        QCOMPARE(UnitFormat(Units::imperial()).rate(rate), "35.3 mpg");
        QCOMPARE(UnitFormat().rate(rate), "8.0 L/100 km");
    }
    void theRelativeSpreadOfARateIsTheSameInEveryUnit()
    {
        const Estimate<Consumption> rate{Consumption::fromLitresPer100Km(10),
                                         Consumption::fromLitresPer100Km(1)};
        QCOMPARE(UnitFormat().rate(rate), "10.0 ± 1.0 L/100 km");
        Units units;
        units.rate = Units::Rates::kmPerLitre;
        QCOMPARE(UnitFormat(units).rate(rate), "10.0 ± 1.0 km/L");
    }
    void shownTextIsReadBackAsTheSameQuantity()
    {
        for (const Units& units : {Units{}, Units::us(), Units::imperial()}) {
            const UnitFormat format(units);
            const auto volume = format.volumeFrom("41.5");
            QVERIFY(volume);
            QCOMPARE(format.typed(*volume), "41.5");
            const auto distance = format.distanceFrom("48210");
            QVERIFY(distance);
            QCOMPARE(format.typed(*distance), "48210");
            const auto price = format.pricePerLitreFrom("1.759");
            QVERIFY(price);
            QCOMPARE(format.typedPrice(*price), "1.759");
        }
    }
    void whatIsNotANumberOfZeroOrMoreIsNoQuantity()
    {
        for (const char* text : {"", ".", "-1", "nan", "inf", "41,5", "4x", "1e999"})
            QVERIFY2(!UnitFormat().volumeFrom(text), text);
    }
    void moneyHasTheCurrencyThatIsSet()
    {
        const UnitFormat bare;
        QCOMPARE(bare.money(42.857), "42.86");
        QCOMPARE(bare.priceUnit(), "per L");
        const UnitFormat set({}, QLocale("de"), "€");
        QCOMPARE(set.money(42.857), "42,86 €");
        QCOMPARE(UnitFormat(Units::us(), QLocale::c(), "$").priceUnit(), "$ per gal");
        ScreenSettings settings({});
        QVERIFY(settings.currency().isEmpty());
        settings.choose(ScreenSettings::Currency, 1);
        QCOMPARE(settings.format().money(1), settings.format().number(1, 2) + " €");
    }
    void aWrittenDistanceIsRoundedWhereItIsNoPromise()
    {
        QCOMPARE(UnitFormat().exactDistance(Distance::fromKm(41.46)), "41.5 km");
    }
};

UNDERMARK_TEST(UnitFormatTest)
#include "unit_format_test.moc"
