// SPDX-License-Identifier: GPL-3.0-or-later
//
// Published and recomputed optima of fixed-route refuelling; the source stands
// beside each case.
#include "engine/planning/plan.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

// One litre per km, so that km are litres of need.
PlanRequest fromNeeds(double capacity, std::vector<double> prices, std::vector<double> needs)
{
    PlanRequest request;
    double at = 0.0;
    for (std::size_t i = 0; i <= needs.size(); ++i) {
        RoutePoint point;
        point.at = Distance::fromKm(at);
        if (i < prices.size()) {
            point.fuel = FuelSource::pump;
            point.pricePerLitre = prices[i];
            at += needs[i];
        }
        request.route.points.push_back(point);
    }
    request.tank.capacity = Volume::fromLitres(capacity);
    request.rates = RateModel::single({Consumption::fromLitresPerKm(1), Consumption()});
    return request;
}

// A public programming exercise: 50 L, 12 km/L, 1300 km, empty at the start.
PlanRequest exercise(std::vector<std::pair<double, double>> pumps)
{
    PlanRequest request;
    for (const auto& [km, price] : pumps) {
        RoutePoint point;
        point.at = Distance::fromKm(km);
        point.fuel = FuelSource::pump;
        point.pricePerLitre = price;
        request.route.points.push_back(point);
    }
    RoutePoint finish;
    finish.at = Distance::fromKm(1300);
    request.route.points.push_back(finish);
    request.tank.capacity = Volume::fromLitres(50);
    request.rates = RateModel::single({Consumption::fromKmPerLitre(12), Consumption()});
    return request;
}

PlanRequest exercise()
{
    return exercise({{0, 7.10},
                     {150, 7.00},
                     {200, 7.20},
                     {300, 6.85},
                     {400, 7.50},
                     {600, 7.00},
                     {1000, 7.30},
                     {1250, 6.00}});
}

std::vector<double> boughtAtEach(const Plan& plan, std::size_t points)
{
    std::vector<double> litres(points, 0.0);
    for (const PlannedStop& stop : plan.stops)
        litres[stop.point] = stop.buy.litres();
    return litres;
}

void near(double found, double expected, double tolerance)
{
    QVERIFY2(
        std::fabs(found - expected) <= tolerance,
        qPrintable(
            QString("found %1, expected %2").arg(found, 0, 'g', 12).arg(expected, 0, 'g', 12)));
}

} // namespace

class PlanTablesTest : public QObject {
    Q_OBJECT

private slots:
    void a1FixedPathCoursePage() // Biola University, math course page on fixed-path refuelling
    {
        const auto best = plan(fromNeeds(15, {3, 1, 6, 2}, {1, 5, 2, 13}));
        QVERIFY(best && best->feasible);
        near(best->cost, 28, 1e-9);
        const std::vector<double> litres = boughtAtEach(*best, 4);
        near(litres[0], 1, 1e-9);
        near(litres[1], 15, 1e-9);
        near(litres[2], 0, 1e-9);
        near(litres[3], 5, 1e-9);
        QVERIFY(best->stops[1].toFull);
    }

    void a2LinsSlides() // Lin, slides "Finding Optimal Refueling Policies"; cost recomputed
    {
        const auto best = plan(fromNeeds(12, {3.5, 3.7, 3.6, 3.0}, {6, 8, 4, 4}));
        QVERIFY(best && best->feasible);
        near(best->cost, 75.80, 1e-9);
        const std::vector<double> expected{12, 2, 4, 4};
        for (std::size_t i = 0; i < 4; ++i)
            near(boughtAtEach(*best, 4)[i], expected[i], 1e-9);
    }

    void a2rWithAFloorAndAnEndLevelOfOne() // A2, recomputed
    {
        PlanRequest request = fromNeeds(12, {3.5, 3.7, 3.6, 3.0}, {6, 8, 4, 4});
        request.tank.floor = Volume::fromLitres(1);
        request.tank.end = Volume::fromLitres(1);
        const auto best = plan(request);
        near(best->cost, 79.50, 1e-9);
        const std::vector<double> expected{12, 3, 4, 4};
        for (std::size_t i = 0; i < 4; ++i)
            near(boughtAtEach(*best, 4)[i], expected[i], 1e-9);
        near(best->finish.mean.litres(), 1, 1e-9);
    }

