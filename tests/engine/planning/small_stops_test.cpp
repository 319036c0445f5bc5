// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/cures.h"
#include "engine/planning/plan.h"
#include "tests/support/plan_oracles.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

struct Pump {
    double km;
    double price;
    double most = 50;
};

// 10 L/100 km without spread, a 50 L tank, stops for 2 L at least.
PlanRequest day(double startLitres, const std::vector<Pump>& pumps, double finishKm)
{
    PlanRequest request;
    for (const Pump& pump : pumps) {
        RoutePoint point;
        point.at = Distance::fromKm(pump.km);
        point.fuel = FuelSource::pump;
        point.pricePerLitre = pump.price;
        point.mostPurchase = Volume::fromLitres(pump.most);
        request.route.points.push_back(point);
    }
    RoutePoint finish;
    finish.at = Distance::fromKm(finishKm);
    request.route.points.push_back(finish);
    request.tank.capacity = Volume::fromLitres(50);
    request.tank.start.mean = Volume::fromLitres(startLitres);
    request.rates = RateModel::single({Consumption::fromLitresPer100Km(10), Consumption()});
    request.leastStop = Volume::fromLitres(2);
    return request;
}

bool isNear(Volume volume, double litres)
{
    return std::abs(volume.litres() - litres) < 1e-6;
}

} // namespace

class SmallStopsTest : public QObject {
    Q_OBJECT
private slots:
    void aStopThatSavesHardlyAnythingIsLeftOut()
    {
        // 0.2 L fit in at the cheap start; the rest has to be bought at the dear pump anyway.
        PlanRequest request = day(49.8, {{0, 1.0}, {400, 2.0}}, 600);
        const auto least = plan(request);
        QVERIFY(least && least->feasible);
        QCOMPARE(least->stops.size(), std::size_t(1));
        QVERIFY(isNear(least->stops[0].buy, 10.2));
        QVERIFY(least->stops[0].why.empty());
        request.leastStop = Volume();
        const auto exact = plan(request);
        QCOMPARE(exact->stops.size(), std::size_t(2));
        QVERIFY(isNear(exact->stops[0].buy, 0.2));
        QVERIFY(least->cost > exact->cost);
        QVERIFY(least->cost <= exact->cost + 2 * 2.0); // leastStop at the dearest price
    }
    void aStopThatMustBeIsMadeLargerAndSaysWhatItIsFor()
    {
        const auto answer = plan(day(20, {{0, 1.5, 1e-3}, {100, 1.5}}, 202));
        QVERIFY(answer && answer->feasible);
        QCOMPARE(answer->stops.size(), std::size_t(1));
        QVERIFY(isNear(answer->stops[0].buy, 2));
        QCOMPARE(english(answer->stops[0].why), "needed: without it the fuel does not last");
    }
    void whereLessIsSoldAllOfThatIsBought()
    {
        const auto answer = plan(day(20, {{0, 1.5, 1e-3}, {100, 1.5, 0.3}}, 202));
        QVERIFY(answer && answer->feasible);
        QVERIFY(isNear(answer->stops.back().buy, 0.3));
        QVERIFY(!answer->stops.back().why.empty());
    }
    void whatIsMuchDearerWithoutItStays()
    {
        // Without the 0.2 L the next pump sells 40 L at least.
        PlanRequest request = day(20, {{0, 1.5, 1e-3}, {100, 1.5, 0.3}, {190, 3}}, 202);
        request.route.points[2].leastPurchase = Volume::fromLitres(40);
        const auto answer = plan(request);
        QVERIFY(answer && answer->feasible);
        QCOMPARE(answer->stops.size(), std::size_t(1));
        QCOMPARE(english(answer->stops[0].why), "little, but the way without it is dearer");
        // The same where leaving it out would save a stop, too.
        request = day(20, {{0, 2, 1e-3}, {100, 1.5, 0.3}, {110, 1.5, 10}, {190, 3}}, 302.9);
        request.route.points[3].leastPurchase = Volume::fromLitres(40);
        const auto two = plan(request);
        QVERIFY(two && two->feasible);
        QCOMPARE(two->stops.size(), std::size_t(2));
        QCOMPARE(english(two->stops[0].why), "little, but the way without it is dearer");
    }
    void noWayLosesItsPlanAndEverySmallStopIsAccountedFor()
    {
        int without = 0;
        for (unsigned seed = 0; seed < 150; ++seed) {
            PlanRequest request = test::longRoute(12, seed, 60);
            if (seed % 2 == 0)
                request = test::withRisk(request);
            request.stopCost = 0;
            const auto exact = plan(request);
            request.leastStop = Volume::fromLitres(4);
            const auto least = plan(request);
            QVERIFY(exact && least);
            QCOMPARE(least->feasible, exact->feasible);
            const auto small = [](const PlannedStop& stop) {
                return stop.buy < Volume::fromLitres(4 - 1e-6);
            };
            without += std::ranges::any_of(exact->stops, small);
            for (const PlannedStop& stop : least->stops)
                QVERIFY(!small(stop) || !stop.why.empty());
            if (std::ranges::none_of(exact->stops, small))
                QCOMPARE(least->cost, exact->cost); // nothing to leave out: the optimum as it was
        }
        QVERIFY2(without > 20, qPrintable(QString::number(without)));
    }
    void anotherPumpIsACureAsFarAsTheFuelLasts()
    {
        const PlanRequest request = day(20, {{0, 1.5, 1e-3}}, 350.5);
        const auto answer = plan(request);
        QVERIFY(answer && !answer->feasible);
        const auto cures = findCures(request);
        QVERIFY(cures);
        const auto pump = std::ranges::find(*cures, CureKind::anotherPump, &Cure::kind);
        QVERIFY(pump != cures->end());
        QCOMPARE(pump->latest.km(), 200.0);
        QVERIFY(pump->plan.feasible);
        // A way that needs two of them is not cured by one.
        const auto far = findCures(day(20, {{0, 1.5, 1e-3}}, 900));
        QVERIFY(far);
        QVERIFY(std::ranges::find(*far, CureKind::anotherPump, &Cure::kind) == far->end());
    }
};

UNDERMARK_TEST(SmallStopsTest)
#include "small_stops_test.moc"
