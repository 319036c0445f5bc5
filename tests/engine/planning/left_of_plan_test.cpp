// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/planning/left_of_plan.h"
#include "engine/planning/what_if.h"
#include "tests/support/plan_oracles.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

// A way with full tanks, partial fills, detours and two modes.
PlanRequest dayOf(unsigned seed)
{
    PlanRequest request = test::withRisk(test::longRoute(14, seed, 90));
    request.rates.modes = {"road", "town"};
    request.rates.mean = {Consumption::fromLitresPer100Km(7), Consumption::fromLitresPer100Km(10)};
    request.rates.covariance = {2e-5, 1e-5, 1e-5, 4e-5};
    for (std::size_t i = 0; i < request.route.points.size(); ++i) {
        RoutePoint& point = request.route.points[i];
        point.name = "p" + std::to_string(i);
        point.mode = i % 3 ? "road" : "town";
        if (i % 4 == 1)
            point.detour = Distance::fromKm(3);
    }
    request.tank.driven = {{Distance::fromKm(35), 1}};
    request.stopCost = seed % 2 ? 2.0 : 0.0;
    return request;
}

bool isNear(Volume a, Volume b)
{
    return std::fabs((a - b).litres()) < 1e-6;
}

} // namespace

class LeftOfPlanTest : public QObject {
    Q_OBJECT
private slots:
    // Whoever drives as planned, and plans anew anywhere, is told the same as before.
    void drivenAsPlannedNothingChanges()
    {
        int asked = 0, fulls = 0;
        for (unsigned seed = 1; seed <= 12; ++seed) {
            const PlanRequest request = dayOf(seed);
            const auto whole = plan(request);
            QVERIFY(whole.has_value());
            if (!whole->feasible)
                continue;
            fulls += int(std::ranges::count_if(whole->stops, &PlannedStop::known));
            const auto& points = request.route.points;
            for (const double share : {0.11, 0.37, 0.5, 0.83}) {
                const std::size_t behind = std::size_t(share * double(points.size()));
                for (const Distance here : {points[behind].at, points[behind].at + Distance::fromKm(1.5)}) {
                    const auto left = leftOfPlan(request, *whole, here);
                    QVERIFY(left.has_value());
                    const auto rest = plan(*left);
                    QVERIFY(rest && rest->feasible);
                    ++asked;
                    const std::size_t more = points.size() - left->route.points.size();
                    for (std::size_t i = 1; i < rest->passages.size(); ++i) {
                        const Passage& is = rest->passages[i];
                        const Passage& was = whole->passages[i + more];
                        QVERIFY(isNear(is.arrive.mean, was.arrive.mean) && isNear(is.arrive.sd, was.arrive.sd));
                        QVERIFY(std::fabs(is.dry - was.dry) < 1e-9);
                    }
                    std::vector<Sentence> changes = planChanges(request, *whole, *left, *rest);
                    std::erase_if(changes, [](const Sentence& s) { return s.pattern.starts_with("Risk"); });
                    QVERIFY(changes.empty()); // the risk is of less of a way
                }
            }
        }
        QVERIFY2(asked >= 40 && fulls >= 10, qPrintable(QString("%1, %2 full").arg(asked).arg(fulls)));
    }

    void whatChangedIsSaidByStop()
    {
        const PlanRequest request = dayOf(3);
        const auto was = plan(request);
        QVERIFY(was->feasible && !was->stops.empty());
        const std::string name = request.route.points[was->stops.back().point].name;
        const auto closed = whatIfClosed(request, name);
        QVERIFY(closed && closed->plan.feasible);
        std::string text;
        for (const Sentence& sentence : planChanges(request, *was, closed->request, closed->plan))
            text += english(sentence) + "\n";
        QVERIFY2(text.find(name + ": no stop any more.") != std::string::npos, text.c_str());
        QVERIFY2(text.find("which was not planned.") != std::string::npos || text.find("instead of") != std::string::npos,
                 text.c_str());
        PlanRequest empty = request;
        empty.tank.start.mean = Volume();
        for (RoutePoint& point : empty.route.points)
            point.fuel = FuelSource::none;
        const auto none = plan(empty);
        const auto lost = planChanges(request, *was, empty, *none);
        QCOMPARE(lost.size(), std::size_t(1));
        QCOMPARE(english(lost[0]), std::string("There is no plan any more."));
    }

    // At a place with a stop that stop is still to be made.
    void aStopHereIsNotMadeYet()
    {
        const PlanRequest request = dayOf(5);
        const auto whole = plan(request);
        QVERIFY(whole->feasible && !whole->stops.empty());
        const PlannedStop& stop = whole->stops.front();
        const auto left = leftOfPlan(request, *whole, request.route.points[stop.point].at);
        QVERIFY(left && isNear(left->tank.start.mean, whole->passages[stop.point].arrive.mean));
        QVERIFY(!leftOfPlan(request, *whole, Distance::fromKm(1e6)));
    }
};

UNDERMARK_TEST(LeftOfPlanTest)
#include "left_of_plan_test.moc"
