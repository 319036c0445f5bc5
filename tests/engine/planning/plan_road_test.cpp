// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a plan promises, driven on the road by chance (tests/support/road_driver.h): the counts
// of drives against what was told and what was allowed, with their standard error.
#include "engine/planning/cures.h"
#include "engine/planning/plan.h"
#include "tests/support/road_driver.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

constexpr int kDrives = 200'000;
constexpr double kErrors = 4.0; // standard, that chance is given

RoutePoint place(double km, FuelSource fuel = FuelSource::none, const char* mode = "road")
{
    RoutePoint point;
    point.at = Distance::fromKm(km);
    point.name = "place";
    point.fuel = fuel;
    point.mode = mode;
    return point;
}

// One rate for every road, L/100 km.
PlanRequest car(double capacity, Estimate<Volume> start, double rate, double rateSd, double fullSd)
{
    PlanRequest request;
    request.tank.capacity = Volume::fromLitres(capacity);
    request.tank.start = start;
    request.tank.fullSd = Volume::fromLitres(fullSd);
    request.rates = RateModel::single({Consumption::fromLitresPer100Km(rate),
                                       Consumption::fromLitresPer100Km(rateSd)});
    request.aim = Aim::stops;
    return request;
}

Estimate<Volume> litres(double mean, double sd)
{
    return {Volume::fromLitres(mean), Volume::fromLitres(sd)};
}

// A stage burns five times what a road does; the car's error is common, each mode has its own.
RateModel stageAndRoad()
{
    RateModel rates;
    rates.modes = {"stage", "road"};
    rates.mean = {Consumption::fromLitresPer100Km(40), Consumption::fromLitresPer100Km(8)};
    const double stage = 0.030, road = 0.0048, common = 0.6; // L/km
    rates.covariance = {stage * stage, common * stage * road, common * stage * road, road * road};
    rates.legNoiseSd = 0.03;
    return rates;
}

QString counted(const char* what, const test::Share& share, double told)
{
    return QString("%1: driven %2 +- %3, told %4").arg(what).arg(share.of).arg(share.error).arg(told);
}

} // namespace

#define DRIVEN_AS_TOLD(share, told) \
    QVERIFY2(std::fabs((share).of - (told)) < kErrors * (share).error, \
             qPrintable(counted("differs", share, told)))
#define DRIVEN_WITHIN(share, allowed) \
    QVERIFY2((share).of < (allowed) + kErrors * (share).error, \
             qPrintable(counted("too often", share, allowed)))

class PlanRoadTest : public QObject {
    Q_OBJECT

private slots:
    // 40 km of stage, then 200 km of road: by the gap's mean rate one could turn at 134 km.
    void theWayBackBurnsWhatTheWayOutDid_data()
    {
        QTest::addColumn<double>("confidence");
        QTest::addColumn<bool>("stageFirst");
        for (const double confidence : {0.99, 0.9, 0.5}) {
            QTest::addRow("stage first, %g", confidence) << confidence << true;
            QTest::addRow("stage last, %g", confidence) << confidence << false;
        }
    }

    void theWayBackBurnsWhatTheWayOutDid()
    {
        QFETCH(double, confidence);
        QFETCH(bool, stageFirst);
        PlanRequest request = car(60, litres(40, 0), 8, 0, 0.3);
        request.rates = stageAndRoad();
        request.confidence = Probability::of(confidence);
        request.route.points = stageFirst
            ? std::vector{place(0, FuelSource::none, "stage"), place(40), place(240)}
            : std::vector{place(0), place(200, FuelSource::none, "stage"), place(230)};
        const auto best = plan(request);
        QVERIFY(best && best->feasible && best->gaps.size() == 1);
        const Gap& gap = best->gaps.front();
        QVERIFY(gap.noReturn && !gap.oneWay);
        test::RoadDriver road(request, *best);
        DRIVEN_AS_TOLD(road.notBack(gap, *gap.noReturn, 0, kDrives), 1 - confidence);
        if (stageFirst) // a stage of 16 L out and 16 L back leaves some km of road
            QVERIFY(gap.noReturn->km() > 40 && gap.noReturn->km() < 100);
    }

    void nobodyTurnsBackOnAStageThatIsTimed()
    {
        PlanRequest request = car(60, litres(55, 0.3), 8, 0.2, 0.3);
        request.route.points = {place(0), place(50), place(80), place(100)};
        request.route.points[1].timed = true;
        const auto best = plan(request);
        QVERIFY(best && best->gaps.size() == 1);
        QVERIFY(best->gaps[0].oneWay);
        QCOMPARE(*best->gaps[0].noReturn, Distance::fromKm(50));
        request.tank.start = litres(7, 0.1); // now the fuel says so before
        request.route.points[2].fuel = FuelSource::pump;
        const auto less = plan(request);
        QVERIFY(less && less->feasible);
        QVERIFY(less->gaps[0].noReturn && !less->gaps[0].oneWay);
        DRIVEN_AS_TOLD(test::RoadDriver(request, *less)
                           .notBack(less->gaps[0], *less->gaps[0].noReturn, 0, kDrives), 0.01);
    }

