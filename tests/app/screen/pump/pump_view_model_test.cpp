// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/pump/pump_view_model.h"

#include "app/car/told.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>
#include <algorithm>
#include <cmath>

using namespace undermark;

namespace {

void type(PumpViewModel& pump, int field, const QString& text)
{
    pump.form()->select(field);
    for (const QChar key : text)
        pump.form()->press(key);
}

std::size_t fillCount(Car& car)
{
    return car.knowledge().value()->log.fills.size();
}

} // namespace

// What the demo car most likely takes on next: at 153907 km it was full, then came
// 61.3 + 214.9 km; its last price was 1.719 (app/car/demo_logbook.cpp).
class PumpViewModelTest : public QObject {
    Q_OBJECT
private slots:
    void guessesAreFilledInAndMarked()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        const QList<NumberField> fields = pump.form()->fields();
        QCOMPARE(fields.size(), 3);
        QCOMPARE(fields[0].text, UnitFormat().typed(car.likelyFill()->volume));
        QCOMPARE(fields[0].unit, "L");
        QCOMPARE(fields[0].hint, "guess");
        QCOMPARE(fields[1].text, "154183");
        QCOMPARE(fields[2].text, "1.719");
        QCOMPARE(fields[2].unit, "per L");
        QCOMPARE(pump.form()->padTitle(), "fuel put in, L");
    }
    void guessesAloneAreAskedAboutOnce()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        const double guessed = pump.form()->text(0).toDouble();
        QSignalSpy stored(&pump, &PumpViewModel::stored);
        pump.save();
        pump.save(); // the second tap of two is no answer
        QVERIFY(!pump.saved());
        QCOMPARE(pump.notices().size(), 1);
        QCOMPARE(pump.saveWord(), "Yes, save the guesses");
        QTest::qWait(750);
        pump.save();
        QCOMPARE(stored.count(), 1);
        QCOMPARE(fillCount(car), 14u);
        const Fill fill = test::lastFill(car);
        QCOMPARE(fill.volume, Volume::fromLitres(guessed));
        QCOMPARE(fill.odometer, Distance::fromKm(154183));
        QVERIFY(!fill.sinceLast);
        QCOMPARE(fill.pricePerLitre, 1.719);
        QCOMPARE(fill.extent, FillExtent::full);
        QCOMPARE(fill.time, car.time());
    }
    void theGuessesAreAskedAsTheNowPageAsks()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        Question question;
        pump.askAs([&question] { return question; });
        const double usual = pump.form()->text(0).toDouble();
        question.now.burnsMore = byWord(Fraction::fromPercent(30));
        pump.refresh();
        const double towing = pump.form()->text(0).toDouble();
        QVERIFY2(std::abs(towing / usual - 1.3) < 0.03, qPrintable(QString::number(towing / usual)));
        question = {};
        question.odometer = Distance::fromKm(154'007); // 100 km after the last fill
        pump.refresh();
        QCOMPARE(pump.form()->text(1), "154007");
        QVERIFY(pump.form()->text(0).toDouble() < usual / 2);
    }
    void aForgottenFillHasToBeDated()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        const std::size_t before = fillCount(car);
        pump.startForgotten();
        pump.turn(0); // to the litres
        type(pump, 0, "31");
        pump.save();
        QVERIFY(!pump.saved());
        QCOMPARE(pump.notices().size(), 1);
        QVERIFY2(pump.notices()[0].text.contains("day of the fill"), qPrintable(pump.notices()[0].text));
        QCOMPARE(fillCount(car), before);
        pump.turn(0); // back to the day, the last of what is seldom told
        type(pump, int(pump.form()->fields().size()) - 1, "12");
        pump.save();
        QVERIFY(pump.saved());
        const auto dated = [&](const Entry<Fill>& fill) {
            return fill.value.volume == Volume::fromLitres(31)
                   && fill.value.time == car.time() - std::chrono::days(12);
        };
        QVERIFY(std::ranges::any_of(car.log()->fills, dated));
        QCOMPARE(fillCount(car), before + 1);
    }
    void theTripMeterCanStandInForTheOdometer()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        pump.turn(1);
        QCOMPARE(pump.form()->activeField(), 1);
        QCOMPARE(pump.form()->fields()[1].name, "trip meter");
        type(pump, 1, "276");
        pump.save();
        QVERIFY(!test::lastFill(car).odometer);
        QCOMPARE(test::lastFill(car).sinceLast, Distance::fromKm(276));
    }
    void whatWasPaidInAllIsAPricePerLitre()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        type(pump, 0, "20");
        pump.turn(2);
        QCOMPARE(pump.form()->fields()[2].name, "paid in all");
        type(pump, 2, "36");
        pump.save();
        QCOMPARE(test::lastFill(car).pricePerLitre, 1.8);
    }
    void cansReadingAndDayAreToldBehindMore()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        type(pump, 0, "30");
        pump.turn(2);
        type(pump, 2, "54");
        pump.turn(0);
        QCOMPARE(pump.form()->fields().size(), 3);
        type(pump, 0, "10");  // into cans
        type(pump, 1, "112"); // the gauge before
        type(pump, 2, "1");   // a day ago
        pump.turn(0);
        QCOMPARE(pump.form()->fields()[0].text, "30");
        pump.save();
        const Fill fill = test::lastFill(car);
        QCOMPARE(fill.volume, Volume::fromLitres(20)); // what is in the tank
        QCOMPARE(fill.pricePerLitre, 1.8);             // of all that was paid
        QCOMPARE(fill.signalBefore, Signal::of(112));
        QCOMPARE(fill.time, car.time() - std::chrono::days(1));
    }
    void aFillOfCansAloneIsRefused()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        type(pump, 0, "10");
        pump.turn(0);
        type(pump, 0, "10");
        pump.save();
        QVERIFY(!pump.saved());
        QVERIFY(pump.notices()[0].problem());
    }
    void aCorrectionKeepsItsDayAndReading()
    {
        test::DemoCar car;
        const Entry<Fill> last = car.knowledge().value()->log.fills.back();
        PumpViewModel pump(car);
        pump.edit(last);
        while (!pump.form()->text(0).isEmpty())
            pump.form()->erase();
        type(pump, 0, "22");
        pump.save();
        Fill expected = last.value;
        expected.volume = Volume::fromLitres(22);
        QCOMPARE(test::lastFill(car), expected);
    }
    void theExtentIsStoredAsChosen()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        pump.selectExtent(1);
        pump.selectExtent(7);
        pump.save();
        QCOMPARE(test::lastFill(car).extent, FillExtent::partial);
    }
    void emptyDistanceAndPriceAreUnknownNotZero()
    {
        test::EmptyCar car; // no fill to guess them from
        Vehicle vehicle;
        vehicle.name = "Ibis";
        vehicle.capacity = Volume::fromLitres(60);
        QVERIFY(car.setUp(vehicle));
        PumpViewModel pump(car);
        QCOMPARE(pump.form()->text(0), "60");
        type(pump, 0, "60");
        pump.save();
        QCOMPARE(test::lastFill(car).volume, Volume::fromLitres(60));
        QVERIFY(!test::lastFill(car).odometer);
        QVERIFY(!test::lastFill(car).sinceLast);
        QVERIFY(!test::lastFill(car).pricePerLitre);
    }
    void whatIsNoNumberIsRefusedAndNamed()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        type(pump, 1, ".");
        pump.save();
        QVERIFY(!pump.saved());
        QCOMPARE(fillCount(car), 13u);
        QCOMPARE(pump.notices().size(), 1);
        QVERIFY(pump.notices()[0].problem());
        QVERIFY(pump.notices()[0].text.contains("odometer"));
        type(pump, 1, "5");
        QVERIFY(pump.notices().isEmpty());
    }
    void aFillWithoutLitresIsRefused()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        pump.form()->erase();
        pump.save();
        QVERIFY(!pump.saved());
        type(pump, 0, "0");
        pump.save();
        QVERIFY(!pump.saved());
        QCOMPARE(fillCount(car), 13u);
    }
    void theLessonIsThereAtOnce()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        const Knowledge before = car.knowledge().value();
        type(pump, 0, "24"); // more than expected, not oddly so
        pump.save();
        const Knowledge after = car.knowledge().value();
        QVERIFY(pump.saved());
        QCOMPARE(pump.savedTitle(), "24 L saved");
        const auto rate = [](const CarKnowledge& known) {
            return UnitFormat().rate(known.consumption.model.forecast().rate);
        };
        const auto reserve = [](const CarKnowledge& known) {
            return UnitFormat().volume(known.reserve.reserve());
        };
        QCOMPARE(pump.lesson().size(), 2);
        QCOMPARE(pump.lesson()[0], (LessonRow{"rate", rate(*before), rate(*after)}));
        QVERIFY(rate(*before) != rate(*after));
        QCOMPARE(pump.lesson()[1], (LessonRow{"hidden reserve", reserve(*before), reserve(*after)}));
    }
    void whatIsNotComparedIsSaidToBeUnknown()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        pump.edit(car.knowledge().value()->log.fills.back());
        pump.save(); // a correction, not a new fill
        QCOMPARE(fillCount(car), 13u);
        QCOMPARE(pump.lesson()[0].before, "not known yet");
    }
    void aSuspiciousFillIsStoredAndSaid()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        type(pump, 0, "44");
        pump.save();
        QVERIFY(pump.saved());
        QCOMPARE(test::lastFill(car).volume, Volume::fromLitres(44));
        QVERIFY(pump.notices()[0].caution());
        QCOMPARE(car.knowledge().value()->consumption.flags.size(), 1u);
        QCOMPARE(pump.notices()[0].text,
                 QString::fromStdString(english(car.knowledge().value()->consumption.flags[0].text)));
    }
    void undoTakesTheFillBackAndKeepsWhatWasTyped()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        type(pump, 0, "38.2");
        pump.save();
        QCOMPARE(fillCount(car), 14u);
        QSignalSpy stored(&pump, &PumpViewModel::stored);
        pump.undo();
        QCOMPARE(fillCount(car), 13u);
        QVERIFY(!pump.saved());
        QCOMPARE(pump.form()->fields()[0].text, "38.2");
        QCOMPARE(stored.count(), 1);
        pump.undo();
        QCOMPARE(fillCount(car), 13u);
    }
    void aFillIsSavedOnceHoweverOftenSaveIsPressed()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        type(pump, 0, "21");
        pump.save();
        pump.save();
        pump.form()->press("4");
        QCOMPARE(fillCount(car), 14u);
        QCOMPARE(pump.form()->fields()[0].text, "21");
    }
    void anErrorOfTheLogbookIsShownAndNothingIsLost()
    {
        const test::TestFolder folder;
        { (void)test::demoCar(folder.path); }
        Car car = test::reopenedCar(folder.path, OpenMode::readOnly);
        PumpViewModel pump(car);
        type(pump, 0, "38.2");
        pump.save();
        QVERIFY(!pump.saved());
        QCOMPARE(pump.notices().size(), 1);
        QVERIFY(pump.notices()[0].problem());
        QCOMPARE(pump.form()->fields()[0].text, "38.2");
    }
    void ofOneTankNothingIsAsked()
    {
        test::DemoCar car;
        PumpViewModel pump(car);
        QVERIFY(pump.tanks().isEmpty());
        pump.selectTank(0);
        type(pump, 0, "21");
        pump.save();
        QVERIFY(!test::lastFill(car).tank);
        QCOMPARE(pump.savedTitle(), "21 L saved");
    }
    // As fill add --tank writes it, and with its own litres as the guess.
    void ofSeveralTanksTheChosenOneIsFilled()
    {
        test::DemoCar car;
        test::addAuxTank(car, false);
        PumpViewModel pump(car);
        QCOMPARE(pump.tanks().size(), 1);
        QCOMPARE(pump.tanks()[0].options, QStringList({"The car's own", "aux"}));
        QCOMPARE(pump.tanks()[0].current, 0);
        QCOMPARE(pump.form()->fields()[0].text, UnitFormat().typed(car.likelyFill()->volume));
        pump.selectTank(1);
        QCOMPARE(pump.form()->fields()[0].text, "30"); // never filled: all that it takes
        type(pump, 0, "29");
        pump.save();
        QCOMPARE(test::lastFill(car).tank, std::optional<std::string>("aux"));
        QCOMPARE(pump.savedTitle(), "29 L saved, into aux");
        pump.startAgain();
        QCOMPARE(pump.tanks()[0].current, 1); // the one last chosen
    }
    void theGuessIsNoMoreThanTheTankTakes()
    {
        test::DemoCar car;
        test::addAuxTank(car, true);
        test::drive(car, 700); // more than either tank
        PumpViewModel pump(car);
        const double own = pump.form()->text(0).toDouble();
        const auto known = car.knowledge();
        QVERIFY(own <= (*known)->reserve.usableCapacity().mean.litres() + 0.01);
        pump.selectTank(1);
        const double aux = pump.form()->text(0).toDouble();
        QVERIFY2(aux > 25 && aux < 32, qPrintable(QString::number(aux)));
    }
    void whatWasTypedStaysWhenTheTankIsChosenAfterwards()
    {
        test::DemoCar car;
        test::addAuxTank(car, true);
        PumpViewModel pump(car);
        type(pump, 0, "17.5");
        pump.selectExtent(int(FillExtent::partial));
        pump.selectTank(1);
        QCOMPARE(pump.form()->text(0), "17.5");
        pump.save();
        const Fill fill = test::lastFill(car);
        QCOMPARE(fill.volume, Volume::fromLitres(17.5));
        QCOMPARE(fill.extent, FillExtent::partial);
        QCOMPARE(fill.tank, std::optional<std::string>("aux"));
    }
    void theTankOfAFillIsCorrectedLikeItsLitres()
    {
        test::DemoCar car;
        test::addAuxTank(car, true);
        PumpViewModel pump(car);
        pump.edit(car.knowledge().value()->log.fills.back());
        QCOMPARE(pump.tanks()[0].current, 1);
        pump.selectTank(0);
        pump.save();
        QVERIFY(pump.saved());
        QVERIFY(!car.knowledge().value()->log.fills.back().value.tank);
    }
    void moreThanThatTankTakesIsSaid()
    {
        test::DemoCar car;
        test::addAuxTank(car, true);
        PumpViewModel pump(car);
        pump.selectTank(1);
        type(pump, 0, "41"); // the own tank would take it
        pump.save();
        QVERIFY(pump.saved());
        QVERIFY2(!pump.notices().isEmpty() && pump.notices()[0].text.contains("takes 30"),
                 qPrintable(pump.notices().isEmpty() ? QString() : pump.notices()[0].text));
    }
    void gallonsAndMilesAreStoredAsLitresAndKm()
    {
        test::DemoCar car;
        PumpViewModel pump(car, Units::us());
        QCOMPARE(pump.form()->padTitle(), "fuel put in, gal");
        type(pump, 0, "10");
        type(pump, 1, "1000");
        pump.save();
        const Fill fill = test::lastFill(car);
        QVERIFY(std::abs(fill.volume.litres() - 37.85411784) < 1e-9); // NIST HB 44
        QVERIFY(std::abs(fill.odometer->km() - 1609.344) < 1e-9);     // NIST HB 44
        // The untouched price guess is what was guessed, per litre, but for the
        // rounding to what was shown.
        QVERIFY(std::abs(*fill.pricePerLitre - 1.719) < 0.0005);
    }
};

UNDERMARK_TEST(PumpViewModelTest)
#include "pump_view_model_test.moc"
