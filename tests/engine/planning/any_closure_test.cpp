// SPDX-License-Identifier: GPL-3.0-or-later
//
// A plan that survives any one closure: the least cost by dynamic programming over whole litres,
// which shares nothing with the planner, and by driving what is left of each closed stop.
#include "engine/planning/any_closure.h"
#include "tests/support/road_driver.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

constexpr int kTank = 12; // L, and so many legs of 10 km at 10 L/100 km

struct SmallRoad {
    std::vector<int> price; // of the pump at each 10 km; 0: none. The last is the finish.
    int start;              // L
    int stopCost;
};

SmallRoad roadOf(unsigned seed)
{
    std::mt19937 random(seed);
    const auto below = [&](int n) { return int(random() % unsigned(n)); };
    SmallRoad road{std::vector<int>(std::size_t(12 + below(14))), 2 + below(kTank - 2), below(6)};
    for (int& price : road.price)
        price = below(5) < 2 ? 1 + below(9) : 0;
    road.price.front() = road.price.back() = 0;
    return road;
}

PlanRequest requestOf(const SmallRoad& road)
{
    PlanRequest request;
    for (std::size_t i = 0; i < road.price.size(); ++i) {
        RoutePoint point;
        point.at = Distance::fromKm(10.0 * double(i));
        point.name = "p" + std::to_string(i);
        if (road.price[i] > 0) {
            point.fuel = FuelSource::pump;
            point.pricePerLitre = road.price[i];
        }
        request.route.points.push_back(point);
    }
    request.tank.capacity = Volume::fromLitres(kTank);
    request.tank.start.mean = Volume::fromLitres(road.start);
    request.rates = RateModel::single({Consumption::fromLitresPer100Km(10), Consumption()});
    request.stopCost = road.stopCost;
    return request;
}

// Litres on arrival at a closed pump that reach the next one, or the finish.
int toNext(const SmallRoad& road, std::size_t pump)
{
    std::size_t next = pump + 1;
    while (next + 1 < road.price.size() && road.price[next] == 0)
        ++next;
    return int(next - pump);
}

// The least cost of a way on which each stop is arrived at with enough for the next pump.
std::optional<int> leastCost(const SmallRoad& road)
{
    constexpr int kNever = 1 << 20;
    std::vector<int> cost(kTank + 1, kNever); // by litres
    cost[std::size_t(road.start)] = 0;
    for (std::size_t i = 0; i < road.price.size(); ++i) {
        if (road.price[i] > 0) {
            std::vector<int> left = cost;
            for (int had = toNext(road, i); had <= kTank; ++had) {
                for (int litres = 1; had + litres <= kTank; ++litres) {
                    int& best = left[std::size_t(had + litres)];
                    best = std::min(best, cost[std::size_t(had)] + road.stopCost + litres * road.price[i]);
                }
            }
            cost = left;
        }
        if (i + 1 == road.price.size())
            break;
        cost.erase(cost.begin()); // a litre is burnt
        cost.push_back(kNever);
    }
    const int least = *std::ranges::min_element(cost);
    return least < kNever ? std::optional(least) : std::nullopt;
}

} // namespace

class AnyClosureTest : public QObject {
    Q_OBJECT
private slots:
    void itIsTheCheapestThatSurvives()
    {
        int plans = 0, dearer = 0;
        for (unsigned seed = 1; seed <= 400; ++seed) {
            const SmallRoad road = roadOf(seed);
            const auto oracle = leastCost(road);
            const PlanRequest request = requestOf(road);
            const auto safe = planForAnyClosure(request);
            const auto usual = plan(request);
            QVERIFY(safe.has_value() && usual.has_value());
            QVERIFY2(safe->plan.feasible == oracle.has_value(), qPrintable(QString::number(seed)));
            if (!oracle)
                continue;
            ++plans;
            QVERIFY2(std::fabs(safe->plan.cost - *oracle) < 1e-4,
                     qPrintable(QString("seed %1: %2, not %3").arg(seed).arg(safe->plan.cost).arg(*oracle)));
            dearer += safe->plan.cost > usual->cost + 1e-4;
        }
        qInfo("%d roads with such a plan, dearer than the usual one on %d", plans, dearer);
        QVERIFY(plans > 120 && dearer > 30);
    }

    // With spread, detours and full tanks: at each stop, closed, the rest is driven.
    void whateverIsClosedTheRestIsDriven()
    {
        int stops = 0;
        for (unsigned seed = 1; seed <= 12; ++seed) {
            PlanRequest request = requestOf(roadOf(seed + 1000));
            request.tank.capacity = Volume::fromLitres(18);
            request.tank.start = {Volume::fromLitres(9), Volume::fromLitres(0.3)};
            request.tank.fullSd = Volume::fromLitres(0.2);
            request.rates = RateModel::single(
                {Consumption::fromLitresPer100Km(10), Consumption::fromLitresPer100Km(0.5)}, 0.03);
            request.confidence = Probability::of(0.97);
            for (std::size_t i = 3; i < request.route.points.size(); i += 4)
                request.route.points[i].detour = Distance::fromKm(4);
            const auto safe = planForAnyClosure(request);
            QVERIFY(safe.has_value());
            for (const ClosedStop& closed : safe->closed) {
                ++stops;
                QVERIFY(closed.plan.feasible);
                QCOMPARE(closed.request.route.points.front().fuel, FuelSource::none);
                PlanRequest toNext = closed.request; // its first leg: one arrival, one risk
                const std::size_t next = closed.plan.stops.empty() ? toNext.route.points.size() - 1
                                                                   : closed.plan.stops.front().point;
                if (next == 0 || closed.plan.passages[next].margin > Volume::fromLitres(0.05))
                    continue; // not at the edge of what is allowed
                QVERIFY(closed.plan.passages[next].dry <= 0.03 + 1e-6);
            }
        }
        QVERIFY2(stops >= 10, qPrintable(QString::number(stops)));
    }

    void aPumpWithoutAnotherBehindItIsNotReliedUpon()
    {
        // 60 km behind the pump, and 3 L on arrival there: closed, it would be the end.
        PlanRequest request = requestOf({{0, 0, 0, 5, 0, 0, 0, 0, 0, 0}, 6, 0});
        const auto usual = plan(request);
        const auto safe = planForAnyClosure(request);
        QVERIFY(usual->feasible && !safe->plan.feasible);
        request.tank.start.mean = Volume::fromLitres(9);
        QVERIFY(planForAnyClosure(request)->plan.feasible); // without a stop at all
    }
};

UNDERMARK_TEST(AnyClosureTest)
#include "any_closure_test.moc"
