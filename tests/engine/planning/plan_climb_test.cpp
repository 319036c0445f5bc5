// SPDX-License-Identifier: GPL-3.0-or-later
//
// Plans over hills: the litres by hand, the promises driven by chance, and that `range`'s law says
// the same.
#include "engine/planning/cures.h"
#include "engine/planning/left_of_plan.h"
#include "engine/planning/plan.h"
#include "engine/planning/plan_horizon.h"
#include "engine/range/range_law.h"
#include "tests/support/road_driver.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

constexpr int kHillDrives = 200'000;
constexpr double kHillErrors = 4.0; // standard, that chance is given

RoutePoint hill(double km, double climb = 0, double back = 0)
{
    RoutePoint point;
    point.at = Distance::fromKm(km);
    point.name = "at " + std::to_string(int(km));
    point.climb = {Distance::fromMetres(climb), Distance::fromMetres(back)};
    return point;
}

// 8 +- .3 L/100 km, 1.84 +- .39 L per km of height; 45 L.
PlanRequest hillCar(double start)
{
    PlanRequest request;
    request.tank.capacity = Volume::fromLitres(45);
    request.tank.start = {Volume::fromLitres(start), Volume::fromLitres(0.4)};
    request.tank.fullSd = Volume::fromLitres(0.4);
    request.rates = RateModel::single({Consumption::fromLitresPer100Km(8), Consumption::fromLitresPer100Km(.3)});
    request.rates.climb = {Consumption::fromLitresPerKm(1.84), Consumption::fromLitresPerKm(.39)};
    request.aim = Aim::stops;
    return request;
}

RoutePoint hillPump(double km, double climb = 0, double back = 0)
{
    RoutePoint point = hill(km, climb, back);
    point.fuel = FuelSource::pump;
    return point;
}

} // namespace

class PlanClimbTest : public QObject {
    Q_OBJECT

private slots:
    // 100 km and 1,000 m: 8 + 1.84 L; the spread .3^2 + .39^2 beside the level's.
    void aClimbCostsItsLitres()
    {
        PlanRequest request = hillCar(30);
        request.route.points = {hill(0, 1000, -200), hill(100, -240, 1000), hill(120)};
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        QVERIFY(std::fabs(best->passages[1].used.litres() - 9.84) < 1e-9);
        QVERIFY(std::fabs(best->passages[1].arrive.sd.litres() - std::sqrt(.16 + .09 + .1521)) < 1e-9);
        QVERIFY(std::fabs(best->passages[2].used.litres() - (1.6 - .24 * 1.84)) < 1e-9);
        // On the fall some of what is not known of the climb is taken back: 760 m are left of it.
        const double left = std::sqrt(.16 + std::pow(1.2 * .3, 2) + std::pow(.76 * .39, 2));
        QVERIFY(std::fabs(best->passages[2].arrive.sd.litres() - left) < 1e-9);
    }

    // .1 L per square root of km of road: 100 km of it, and none of the height.
    void heightMakesNoNoise()
    {
        PlanRequest request = hillCar(30);
        request.rates.legNoiseSd = 0.1;
        request.route.points = {hill(0, 1000, -200), hill(100)};
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        const double sd = std::sqrt(.16 + .09 + .1521 + .01 * 100);
        QVERIFY(std::fabs(best->passages[1].arrive.sd.litres() - sd) < 1e-9);
    }

    // Behind the pump a summit, and a fall that costs nothing: past the pump only with what is
    // enough to the summit, where less is known than further on.
    void pastAPumpWithEnoughForTheSummit()
    {
        PlanRequest request = hillCar(30);
        request.route.points = {hill(0), hillPump(10, 2500, -60), hill(60, -1300, 1300), hill(90)};
        const auto best = plan(request);
        QVERIFY(best && best->feasible && best->passages[1].goPast);
        const Passage& summit = best->passages[2];
        const double enough = summit.used.litres() + 2.3263479 * summit.arrive.sd.litres();
        QVERIFY2(std::fabs(best->passages[1].goPast->with.litres() - enough) < 1e-5,
                 qPrintable(QString("%1 %2").arg(best->passages[1].goPast->with.litres()).arg(enough)));
        QVERIFY(best->passages[3].arrive.sd < summit.arrive.sd);
    }

    void noRoadGivesFuelBack()
    {
        PlanRequest request = hillCar(30);
        request.route.points = {hill(0, -5000, 9000), hill(10)};
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        QVERIFY(std::fabs(best->passages[1].used.litres()) < 1e-9);
        QVERIFY(std::isfinite(best->passages[1].marginDistance.km()));
    }

    void drivenAsTold_data()
    {
        QTest::addColumn<std::vector<RoutePoint>>("points");
        QTest::addColumn<double>("start");
        QTest::newRow("up") << std::vector{hill(0, 900, -100), hill(80)} << 9.6;
        QTest::newRow("over a pass") << std::vector{hill(0, 1400, -150), hill(50, -350, 1500), hill(90, 100, 50), hill(110)}
                                     << 12.5;
        QTest::newRow("a pump behind the pass")
            << std::vector{hill(0, 1200, -100), hill(60, -200, 900), hillPump(150, 600, 600), hill(420, 300, 300), hill(480)}
            << 16.5;
        QTest::newRow("the summit is the worst of it") // all that falls gives back: there less is known than below
            << std::vector{hill(0, 2500, -60), hill(50, -1300, 1300), hill(80)} << 9.6;
    }

