// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/plan_horizon.h"
#include "tests/support/plan_oracles.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class PlanHorizonTest : public QObject {
    Q_OBJECT

private slots:
    void everyLegHasAStripFromItsStartToTheFinish()
    {
        const PlanRequest request = test::withRisk(test::longRoute(25, 1, 40));
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        const auto strips = planHorizons(request, *best);
        QCOMPARE(strips.size(), best->gaps.size());
        for (std::size_t i = 0; i < strips.size(); ++i) {
            QCOMPARE(strips[i].from, best->gaps[i].from);
            QCOMPARE(strips[i].to, best->gaps[i].to);
            const Distance length =
                request.route.points.back().at - request.route.points[strips[i].from].at;
            QCOMPARE(strips[i].strip.length.km(), length.km());
            QVERIFY(!strips[i].strip.zeroPost);
        }
    }

    // The peg of the next stop stands at the probability that the plan promises
    // there: 1 - the passage's own dry risk.
    void theStripsProbabilityIsThePlansOwn()
    {
        int compared = 0;
        for (unsigned seed = 1; seed <= 3; ++seed) {
            PlanRequest request = test::withRisk(test::longRoute(25, seed, 40));
            request.confidence = Probability::of(0.9);
            for (std::size_t i = 0; i < request.route.points.size(); ++i)
                request.route.points[i].name = std::to_string(i);
            const auto best = plan(request);
            for (const LegHorizon& leg : planHorizons(request, *best)) {
                for (const HorizonPeg& peg : leg.strip.pegs) {
                    const std::size_t point = std::stoul(peg.name);
                    if (point > leg.to)
                        continue;
                    const double risk = best->passages[point].dry;
                    QVERIFY2(std::fabs((1 - peg.running) - risk) < 1e-6,
                             qPrintable(QString("%1 %2").arg(1 - peg.running).arg(risk)));
                    compared += risk > 1e-6;
                }
            }
        }
        QVERIFY2(compared > 5, qPrintable(QString::number(compared)));
    }

    void theZeroPostStandsWhereTheGaugeWillShowZero()
    {
        PlanRequest request = test::longRoute(3, 1, 100);
        request.rates = RateModel::single(
            {Consumption::fromLitresPer100Km(8), Consumption::fromLitresPer100Km(0.2)});
        for (RoutePoint& point : request.route.points)
            point.fuel = FuelSource::none;
        request.tank.start.mean = Volume::fromLitres(45);
        request.tank.zeroMark = Volume::fromLitres(37);
        const auto strips = planHorizons(request, *plan(request));
        QCOMPARE(strips.size(), std::size_t(1));
        const Horizon& strip = strips[0].strip;
        QVERIFY(strip.zeroPost);
        QVERIFY(std::fabs(*strip.zeroPost * strip.length.km() - 100) < 1e-3); // 8 L at 8 L/100 km
        QVERIFY(strip.tail && strip.tail->from == *strip.zeroPost);
    }
};

UNDERMARK_TEST(PlanHorizonTest)
#include "plan_horizon_test.moc"