    void a3Exercise_data() // public programming exercise; the variants by MILP
    {
        QTest::addColumn<double>("floor");
        QTest::addColumn<double>("stopCost");
        QTest::addColumn<double>("least");
        QTest::addColumn<double>("cost");
        QTest::addColumn<int>("stops");
        QTest::newRow("price only") << 0.0 << 0.0 << 0.0 << 749.17 << 6;
        QTest::newRow("floor and end 5") << 5.0 << 0.0 << 0.0 << 786.916667 << 6;
        QTest::newRow("stop cost 1") << 0.0 << 1.0 << 0.0 << 755.166667 << 6;
        QTest::newRow("stop cost 5") << 0.0 << 5.0 << 0.0 << 775.416667 << 5;
        // Four stops (755.83 + 40) and three (765.83 + 30) cost the same: fewer is ours.
        QTest::newRow("stop cost 10") << 0.0 << 10.0 << 0.0 << 795.833333 << 3;
        QTest::newRow("stop cost 50") << 0.0 << 50.0 << 0.0 << 915.833333 << 3;
        QTest::newRow("minimum purchase 10") << 0.0 << 0.0 << 10.0 << 755.083333 << -1;
    }

    void a3Exercise()
    {
        QFETCH(double, floor);
        QFETCH(double, stopCost);
        QFETCH(double, least);
        QFETCH(double, cost);
        QFETCH(int, stops);
        PlanRequest request = exercise();
        request.tank.floor = request.tank.end = Volume::fromLitres(floor);
        request.stopCost = stopCost;
        if (least > 0) {
            for (RoutePoint& point : request.route.points)
                point.leastPurchase = Volume::fromLitres(least);
        }
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        near(best->cost, cost, cost == 749.17 ? 0.005 : 1e-6); // printed with so many digits
        if (stops > 0)
            QCOMPARE(best->stops.size(), std::size_t(stops));
    }

    void a3xEndsAtTwelveHundred() // the same exercise: only two pumps
    {
        const auto none = plan(exercise({{0, 7.10}, {600, 7.00}}));
        QVERIFY(none && !none->feasible);
        near(none->shortfall->farthest.km(), 1200, 1e-6);
        near(none->shortfall->missing.litres(), 100.0 / 12, 1e-9);
        QCOMPARE(none->shortfall->towards, std::size_t(2));
    }

    void c1FewestStops() // public exercise: 950 km, range 400
    {
        PlanRequest request = exercise({{200, 0}, {375, 0}, {550, 0}, {750, 0}});
        request.route.points.insert(request.route.points.begin(), RoutePoint());
        request.route.points.back().at = Distance::fromKm(950);
        request.rates = RateModel::single({Consumption::fromLitresPer100Km(10), Consumption()});
        request.tank.capacity = request.tank.start.mean = Volume::fromLitres(40);
        request.aim = Aim::stops;
        QCOMPARE(plan(request)->stops.size(), std::size_t(2));
    }

    void d1FewestStopsWithLimits() // public exercise: (km, most) (10,60)(20,30)(30,30)(60,40)
    {
        PlanRequest request = fromNeeds(1e6, {0, 0, 0, 0, 0}, {10, 10, 10, 30, 40});
        request.route.points[0].fuel = FuelSource::none;
        const double most[] = {0, 60, 30, 30, 40};
        for (std::size_t i = 1; i < 5; ++i)
            request.route.points[i].mostPurchase = Volume::fromLitres(most[i]);
        request.tank.start.mean = Volume::fromLitres(10);
        request.aim = Aim::stops;
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        QCOMPARE(best->stops.size(), std::size_t(2));
    }

    void cansArePouredWholeAndNotMoreThanThereAre()
    {
        PlanRequest request = fromNeeds(12, {1, 1, 1}, {10, 10, 8});
        for (std::size_t i = 1; i < 3; ++i)
            request.route.points[i].fuel = FuelSource::can;
        request.tank.start.mean = Volume::fromLitres(12);
        request.cans = 3;
        request.canVolume = Volume::fromLitres(5);
        request.route.points[0].fuel = FuelSource::none;
        // 28 L needed, 12 aboard: 16 are missing, three cans hold 15.
        QVERIFY(!plan(request)->feasible);
        request.cans = 4;
        const auto best = plan(request);
        QVERIFY(best->feasible);
        near(best->bought.litres(), 20, 1e-9);
        request.rules.cansForbidden = true;
        QVERIFY(!plan(request)->feasible);
    }
};

UNDERMARK_TEST(PlanTablesTest)
#include "plan_tables_test.moc"
