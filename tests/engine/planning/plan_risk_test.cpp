// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/cures.h"
#include "engine/planning/plan.h"
#include "engine/planning/risk/trip_risk.h"
#include "engine/planning/what_if.h"
#include "tests/support/plan_oracles.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <random>

using namespace undermark;

namespace {

// Legs of 120, 90 and 150 km at 10 L/100 km: 12, 9 and 15 L.
PlanRequest threeLegs(double startLitres)
{
    PlanRequest request;
    for (const double km : {0.0, 120.0, 210.0, 360.0}) {
        RoutePoint point;
        point.at = Distance::fromKm(km);
        point.mode = "road";
        request.route.points.push_back(point);
    }
    request.tank.capacity = Volume::fromLitres(100);
    request.tank.start.mean = Volume::fromLitres(startLitres);
    request.rates = RateModel::single(
        {Consumption::fromLitresPer100Km(10), Consumption::fromLitresPer100Km(1)});
    return request;
}

// How often a plan runs below the floor when it is driven many times: on each
// arrival, and on the way as a whole.
struct Driven {
    double worstArrival = 0.0;
    double trip = 0.0;
};

Driven drive(const PlanRequest& request, const Plan& plan, int times)
{
    std::mt19937_64 random(7);
    std::normal_distribution<double> normal;
    const double rate = request.rates.mean[0].litresPerKm();
    const double rateSd = std::sqrt(request.rates.covariance[0]);
    std::vector<int> failed(request.route.points.size(), 0);
    int trips = 0;
    for (int i = 0; i < times; ++i) {
        const double trueRate = rate + rateSd * normal(random);
        double level =
            request.tank.start.mean.litres() + request.tank.start.sd.litres() * normal(random);
        bool failedOnce = false;
        auto stop = plan.stops.begin();
        for (std::size_t at = 0; at < request.route.points.size(); ++at) {
            if (at > 0) {
                const double km =
                    (request.route.points[at].at - request.route.points[at - 1].at).km();
                level -= trueRate * km + request.rates.legNoiseSd * std::sqrt(km) * normal(random);
                if (level < request.tank.floor.litres()) {
                    ++failed[at];
                    failedOnce = true;
                }
            }
            if (stop != plan.stops.end() && stop->point == at) {
                level = stop->toFull ? request.tank.capacity.litres() +
                                           request.tank.fullSd.litres() * normal(random)
                                     : level + stop->buy.litres();
                ++stop;
            }
        }
        trips += failedOnce;
    }
    return {double(*std::ranges::max_element(failed)) / times, double(trips) / times};
}

} // namespace

class PlanRiskTest : public QObject {
    Q_OBJECT

private slots:
    // Legs 12, 9, 15 L with sd 1.2, 0.9, 1.5 (a tenth each), 99 %: recomputed value.
    void aCommonErrorAddsLinearly()
    {
        QVERIFY(plan(threeLegs(44.374853))->feasible);
        QVERIFY(!plan(threeLegs(44.374851))->feasible);
        QVERIFY(std::fabs(plan(threeLegs(44.374853))->dryRisk - 0.01) < 1e-6);
    }

    // The same legs with independent errors; sd per square root of km such that
    // the variances add to the same 1.44 + 0.81 + 2.25 = 4.5 L^2 over 360 km.
    void legErrorsAddInQuadrature()
    {
        PlanRequest request = threeLegs(40.934930);
        request.rates = RateModel::single({Consumption::fromLitresPer100Km(10), Consumption()},
                                          std::sqrt(4.5 / 360));
        QVERIFY(plan(request)->feasible);
        request.tank.start.mean = Volume::fromLitres(40.934928);
        QVERIFY(!plan(request)->feasible);
    }

    void onlyAFullFillResetsTheSpread()
    {
        PlanRequest request = test::withRisk(test::longRoute(60, 5, 30));
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        bool partial = false;
        bool full = false;
        for (const PlannedStop& stop : best->stops) {
            const double before = best->passages[stop.point].arrive.sd.litres();
            const double after = best->passages[stop.point + 1].arrive.sd.litres();
            partial = partial || !stop.toFull;
            full = full || stop.toFull;
            QVERIFY(stop.toFull ? after < before || before < 0.5 : after > before);
        }
        QVERIFY(full);
        QVERIFY(partial);
    }

    void anyReturnedPlanKeepsItsConfidenceWhenDriven_data()
    {
        QTest::addColumn<double>("confidence");
        QTest::addColumn<double>("legNoise");
        QTest::newRow("99 %, common error and leg noise") << 0.99 << 0.05;
        QTest::newRow("90 %, common error and leg noise") << 0.90 << 0.05;
        QTest::newRow("95 %, common error only") << 0.95 << 0.0;
    }

