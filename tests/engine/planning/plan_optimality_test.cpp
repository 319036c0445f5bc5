// SPDX-License-Identifier: GPL-3.0-or-later
//
// The planner's optimum against three others: GLPK's mixed-integer solver, every
// combination of stops with GLPK's simplex for the litres, and by price alone a greedy queue.
#include "engine/planning/search/search.h"
#include "tests/support/plan_exhaustive.h"
#include "tests/support/plan_greedy.h"
#include "tests/support/plan_oracles.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;
using namespace undermark::planning;

namespace {

// The objective of purchases, from the problem's own prices.
double objective(const Problem& problem, const std::vector<Purchase>& purchases)
{
    double cost = 0.0;
    double supply = problem.start;
    auto next = purchases.begin();
    for (int i = 0; i + 1 < problem.points; ++i) {
        const auto at = static_cast<std::size_t>(i);
        if (next != purchases.end() && next->point == i) {
            cost += problem.offers[at].perStop + problem.offers[at].perLitre * next->litres;
            supply += next->litres - problem.offers[at].detourLitres;
            ++next;
        }
        cost += problem.holdFrom(i) * (supply - problem.fuelTo[at]);
    }
    return cost;
}

// True if the purchases keep every bound of the problem.
bool keepsBounds(const Problem& problem, const std::vector<Purchase>& purchases)
{
    double supply = problem.start;
    int since = kStart;
    auto next = purchases.begin();
    for (int i = 0; i < problem.points; ++i) {
        if (i > 0 && supply < problem.leastSupply(since, i) - 1e-6)
            return false;
        if (next != purchases.end() && next->point == i) {
            const Offer& offer = problem.offers[static_cast<std::size_t>(i)];
            const bool fits =
                next->litres >= offer.least - 1e-6 && next->litres <= offer.most + 1e-6;
            supply += next->litres - offer.detourLitres;
            const double content = supply - problem.fuelTo[static_cast<std::size_t>(i)];
            if (!fits || !offer.open || content > problem.capacity + 1e-6)
                return false;
            if (next->full && content + offer.detourLitres / 2 < problem.capacity - 1e-6)
                return false;
            since = next->full ? i : since;
            ++next;
        }
    }
    return next == purchases.end();
}

struct Draw {
    std::mt19937 random;
    double between(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(random);
    }
    bool chance(double p) { return between(0, 1) < p; }
};

// A random route of `points` sections, in the kinds a request can be of.
PlanRequest randomRequest(Draw& draw, int points, bool limits, bool spread)
{
    PlanRequest request;
    double km = 0.0;
    for (int i = 0; i <= points; ++i) {
        RoutePoint point;
        point.at = Distance::fromKm(km);
        km += draw.between(20, 240);
        if (i < points && draw.chance(0.85)) {
            point.fuel = FuelSource::pump;
            // Often the same price, so that ties are met.
            point.pricePerLitre = draw.chance(0.3) ? 1.8 : draw.between(1.2, 2.4);
        }
        if (limits && draw.chance(0.4))
            point.mostPurchase = Volume::fromLitres(draw.between(12, 40));
        if (limits && draw.chance(0.4))
            point.leastPurchase = Volume::fromLitres(draw.between(2, 12));
        point.timed = draw.chance(0.3);
        request.route.points.push_back(point);
    }
    request.tank.capacity = Volume::fromLitres(draw.between(30, 60));
    request.tank.start.mean = request.tank.capacity * draw.between(0, 1);
    request.tank.floor = Volume::fromLitres(draw.chance(0.5) ? 0 : draw.between(0, 4));
    request.tank.end = Volume::fromLitres(draw.chance(0.5) ? 0 : draw.between(0, 15));
    request.stopCost = draw.chance(0.3) ? 0 : draw.between(0, 10);
    double sd = 0.0;
    if (spread) {
        request.tank.start.sd = Volume::fromLitres(draw.between(0, 2));
        request.tank.fullSd = Volume::fromLitres(draw.between(0, 1));
        sd = draw.between(0, 0.6);
        request.confidence = Probability::of(draw.between(0.8, 0.999));
    }
    request.rates = RateModel::single(
        {Consumption::fromLitresPer100Km(draw.between(6, 12)), Consumption::fromLitresPer100Km(sd)},
        spread ? draw.between(0, 0.1) : 0.0);
    const double aim = draw.between(0, 1);
    request.aim = aim < 0.55   ? Aim::cost
                  : aim < 0.7  ? Aim::stops
                  : aim < 0.85 ? Aim::time
                               : Aim::weight;
    if (!spread)
        return request;
    // Half of them skewed, with a heavy tail; some begin long after the level was known, or
    // may not use all there is.
    if (draw.chance(0.5))
        request.rates.worlds = {{0.6, 0.97, 0.02}, {0.3, 1.0, 0.06}, {0.1, 1.18, 0.1}};
    if (draw.chance(0.4))
        request.tank.driven = {{Distance::fromKm(draw.between(0, 300)), 0}};
    if (draw.chance(0.3))
        request.tank.surge = {Volume::fromLitres(draw.between(0, 4))};
    return request;
}

void compare(const Problem& problem, const std::optional<double>& expected, int number,
             int& feasible)
{
    const SearchResult found = search(problem);
    QVERIFY2(expected.has_value() == !found.stuckBefore,
             qPrintable(QString("case %1").arg(number)));
    if (!expected)
        return;
    ++feasible;
    const double cost = objective(problem, found.purchases);
    QVERIFY2(std::fabs(cost - *expected) <= 1e-6 * std::max(1.0, std::fabs(*expected)),
             qPrintable(QString("case %1: found %2, expected %3")
                            .arg(number)
                            .arg(cost, 0, 'g', 12)
                            .arg(*expected, 0, 'g', 12)));
    QVERIFY2(keepsBounds(problem, found.purchases), qPrintable(QString("case %1").arg(number)));
}

} // namespace