    void theDetourIsPartOfTheRisk_data()
    {
        QTest::addColumn<double>("trip");
        QTest::addColumn<double>("start");
        QTest::newRow("0.999 of the whole way") << 0.999 << 13.8;
        QTest::newRow("0.99 of the whole way") << 0.99 << 12.96;
        QTest::newRow("0.99 of each arrival") << 0.0 << 12.96;
    }

    // A pump 30 km off the way: told 1e-6 once, driven 0.0084.
    void theDetourIsPartOfTheRisk()
    {
        QFETCH(double, trip);
        QFETCH(double, start);
        PlanRequest request = car(40, litres(start, 1), 8, 0.3, 0.5);
        request.route.points = {place(0), place(100, FuelSource::pump), place(200)};
        request.route.points[1].detour = Distance::fromKm(60);
        if (trip > 0)
            request.tripConfidence = Probability::of(trip);
        const auto best = plan(request);
        QVERIFY(best && best->feasible && best->stops.size() == 1);
        QVERIFY(best->dryRisk > 1e-4);
        const test::Share dry = test::RoadDriver(request, *best).below(0, kDrives);
        DRIVEN_AS_TOLD(dry, best->dryRisk);
        DRIVEN_WITHIN(dry, trip > 0 ? 1 - trip : 0.01);
    }

    // Several partial fills off the way in one run: each of their detours is in the spread.
    void detoursOfPartialFillsAddUp()
    {
        PlanRequest request = car(40, litres(13.5, 1), 8, 0.8, 0.5);
        request.aim = Aim::cost;
        request.route.points = {place(0), place(90, FuelSource::pump), place(180, FuelSource::pump),
                                place(270, FuelSource::pump), place(360)};
        for (std::size_t i = 1; i < 4; ++i) {
            RoutePoint& pump = request.route.points[i];
            pump.detour = Distance::fromKm(50);
            pump.pricePerLitre = 2.0 - 0.1 * double(i);
            pump.mostPurchase = Volume::fromLitres(14);
        }
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        QVERIFY(std::ranges::count(best->stops, false, &PlannedStop::toFull) >= 2);
        const test::Share dry = test::RoadDriver(request, *best).below(0, kDrives);
        DRIVEN_AS_TOLD(dry, best->dryRisk);
        for (const Passage& passage : best->passages)
            QVERIFY(passage.belowFloor <= 0.01 + 1e-9);
    }

    // With nothing aboard nobody gets to a pump that is off the way, not even at the start.
    void thePumpAtTheStartHasToBeReached()
    {
        PlanRequest request = car(40, litres(0, 0), 8, 0, 0);
        request.route.points = {place(0, FuelSource::pump), place(100)};
        request.route.points[0].detour = Distance::fromKm(10);
        QVERIFY(!plan(request)->feasible);
        request.tank.start = litres(0.4, 0);
        QVERIFY(plan(request)->feasible);
        request.tank.start = litres(0.9, 0.2);
        const auto best = plan(request);
        QVERIFY(best->feasible && best->dryRisk > 1e-3);
        DRIVEN_AS_TOLD(test::RoadDriver(request, *best).below(0, kDrives), best->dryRisk);
    }

    // 40 L of which the click may come half a litre early or late, and 39 L of road: counted
    // litres were told 1 % and driven 6 %.
    void anEarlyClickIsAnEventByChance()
    {
        PlanRequest request = car(40, litres(20, 0), 10, 0.1, 0.5);
        request.route.points = {place(0, FuelSource::pump), place(390)};
        QVERIFY(!plan(request)->feasible);
        for (const double km : {384.0, 380.0, 376.0, 370.0}) {
            request.route.points[1].at = Distance::fromKm(km);
            const auto best = plan(request);
            QVERIFY(best && best->feasible);
            const test::Share dry = test::RoadDriver(request, *best).below(0, kDrives);
            DRIVEN_AS_TOLD(dry, best->dryRisk);
            DRIVEN_WITHIN(dry, 0.01);
        }
    }

    // With exactly what is needed so as to go past a pump, as sure as wished to the next fuel.
    void whoGoesPastWithThatMuchIsAsSureAsWished_data()
    {
        QTest::addColumn<double>("confidence");
        QTest::addColumn<double>("detour");
        QTest::newRow("99 %") << 0.99 << 0.0;
        QTest::newRow("90 %") << 0.9 << 0.0;
        QTest::newRow("99 %, the next pump is off the way") << 0.99 << 30.0;
    }