    void anyReturnedPlanKeepsItsConfidenceWhenDriven()
    {
        QFETCH(double, confidence);
        QFETCH(double, legNoise);
        double worst = 0.0;
        for (unsigned seed = 1; seed <= 4; ++seed) {
            PlanRequest request = test::withRisk(test::longRoute(25, seed, 40));
            request.rates.legNoiseSd = legNoise;
            request.confidence = Probability::of(confidence);
            request.tank.floor = Volume::fromLitres(2);
            const auto best = plan(request);
            QVERIFY(best && best->feasible);
            const int times = 40000;
            const Driven driven = drive(request, *best, times);
            const double allowed = 1 - confidence;
            const double noise = 4 * std::sqrt(allowed * confidence / times); // 4 sd of the count
            QVERIFY2(driven.worstArrival <= allowed + noise,
                     qPrintable(QString::number(driven.worstArrival)));
            worst = std::max(worst, driven.worstArrival + noise);
            const double tripNoise = 4 * std::sqrt(best->floorRisk / times);
            QVERIFY2(driven.trip <= best->floorRisk + tripNoise,
                     qPrintable(QString("%1 of %2").arg(driven.trip).arg(best->floorRisk)));
            QVERIFY2(driven.trip >= best->floorRisk - tripNoise,
                     qPrintable(QString("%1 of %2").arg(driven.trip).arg(best->floorRisk)));
        }
        // The promise is used up somewhere: no fuel is carried for nothing.
        QVERIFY2(worst >= 1 - confidence, qPrintable(QString::number(worst)));
    }

    void theConfidenceOfTheWholeTripIsKept()
    {
        PlanRequest request = test::withRisk(test::longRoute(25, 3, 40));
        request.tripConfidence = Probability::of(0.97);
        request.confidence = Probability::of(0.9);
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        QVERIFY(best->floorRisk <= 0.03);
        QVERIFY(drive(request, *best, 40000).trip <= 0.03 + 4 * std::sqrt(0.03 / 40000));
    }

    // Without spread. With it a larger tank may cost more: only a full fill makes
    // the level known again, and it takes more litres.
    void costNeverFallsWithFloorOrStopCostNorRisesWithCapacity()
    {
        for (unsigned seed = 1; seed <= 10; ++seed) {
            PlanRequest request = test::longRoute(20, seed, 40);
            double before = plan(request)->cost;
            const auto costs = [&](double factor) {
                const double now = plan(request)->cost;
                const bool right = factor * now >= factor * before - 1e-6;
                before = now;
                return right;
            };
            request.tank.floor = Volume::fromLitres(3);
            QVERIFY(costs(1));
            request.stopCost = 9;
            QVERIFY(costs(1));
            request.tank.capacity = Volume::fromLitres(65);
            QVERIFY(costs(-1));
            request.route.points[7].fuel = FuelSource::none;
            QVERIFY(costs(1));
        }
    }

    void curesMakeTheWayFeasibleAndAreTheLeast()
    {
        PlanRequest request = test::longRoute(8, 4, 100);
        for (RoutePoint& point : request.route.points)
            point.fuel = FuelSource::none;
        request.route.points[4].fuel = FuelSource::pump;
        request.tank.start.mean = Volume::fromLitres(20);
        QVERIFY(!plan(request)->feasible);
        const auto cures = findCures(request);
        QVERIFY(cures && cures->size() >= 2);
        for (const Cure& cure : *cures)
            QVERIFY(cure.plan.feasible);
        const Cure& more = cures->front();
        QCOMPARE(more.kind, CureKind::startWithMore);
        request.tank.start.mean = Volume::fromLitres(20) + more.litres;
        QVERIFY(plan(request)->feasible);
        request.tank.start.mean -= Volume::fromLitres(0.11);
        QVERIFY(!plan(request)->feasible);
    }

    void anAutonomyOf220KmAndTenPerCentNeeds18Point15Litres()
    {
        // Cross-country event rules seen: 220 km + 10 % = 242 km; at 7.5 L/100 km 18.15 L.
        PlanRequest request = threeLegs(50);
        request.rates = RateModel::single({Consumption::fromLitresPer100Km(7.5), Consumption()});
        request.rules.autonomy = Distance::fromKm(220);
        request.rules.autonomySafety = 0.10;
        request.tank.capacity = Volume::fromLitres(50);
        const auto large = plan(request);
        QVERIFY(large->rules.at(1).kept);
        QVERIFY(!large->rules.at(0).kept); // 360 km without a chance to refuel
        QVERIFY(std::fabs(large->rules.at(0).overBy.km() - 140) < 1e-9);
        request.tank.capacity = request.tank.start.mean = Volume::fromLitres(18);
        QVERIFY(std::fabs(plan(request)->rules.at(1).shortBy.litres() - 0.15) < 1e-9);
    }

    void whatIfsChangeOnlyWhatTheyName()
    {
        const PlanRequest request = test::longRoute(20, 6, 40);
        PlanRequest named = request;
        named.route.points[3].name = "Alder";
        const double base = plan(request)->cost;
        QVERIFY(whatIfClosed(named, "Alder")->plan.cost >= base - 1e-9);
        QVERIFY(whatIfRateUp(named, Fraction::fromPercent(10))->plan.cost > base);
        QVERIFY(whatIfFillsLess(named, Volume::fromLitres(5))->plan.cost >= base - 1e-9);
        const auto twice = whatIfRepeated(named, "Alder");
        const Distance section = named.route.points[4].at - named.route.points[3].at;
        const Distance longer =
            twice->request.route.points.back().at - named.route.points.back().at;
        QVERIFY(std::fabs((longer - section).km()) < 1e-9);
        QCOMPARE(whatIfClosed(named, "Beech").error().code, ErrorCode::notFound);
    }
};

UNDERMARK_TEST(PlanRiskTest)
#include "plan_risk_test.moc"