class PlanOptimalityTest : public QObject {
    Q_OBJECT

private slots:
    void equalsTheMixedIntegerOptimumOnThousandsOfRoutes()
    {
        Draw draw{std::mt19937(20)};
        int feasible = 0;
        for (int i = 0; i < 3000; ++i) {
            const PlanRequest request = randomRequest(draw, 3 + i % 7, i % 2 == 1, false);
            const auto problem = makeProblem(request);
            QVERIFY2(problem, problem ? "" : describe(problem.error()).c_str());
            compare(*problem, test::optimumByMixedInteger(*problem), i, feasible);
            if (QTest::currentTestFailed())
                return;
        }
        QVERIFY2(feasible > 1000, qPrintable(QString::number(feasible)));
    }

    void equalsEveryCombinationTriedWithSpread()
    {
        Draw draw{std::mt19937(21)};
        int feasible = 0;
        for (int i = 0; i < 400; ++i) {
            const PlanRequest request = randomRequest(draw, 2 + i % 4, i % 2 == 1, true);
            const auto problem = makeProblem(request);
            QVERIFY2(problem, problem ? "" : describe(problem.error()).c_str());
            compare(*problem, test::Exhaustive(*problem).optimum(), i, feasible);
            if (QTest::currentTestFailed())
                return;
        }
        QVERIFY2(feasible > 150, qPrintable(QString::number(feasible)));
    }

    // Falls take some of a climb's spread back: a run that began later may then know less.
    void equalsEveryCombinationTriedOverHills()
    {
        Draw draw{std::mt19937(22)};
        int feasible = 0;
        for (int i = 0; i < 400; ++i) {
            PlanRequest request = randomRequest(draw, 2 + i % 4, i % 2 == 1, true);
            const double perKm = draw.between(1, 3);
            request.rates.climb = {Consumption::fromLitresPerKm(perKm),
                                   Consumption::fromLitresPerKm(perKm * draw.between(0.1, 0.6))};
            for (RoutePoint& point : request.route.points)
                point.climb.there = Distance::fromMetres(draw.chance(0.5) ? draw.between(0, 3000) : draw.between(-3000, 0));
            const auto problem = makeProblem(request);
            QVERIFY2(problem, problem ? "" : describe(problem.error()).c_str());
            compare(*problem, test::Exhaustive(*problem).optimum(), i, feasible);
            if (QTest::currentTestFailed())
                return;
        }
        QVERIFY2(feasible > 150, qPrintable(QString::number(feasible)));
    }

    void equalsTheGreedyOnPriceAlone()
    {
        for (unsigned seed = 0; seed < 60; ++seed) {
            const int points = seed == 0 ? 20'000 : 50 + static_cast<int>(seed) * 5;
            PlanRequest request = test::longRoute(points, seed, 8);
            request.tank.floor = Volume::fromLitres(seed % 3);
            request.tank.end = Volume::fromLitres(seed % 7);
            const auto problem = makeProblem(request);
            const auto greedy = test::PriceOnlyGreedy(*problem).run();
            QVERIFY(greedy);
            QVERIFY(keepsBounds(*problem, *greedy));
            const double expected = objective(*problem, *greedy);
            const double found = objective(*problem, search(*problem).purchases);
            QVERIFY(std::fabs(found - expected) < 1e-6);
        }
    }
};

UNDERMARK_TEST(PlanOptimalityTest)
#include "plan_optimality_test.moc"