    void whoGoesPastWithThatMuchIsAsSureAsWished()
    {
        QFETCH(double, confidence);
        QFETCH(double, detour);
        PlanRequest request = car(60, litres(50, 1), 8, 0, 0.3);
        request.rates = stageAndRoad();
        request.confidence = Probability::of(confidence);
        request.route.points = {place(0, FuelSource::none, "stage"), place(20, FuelSource::pump),
                                place(80), place(150, FuelSource::pump), place(400)};
        request.route.points[3].detour = Distance::fromKm(detour);
        const auto best = plan(request);
        QVERIFY(best && best->feasible && best->passages[1].goPast);
        QVERIFY(!best->passages[2].goPast);
        QCOMPARE(best->passages[1].goPast->next, std::size_t(3));
        // Driven to the next pump, and from the start so that there is just that at the first.
        PlanRequest past = request;
        past.tank.start.mean = best->passages[1].goPast->with + best->passages[1].used;
        past.route.points[1].fuel = FuelSource::none;
        const auto through = plan(past);
        QVERIFY(through && through->feasible && through->stops.front().point == 3);
        past.route.points.resize(4);
        past.route.points.push_back(past.route.points.back()); // the stop, and nothing behind it
        Plan toPump;
        toPump.stops = {through->stops.front()};
        DRIVEN_AS_TOLD(test::RoadDriver(past, toPump).below(0, kDrives), 1 - confidence);
    }

    // What a fill takes is told as a range: nine fills of ten are within it.
    void aFillTakesWhatIsTold()
    {
        PlanRequest request = car(40, litres(30, 1.0), 10, 0.4, 0.3);
        request.route.points = {place(0), place(200, FuelSource::pump), place(550)};
        const auto best = plan(request);
        QVERIFY(best && best->feasible && best->stops.front().toFull);
        const PlannedStop& stop = best->stops.front();
        // sqrt(1^2 + (200 km x 0.4 L/100 km)^2 + 0.3^2)
        QVERIFY(std::fabs(stop.buySd.litres() - std::sqrt(1 + 0.64 + 0.09)) < 1e-9);
        QVERIFY(std::fabs(stop.buy.litres() - 30) < 1e-9);
    }

    // Dry on a stage is the end of the event, dry at the finish is a push: each has its price.
    void aStageMayAskForMoreThanTheFinish()
    {
        PlanRequest request = car(40, litres(12, 0.8), 10, 0.5, 0.3);
        request.aim = Aim::cost;
        request.route.points = {place(0), place(60, FuelSource::pump), place(150), place(200), place(215)};
        request.route.points[1].pricePerLitre = 2.0;
        request.route.points[2].timed = true; // to 200 km
        request.confidence = Probability::of(0.9);
        const auto usual = plan(request);
        request.stageConfidence = Probability::of(0.999);
        const auto careful = plan(request);
        QVERIFY(usual->feasible && careful->feasible && careful->bought > usual->bought);
        QVERIFY(usual->passages[3].dry > 0.004 && careful->passages[3].dry <= 0.001 + 1e-9);
        PlanRequest toStage = request; // driven to the end of the stage
        toStage.route.points.pop_back();
        DRIVEN_AS_TOLD(test::RoadDriver(toStage, *careful).below(0, kDrives), careful->passages[3].dry);
        DRIVEN_AS_TOLD(test::RoadDriver(request, *careful).below(0, kDrives), careful->dryRisk);
    }

    // A row may ask for litres of its own, of which the drive knows nothing but the level there.
    void aRowMayHaveAFloorOfItsOwn()
    {
        PlanRequest request = car(40, litres(22, 0.8), 10, 0.5, 0.3);
        request.aim = Aim::cost;
        request.route.points = {place(0), place(60, FuelSource::pump), place(200), place(260)};
        request.route.points[1].pricePerLitre = 2.0;
        request.confidence = Probability::of(0.9);
        const auto usual = plan(request);
        request.route.points[2].floor = litres(9, 0).mean; // the 60 km behind it burn but 6
        const auto careful = plan(request);
        QVERIFY(usual->feasible && careful->feasible && careful->bought > usual->bought);
        PlanRequest toRow = request;
        toRow.route.points.pop_back();
        const test::Share below = test::RoadDriver(toRow, *careful).below(9, kDrives);
        DRIVEN_AS_TOLD(below, careful->passages[2].belowFloor);
        DRIVEN_WITHIN(below, 0.1);
        // Of the whole way: dry below 0, floor below the row's.
        DRIVEN_AS_TOLD(below, careful->floorRisk);
        DRIVEN_AS_TOLD(test::RoadDriver(request, *careful).below(0, kDrives), careful->dryRisk);
    }

    // A zone that gives 20 L fills the tank only where less than that is missing.
    void aLimitIsNotAFullTank()
    {
        PlanRequest request = car(40, litres(30, 1.0), 10, 0.4, 0.3);
        request.aim = Aim::stops;
        for (const double length : {300.0, 315.0, 330.0, 345.0, 360.0}) {
            request.route.points = {place(0), place(100, FuelSource::zone), place(100 + length)};
            request.route.points[1].mostPurchase = Volume::fromLitres(20);
            const auto best = plan(request);
            QVERIFY(best && best->feasible == (length < 340)); // 40 +- 1.1 L, in no sure way more
            if (!best->feasible)
                continue;
            const test::Share dry = test::RoadDriver(request, *best).below(0, kDrives);
            DRIVEN_AS_TOLD(dry, best->dryRisk);
            DRIVEN_WITHIN(dry, 0.01);
        }
    }
};

UNDERMARK_TEST(PlanRoadTest)
#include "plan_road_test.moc"
