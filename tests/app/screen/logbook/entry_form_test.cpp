// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/entry_form.h"
#include "app/screen/logbook/logbook_view_model.h"
#include "app/screen/tank/tank_view_model.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>

using namespace undermark;

namespace {

void type(NumberForm& form, int field, const QString& text)
{
    form.select(field);
    for (const QChar key : text)
        form.press(key);
}

Proof lastProof(Car& car)
{
    return car.log()->proofs.back().value;
}

} // namespace

class EntryFormTest : public QObject {
    Q_OBJECT
private slots:
    void aTripIsToldWithItsKindOfDriving()
    {
        test::DemoCar car;
        EntryForm form(car);
        QSignalSpy stored(&form, &EntryForm::stored);
        form.startTrip();
        QCOMPARE(form.modes().first(), "Town"); // of one kind: no usual mix
        type(*form.form(), 0, "82.5");
        form.chooseMode(2);
        type(*form.form(), 1, "0"); // today
        type(*form.form(), 2, "6");
        form.save();
        QCOMPARE(stored.count(), 1);
        const Trip trip = car.log()->trips.back().value;
        QCOMPARE(trip.distance, Distance::fromKm(82.5));
        QCOMPARE(trip.mode, std::string(kMotorway));
        QVERIFY(trip.idle && trip.idle->count() == 6.0);
        QVERIFY(!trip.starts);
        QCOMPARE(trip.time, car.time());
    }
    void whatIsMissingIsNamedAndNothingIsStored()
    {
        test::DemoCar car;
        EntryForm form(car);
        const std::size_t trips = car.log()->trips.size(), proofs = car.log()->proofs.size();
        form.startTrip();
        form.save();
        QVERIFY(form.notices()[0].problem());
        QVERIFY(form.notices()[0].text.contains("How far"));
        form.startProof(ProofKind::pastZero);
        form.save();
        QVERIFY2(form.notices()[0].text.contains("past the zero mark"), qPrintable(form.notices()[0].text));
        form.startProof(ProofKind::drained);
        form.save();
        QVERIFY(form.notices()[0].problem());
        QCOMPARE(car.log()->trips.size(), trips);
        QCOMPARE(car.log()->proofs.size(), proofs);
    }
    // The same numbers through the command line's defaults: 0.5 km and 0.2 L.
    void everyKindOfProofIsStoredAsTheCommandLineDoes()
    {
        test::DemoCar car;
        EntryForm form(car);
        form.startProof(ProofKind::pastZero);
        type(*form.form(), 0, "27");
        form.chooseMode(1); // the usual mix is first
        type(*form.form(), 1, "3");
        form.save();
        QCOMPARE(lastProof(car).distance, (Estimate<Distance>{Distance::fromKm(27), Distance::fromKm(0.5)}));
        QCOMPARE(lastProof(car).mode, std::optional<std::string>(kTown));
        QCOMPARE(lastProof(car).time, car.time() - std::chrono::days(3));
        form.startProof(ProofKind::base);
        QVERIFY(form.modes().isEmpty());
        type(*form.form(), 0, "5");
        form.save();
        QVERIFY(lastProof(car).kind == ProofKind::base);
        QCOMPARE(lastProof(car).volume, (Estimate<Volume>{Volume::fromLitres(5), Volume::fromLitres(0.2)}));
        form.startProof(ProofKind::drained);
        type(*form.form(), 1, "1.4"); // left behind alone
        type(*form.form(), 2, "2.5");
        form.save();
        QVERIFY(!lastProof(car).volume);
        QCOMPARE(lastProof(car).leftBehind->mean, Volume::fromLitres(1.4));
        QCOMPARE(lastProof(car).signal, std::optional(Signal::of(2.5)));
    }
    void anotherKindAsksForOtherNumbers()
    {
        test::DemoCar car;
        EntryForm form(car);
        form.startProof(ProofKind::pastZero);
        type(*form.form(), 0, "27");
        form.chooseKind(int(ProofKind::base));
        QCOMPARE(form.form()->fields().size(), 2);
        QVERIFY(form.form()->fields()[0].text.isEmpty());
        QVERIFY(form.caution().contains("petrol vapour"));
    }
    void theReservesNextProofOpensItsOwnEntryAndChangesTheReserve()
    {
        test::DemoCar car;
        TankViewModel tank(car);
        QVERIFY(tank.nextProof().contains("measured base") || tank.nextProof().contains("left behind"));
        const bool base = tank.nextProof().contains("measured base");
        const QString before = tank.reserve();
        tank.tellNextProof();
        QVERIFY(tank.proving());
        QCOMPARE(tank.proof()->kind(), int(base ? ProofKind::base : ProofKind::drained));
        type(*tank.proof()->form(), base ? 0 : 1, base ? "6" : "1.1");
        tank.proof()->save();
        QVERIFY(!tank.proving());
        QVERIFY(tank.reserve() != before);
    }
    void theLogbookTakesTripsProofsAndForgottenFillsAndUndoesThem()
    {
        test::DemoCar car;
        LogbookViewModel logbook(car);
        const VehicleLog before = *car.log();
        logbook.add(1);
        QVERIFY(logbook.adding());
        type(*logbook.entry()->form(), 0, "40");
        logbook.entry()->save();
        QVERIFY(!logbook.adding());
        QCOMPARE(car.log()->trips.size(), before.trips.size() + 1);
        logbook.undo();
        QCOMPARE(car.log()->trips.size(), before.trips.size());
        logbook.add(2);
        type(*logbook.entry()->form(), 0, "20");
        logbook.close();
        QVERIFY(!logbook.adding());
        QCOMPARE(car.log()->proofs.size(), before.proofs.size());
    }
    void onTheLogbookAProofIsOfTheTankThatIsChosen()
    {
        test::DemoCar car;
        test::addAuxTank(car, true);
        LogbookViewModel logbook(car);
        logbook.add(1);
        QVERIFY(logbook.entry()->tanks().isEmpty()); // a trip is of no tank
        logbook.close();
        logbook.add(2);
        QCOMPARE(logbook.entry()->tanks()[0].options, QStringList({"The car's own", "aux"}));
        logbook.entry()->chooseTank(1);
        logbook.entry()->chooseKind(int(ProofKind::base));
        QCOMPARE(logbook.entry()->tanks()[0].current, 1);
        type(*logbook.entry()->form(), 0, "3");
        logbook.entry()->save();
        QCOMPARE(lastProof(car).tank, std::optional<std::string>("aux"));
        logbook.add(2);
        logbook.entry()->chooseTank(0);
        type(*logbook.entry()->form(), 0, "12");
        logbook.entry()->save();
        QVERIFY(!lastProof(car).tank);
    }
    void onTheTankPageAProofIsOfThePagesTank()
    {
        test::DemoCar car;
        test::addAuxTank(car, true);
        TankViewModel tank(car);
        tank.selectTank(1);
        tank.tellProof();
        QVERIFY(tank.proof()->tanks().isEmpty());
        type(*tank.proof()->form(), 0, "7");
        tank.proof()->save();
        QCOMPARE(lastProof(car).tank, std::optional<std::string>("aux"));
    }
    void aForgottenFillIsDatedAndNothingOfItIsGuessed()
    {
        test::DemoCar car;
        LogbookViewModel logbook(car);
        const std::size_t before = car.log()->fills.size();
        logbook.add(0);
        QVERIFY(logbook.correcting());
        NumberForm& form = *logbook.editor()->form();
        for (const QChar key : QString("12")) // the day is asked for first
            form.press(key);
        logbook.editor()->turn(0); // back to the litres
        for (const NumberField& field : form.fields())
            QVERIFY(field.text.isEmpty());
        type(form, 0, "30");
        logbook.editor()->save();
        QVERIFY(!logbook.correcting());
        QCOMPARE(car.log()->fills.size(), before + 1);
        bool found = false;
        const VehicleLog after = *car.log();
        for (const Entry<Fill>& fill : after.fills)
            found = found || (fill.value.volume == Volume::fromLitres(30) &&
                              fill.value.time == car.time() - std::chrono::days(12));
        QVERIFY(found);
        logbook.undo();
        QCOMPARE(car.log()->fills.size(), before);
    }
};

UNDERMARK_TEST(EntryFormTest)
#include "entry_form_test.moc"
