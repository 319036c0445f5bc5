// SPDX-License-Identifier: GPL-3.0-or-later
//
// The confidence of the whole way: kept, and no plan that keeps it is better by
// more than the gap that the plan states. Compared with every combination of
// stops, the risk being shared among the arrivals in many ways.
#include "engine/planning/evaluate.h"
#include "engine/planning/solve.h"
#include "tests/support/plan_exhaustive.h"
#include "tests/support/plan_oracles.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;
using namespace undermark::planning;

namespace {

// The least objective with the whole way's risk kept, over a grid of confidences
// for each arrival.
class SharedRisk : public test::Exhaustive {
public:
    SharedRisk(const PlanRequest& request, const Problem& problem)
        : Exhaustive(problem), m_request(request), m_allowed(1 - request.tripConfidence->value())
    {
    }

private:
    void tryKinds() override { tryArrival(1); }

    void tryArrival(std::size_t i)
    {
        if (i == m_z.size()) {
            if (const auto found = cheapest()) {
                const Plan plan = evaluate(m_request, m_problem, found->purchases);
                if (plan.floorRisk <= m_allowed)
                    note(found);
            }
            return;
        }
        for (const double z : {1.645, 1.8, 2.0, 2.3, 2.8}) { // 1.645: what is allowed in all
            m_z[i] = z;
            tryArrival(i + 1);
        }
    }

    const PlanRequest& m_request;
    double m_allowed;
};

PlanRequest smallTrip(unsigned seed, bool legNoise)
{
    PlanRequest request = test::withRisk(test::longRoute(3, seed, 150));
    request.tank.start.mean = Volume::fromLitres(25);
    request.tank.fullSd = Volume::fromLitres(0.8);
    request.stopCost = seed % 3;
    request.rates.legNoiseSd = legNoise ? 0.08 : 0.0;
    request.confidence = Probability::of(0.9);
    request.tripConfidence = Probability::of(0.95);
    return request;
}

} // namespace

class PlanTripTest : public QObject {
    Q_OBJECT

private slots:
    void noSharingOfTheRiskBeatsThePlanByMoreThanItsGap()
    {
        int compared = 0;
        double worst = 0.0;
        for (unsigned seed = 1; seed <= 24; ++seed) {
            const PlanRequest request = smallTrip(seed, seed % 2);
            const auto problem = makeProblem(request);
            const Solved found = solveForTrip(request, *problem);
            if (!found.plan.feasible)
                continue;
            QVERIFY(found.plan.floorRisk <= 0.05 + 1e-12);
            const auto other = SharedRisk(request, *problem).optimum();
            if (!other)
                continue;
            ++compared;
            QVERIFY2(*other >= found.objective - found.plan.tripGap - 1e-6,
                     qPrintable(QString("seed %1: %2 against %3, gap %4")
                                    .arg(seed)
                                    .arg(*other)
                                    .arg(found.objective)
                                    .arg(found.plan.tripGap)));
            worst = std::max(worst, (found.objective - *other) / found.objective);
        }
        QVERIFY2(compared >= 12, qPrintable(QString::number(compared)));
        // Measured: equal shares cost next to nothing.
        QVERIFY2(worst < 0.005, qPrintable(QString::number(worst)));
        qInfo("%d compared, equal shares dearer by %.4f %% at worst", compared, worst * 100);
    }

    // One rate, no leg noise, and the tank known: all arrivals fail together, so
    // the whole way is as risky as its riskiest arrival.
    void withOneCommonErrorThePlanIsOptimal()
    {
        PlanRequest request = smallTrip(4, false);
        request.tank.start.sd = request.tank.fullSd = Volume();
        for (RoutePoint& point : request.route.points)
            point.fuel = FuelSource::none;
        request.route.points[1].fuel = FuelSource::pump;
        request.tank.start.mean = Volume::fromLitres(30);
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        QVERIFY(best->tripGap < 1e-9);
        QVERIFY(best->notes.empty());
    }

    void theGapIsSaidWhereThereIsOne()
    {
        PlanRequest request = test::withRisk(test::longRoute(25, 3, 40));
        request.tripConfidence = Probability::of(0.97);
        request.confidence = Probability::of(0.9);
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        QVERIFY(best->floorRisk <= 0.03);
        QVERIFY(best->tripGap >= 0);
        QCOMPARE(best->notes.size(), std::size_t(best->tripGap > 1e-4));
        qInfo("gap %.3f of cost %.2f", best->tripGap, best->cost);
    }

    // What no plan can promise on one arrival, none can promise on the whole way.
    void whatCannotBePromisedIsAnInfeasibleAnswer()
    {
        PlanRequest request = test::withRisk(test::longRoute(1, 1, 200));
        request.route.points[0].fuel = FuelSource::none;
        request.tank.start.mean = request.route.points[1].at * request.rates.mean[0];
        request.confidence = Probability::of(0.5);
        request.tripConfidence = Probability::of(0.95);
        const auto none = plan(request);
        QVERIFY(none && !none->feasible);
        QVERIFY(none->shortfall->missing > Volume());
    }
};

UNDERMARK_TEST(PlanTripTest)
#include "plan_trip_test.moc"