    void drivenAsTold()
    {
        QFETCH(std::vector<RoutePoint>, points);
        QFETCH(double, start);
        PlanRequest request = hillCar(start);
        request.route.points = points;
        request.rates.legNoiseSd = 0.06; // of the road's km, not of the height's
        request.confidence = Probability::of(0.8);
        const auto best = plan(request);
        QVERIFY2(best && best->feasible, "no plan");
        QVERIFY(best->dryRisk > 1e-3 && best->dryRisk < 0.5);
        const test::Share driven = test::RoadDriver(request, *best).below(0, kHillDrives);
        QVERIFY2(std::fabs(driven.of - best->dryRisk) < kHillErrors * driven.error,
                 qPrintable(QString("driven %1 +- %2, told %3").arg(driven.of).arg(driven.error).arg(best->dryRisk)));
    }

    // Twice the same car and road: what a plan of the whole road without pumps risks is what the
    // law of range says of it, heights included.
    void theLawOfRangeSaysTheSame()
    {
        PlanRequest request = hillCar(12);
        request.confidence = Probability::of(0.5);
        request.route.points = {hill(0, 700, -80), hill(40, 300, 20), hill(70, 500, -30), hill(100)};
        RangeBasis basis{request.tank.start, request.rates};
        for (std::size_t i = 0; i + 1 < request.route.points.size(); ++i)
            basis.legs.push_back({request.route.points[i + 1].at - request.route.points[i].at, 0,
                                  request.route.points[i].climb.there});
        const auto law = RangeLaw::make(basis);
        const auto best = plan(request);
        QVERIFY(law && best && best->feasible);
        const double risk = law->dryBefore(Distance::fromKm(100)).value();
        QVERIFY2(std::fabs(best->dryRisk / risk - 1) < 1e-6, qPrintable(QString("%1 %2").arg(best->dryRisk).arg(risk)));
        QVERIFY(risk > 1e-3);
    }

    void turningBackOnAHill()
    {
        PlanRequest request = hillCar(12);
        request.confidence = Probability::of(0.9);
        request.route.points = {hill(0, -200, 900), hill(60, 500, -100), hill(100)};
        const auto best = plan(request);
        QVERIFY(best && best->feasible && best->gaps.front().noReturn);
        test::RoadDriver road(request, *best);
        const test::Share driven = road.notBack(best->gaps.front(), *best->gaps.front().noReturn, 0, kHillDrives);
        QVERIFY2(std::fabs(driven.of - 0.1) < kHillErrors * driven.error, qPrintable(QString::number(driven.of)));
        for (RoutePoint& point : request.route.points)
            point.climb = {};
        const auto flat = plan(request);
        QVERIFY(flat && flat->gaps.front().noReturn);
        QVERIFY(*best->gaps.front().noReturn < *flat->gaps.front().noReturn); // the way back leads up
    }

    // From the middle of a section: half of its climb is left, half lies behind and its error with it.
    void leftOfPlanKnowsWhatWasClimbed()
    {
        PlanRequest request = hillCar(30);
        request.route.points = {hill(0, 1000, -200), hill(100, 400, 0), hill(160)};
        const auto whole = plan(request);
        QVERIFY(whole && whole->feasible);
        const auto left = leftOfPlan(request, *whole, Distance::fromKm(50));
        QVERIFY(left);
        QVERIFY(std::fabs(left->route.points[0].climb.there.metres() - 500) < 1e-9);
        const auto rest = plan(*left);
        QVERIFY(rest && rest->feasible);
        QVERIFY(std::fabs((rest->finish.mean - whole->finish.mean).litres()) < 1e-9);
        QVERIFY(std::fabs((rest->finish.sd - whole->finish.sd).litres()) < 1e-9);
        QVERIFY(std::fabs(rest->dryRisk - whole->dryRisk) < 1e-12);
    }

    // The strip's even distance to dry is where the plan's own litres end.
    void theHorizonKnowsTheHills()
    {
        PlanRequest request = hillCar(13);
        request.confidence = Probability::of(0.6);
        request.route.points = {hill(0, 1000, -200), hill(60, 900, 0), hill(110)};
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        const auto legs = planHorizons(request, *best, 4000);
        QCOMPARE(legs.size(), std::size_t(1));
        const HorizonBand& last = legs[0].strip.bands.back();
        QVERIFY(std::fabs(last.running - (1 - best->dryRisk)) < 0.002); // in the middle of the last band
    }

    // "Another pump" and own cans split a section: its climb is still climbed once.
    void curesKeepTheClimb()
    {
        PlanRequest request = hillCar(10);
        request.route.points = {hill(0, 2000, -100), hill(180)};
        const auto none = plan(request);
        QVERIFY(none && !none->feasible);
        const auto cures = findCures(request);
        QVERIFY(cures);
        bool pumped = false, poured = false;
        for (const Cure& cure : *cures) {
            pumped = pumped || cure.kind == CureKind::anotherPump;
            poured = poured || cure.kind == CureKind::carryInCans;
            if (cure.kind != CureKind::anotherPump && cure.kind != CureKind::carryInCans)
                continue;
            Volume used;
            for (const Passage& passage : cure.plan.passages)
                used += passage.used;
            QVERIFY(std::fabs(used.litres() - (14.4 + 3.68)) < 1e-9);
        }
        QVERIFY(pumped && poured);
    }
};

UNDERMARK_TEST(PlanClimbTest)
#include "plan_climb_test.moc"
