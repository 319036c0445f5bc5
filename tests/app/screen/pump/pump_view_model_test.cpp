// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/pump/pump_view_model.h"
#include "tests/support/fake_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>

using namespace undermark;

namespace {

void type(PumpViewModel& pump, int field, const QString& text)
{
    pump.form()->select(field);
    for (const QChar key : text)
        pump.form()->press(key);
}

} // namespace

class PumpViewModelTest : public QObject {
    Q_OBJECT
private slots:
    void guessesAreFilledInAndMarked()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        const QList<NumberField> fields = pump.form()->fields();
        QCOMPARE(fields.size(), 3);
        QCOMPARE(fields[0].text, "41.5");
        QCOMPARE(fields[0].unit, "L");
        QCOMPARE(fields[0].hint, "guess");
        QCOMPARE(fields[1].text, "48210");
        QCOMPARE(fields[2].text, "1.759");
        QCOMPARE(fields[2].unit, "per L");
        QCOMPARE(pump.form()->padTitle(), "fuel put in, L");
    }
    void rightGuessesAreSavedWithOneTouch()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        QSignalSpy stored(&pump, &PumpViewModel::stored);
        pump.save();
        QCOMPARE(stored.count(), 1);
        QCOMPARE(car.stored.size(), 1u);
        QCOMPARE(car.stored[0].litres, Volume::fromLitres(41.5));
        QCOMPARE(car.stored[0].odometer, Distance::fromKm(48210));
        QVERIFY(!car.stored[0].sinceLast);
        QCOMPARE(car.stored[0].pricePerLitre, 1.759);
        QCOMPARE(car.stored[0].extent, FillExtent::full);
    }
    void theTripMeterCanStandInForTheOdometer()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        pump.switchMeter();
        QCOMPARE(pump.form()->activeField(), 1);
        QCOMPARE(pump.form()->fields()[1].name, "trip meter");
        pump.save();
        QVERIFY(!car.stored[0].odometer);
        QCOMPARE(car.stored[0].sinceLast, Distance::fromKm(312));
    }
    void theExtentIsStoredAsChosen()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        pump.selectExtent(1);
        pump.selectExtent(7);
        pump.save();
        QCOMPARE(car.stored[0].extent, FillExtent::partial);
    }
    void emptyDistanceAndPriceAreUnknownNotZero()
    {
        test::FakeCar car;
        car.guess.odometer.reset();
        car.guess.sinceLast.reset();
        car.guess.pricePerLitre.reset();
        PumpViewModel pump(car);
        pump.save();
        QVERIFY(!car.stored[0].odometer);
        QVERIFY(!car.stored[0].sinceLast);
        QVERIFY(!car.stored[0].pricePerLitre);
    }
    void whatIsNoNumberIsRefusedAndNamed()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        type(pump, 1, ".");
        pump.save();
        QVERIFY(!pump.saved());
        QVERIFY(car.stored.empty());
        QCOMPARE(pump.notices().size(), 1);
        QVERIFY(pump.notices()[0].problem());
        QVERIFY(pump.notices()[0].text.contains("odometer"));
        type(pump, 1, "5");
        QVERIFY(pump.notices().isEmpty());
    }
    void aFillWithoutLitresIsRefused()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        pump.form()->erase();
        pump.save();
        QVERIFY(!pump.saved());
        type(pump, 0, "0");
        pump.save();
        QVERIFY(!pump.saved());
        QVERIFY(car.stored.empty());
    }
    void theLessonIsThereAtOnce()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        pump.save();
        QVERIFY(pump.saved());
        QCOMPARE(pump.savedTitle(), "41.5 L saved");
        QCOMPARE(pump.lesson().size(), 2);
        QCOMPARE(pump.lesson()[0], (LessonRow{"rate", "8.1 ± 0.4 L/100 km", "8.3 ± 0.4 L/100 km"}));
        QCOMPARE(pump.lesson()[1], (LessonRow{"hidden reserve", "5.9 ± 0.7 L", "5.9 ± 0.7 L"}));
    }
    void whatWasNotKnownBeforeIsSaid()
    {
        test::FakeCar car;
        car.lesson.rate.before.reset();
        PumpViewModel pump(car);
        pump.save();
        QCOMPARE(pump.lesson()[0].before, "not known yet");
    }
    void aSuspiciousFillIsStoredAndSaid()
    {
        test::FakeCar car;
        car.lesson.flags = {
            {Notice::Severity::warning, Sentence::just("more than the tank holds")}};
        PumpViewModel pump(car);
        pump.save();
        QVERIFY(pump.saved());
        QVERIFY(pump.notices()[0].caution());
        QCOMPARE(pump.notices()[0].text, "more than the tank holds");
    }
    void undoTakesTheFillBackAndKeepsWhatWasTyped()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        type(pump, 0, "38.2");
        pump.save();
        QSignalSpy stored(&pump, &PumpViewModel::stored);
        pump.undo();
        QCOMPARE(car.undone, std::vector<std::string>{"fill-1"});
        QVERIFY(!pump.saved());
        QCOMPARE(pump.form()->fields()[0].text, "38.2");
        QCOMPARE(stored.count(), 1);
        pump.undo();
        QCOMPARE(car.undone.size(), 1u);
    }
    void aFillIsSavedOnceHoweverOftenSaveIsPressed()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        pump.save();
        pump.save();
        pump.form()->press("4");
        QCOMPARE(car.stored.size(), 1u);
        QCOMPARE(pump.form()->fields()[0].text, "41.5");
    }
    void anErrorOfTheLogbookIsShownAndNothingIsLost()
    {
        test::FakeCar car;
        PumpViewModel pump(car);
        type(pump, 0, "38.2");
        car.error = Error{};
        car.error->detail = Sentence::just("the disk is full");
        pump.save();
        QVERIFY(!pump.saved());
        QVERIFY(pump.notices()[0].text.contains("the disk is full"));
        QCOMPARE(pump.form()->fields()[0].text, "38.2");
    }
    void gallonsAndMilesAreStoredAsLitresAndKm()
    {
        test::FakeCar car;
        PumpViewModel pump(car, Units::us());
        QCOMPARE(pump.form()->padTitle(), "fuel put in, gal");
        type(pump, 0, "10");
        type(pump, 1, "1000");
        pump.save();
        QVERIFY(std::abs(car.stored[0].litres.litres() - 37.85411784) < 1e-9); // NIST HB 44
        QVERIFY(std::abs(car.stored[0].odometer->km() - 1609.344) < 1e-9);     // NIST HB 44
        // The untouched price guess is what was guessed, per litre, but for the
        // rounding to what was shown.
        QVERIFY(std::abs(*car.stored[0].pricePerLitre - 1.759) < 0.0005);
    }
};

UNDERMARK_TEST(PumpViewModelTest)
#include "pump_view_model_test.moc"
