// SPDX-License-Identifier: GPL-3.0-or-later
//
// When one leaves and what is carried, told on the Ahead page.
#include "app/screen/ahead/plan_view_model.h"
#include "tests/support/settled.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

enum Field { Leaves, Pace, Cans, CrewCans, CanSize, Load };

void type(PlanDay& day, Field field, const QString& keys)
{
    day.form()->select(field);
    while (!day.form()->text(field).isEmpty())
        day.form()->erase();
    for (const QChar key : keys)
        QVERIFY(day.form()->press(key));
}

} // namespace

class PlanDayTest : public QObject {
    Q_OBJECT
private slots:
    void nothingToldChangesNothing()
    {
        PlanDay day;
        PlanRequest request;
        request.rates = RateModel::single({Consumption::fromLitresPer100Km(8), Consumption()});
        day.addTo(request, Instant());
        QVERIFY(!request.departure && !request.speed && request.cans == 0 && request.crewCans == 0);
        QCOMPARE(request.rates.mean[0], Consumption::fromLitresPer100Km(8));
        QCOMPARE(day.line(), "no time of departure, no cans, no load");
    }

    void whatIsToldIsAsked()
    {
        PlanDay day;
        QSignalSpy told(&day, &PlanDay::told);
        type(day, Leaves, "0830");
        type(day, Pace, "60");
        type(day, Cans, "2");
        type(day, CrewCans, "4");
        type(day, CanSize, "10");
        type(day, Load, "0.5");
        QVERIFY(day.take());
        QCOMPARE(told.size(), 1);
        QVERIFY(day.take()); // the same again
        QCOMPARE(told.size(), 1);
        PlanRequest request;
        request.rates = RateModel::single({Consumption::fromLitresPer100Km(8), Consumption()});
        const Instant now = std::chrono::sys_days(std::chrono::year(2026) / 12 / 5) + std::chrono::hours(7);
        day.addTo(request, now);
        QVERIFY(std::abs(request.departure->count() - 510) < 1e-9);
        QVERIFY(std::abs(request.speed->kmPerHour() - 60) < 1e-9);
        QCOMPARE(*request.departureDay, std::chrono::sys_days(std::chrono::year(2026) / 12 / 5));
        QCOMPARE(request.cans, 2);
        QCOMPARE(request.crewCans, 4);
        QCOMPARE(request.canVolume, Volume::fromLitres(10));
        QVERIFY(std::abs(request.rates.mean[0].litresPer100Km() - 8.5) < 1e-9);
        QCOMPARE(day.line(), QString::fromUtf8("leaves 08:30, 60 km/h · own cans: 2 · cans of the crew: 4 · with a load"));
    }

    void whatCannotBeIsSaidAndNotTaken_data()
    {
        QTest::addColumn<int>("field");
        QTest::addColumn<QString>("keys");
        QTest::addColumn<QString>("words");
        QTest::newRow("no time of day") << int(Leaves) << "2561" << "no time of day";
        QTest::newRow("a time without a speed") << int(Leaves) << "0800" << "go together";
        QTest::newRow("a speed without a time") << int(Pace) << "60" << "go together";
        QTest::newRow("cans of no size") << int(Cans) << "2" << "in each can";
        QTest::newRow("half a can") << int(CrewCans) << "1.5" << "crew";
        QTest::newRow("too many") << int(Cans) << "400" << "own cans";
    }
    void whatCannotBeIsSaidAndNotTaken()
    {
        QFETCH(int, field);
        QFETCH(QString, keys);
        QFETCH(QString, words);
        PlanDay day;
        QSignalSpy told(&day, &PlanDay::told);
        type(day, Field(field), keys);
        QVERIFY(!day.take());
        QVERIFY(told.isEmpty());
        QCOMPARE(day.notices().size(), 1);
        QVERIFY2(day.notices()[0].text.contains(words), qPrintable(day.notices()[0].text));
    }

    // Miles and gallons say the same day.
    void otherUnitsAreTheSameDay()
    {
        PlanDay day;
        UnitFormat us{Units::us()};
        day.setFormat(us);
        type(day, Leaves, "9.05");
        type(day, Pace, "40");
        type(day, Load, "1");
        QVERIFY(day.take());
        PlanRequest request;
        request.rates = RateModel::single({Consumption::fromLitresPer100Km(8), Consumption()});
        day.addTo(request, Instant());
        QVERIFY(std::abs(request.departure->count() - 545) < 1e-9);
        QVERIFY(std::abs(request.speed->kmPerHour() - 40 * 1.609344) < 1e-9);
        // A US gallon (231 cubic inches) on 100 miles: 3.785411784 L on 160.9344 km.
        QVERIFY(std::abs(request.rates.mean[0].litresPer100Km() - 8 - 3.785411784 / 1.609344) < 1e-9);
        day.setFormat({});
        QVERIFY(day.take());
        PlanRequest again;
        again.rates = RateModel::single({Consumption::fromLitresPer100Km(8), Consumption()});
        day.addTo(again, Instant());
        QVERIFY(std::abs(again.rates.mean[0].litresPer100Km() - request.rates.mean[0].litresPer100Km()) < 1e-9);
    }

    // The crew waits until ten: who leaves late finds nobody.
    void thePlanKnowsTheDay()
    {
        test::DemoCar car;
        PlanViewModel plan{car, {}, QString::fromStdString(car.ownFolder.path.string())};
        Route route;
        route.points.resize(3);
        const double at[] = {0, 150, 520};
        for (std::size_t i = 0; i < 3; ++i)
            route.points[i].at = Distance::fromKm(at[i]);
        route.points[1].name = "Ford";
        route.points[1].fuel = FuelSource::crew;
        route.points[1].closes = Minutes(10 * 60);
        plan.setRoute(route, "Rally");
        test::settled(plan);
        QVERIFY(!plan.answer()->feasible());
        PlanDay& day = *plan.day();
        type(day, Leaves, "0730");
        type(day, Pace, "75");
        type(day, CrewCans, "4");
        type(day, CanSize, "10");
        QVERIFY(day.take());
        test::settled(plan);
        QVERIFY2(plan.answer()->feasible(), qPrintable(plan.answer()->summary()));
        QVERIFY(plan.answer()->stops()[1].detail.contains("of the crew"));
        type(day, Leaves, "0900");
        QVERIFY(day.take());
        test::settled(plan);
        QVERIFY(!plan.answer()->feasible());
        // On the way the clock and the cans are those that the plan leaves there.
        type(day, Leaves, "0730");
        QVERIFY(day.take());
        test::settled(plan);
        const int poured = plan.answer()->planned()->plan.stops[0].cans;
        QVERIFY(poured > 0);
        plan.here()->form()->setText(0, "225");
        plan.here()->selectFuel(PlanHere::OfPlan);
        plan.here()->plan();
        test::settled(plan);
        const PlanRequest& left = plan.answer()->planned()->request;
        QVERIFY(std::abs(left.departure->count() - (7.5 * 60 + 180 + plan.answer()->planned()->plan.stopTime.count())) < 15);
        QCOMPARE(left.crewCans, 4 - poured);
    }
};

UNDERMARK_TEST(PlanDayTest)
#include "plan_day_test.moc"
