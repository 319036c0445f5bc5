// SPDX-License-Identifier: GPL-3.0-or-later
//
// Opening hours: exact against every combination of stops.
#include "engine/planning/search/search.h"
#include "engine/planning/search/solve.h"
#include "tests/support/plan_exhaustive.h"
#include "tests/support/plan_oracles.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;
using namespace undermark::planning;

namespace {

// Six points in one day; about half of them open for an hour or two only.
PlanRequest randomDay(std::mt19937& random, bool pouringTakesTime, bool spread)
{
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    PlanRequest request;
    double km = 0.0;
    for (int i = 0; i <= 5; ++i, km += between(40, 160)) {
        RoutePoint point;
        point.at = Distance::fromKm(km);
        point.fuel = i < 5 ? FuelSource::pump : FuelSource::none;
        point.pricePerLitre = between(1.4, 2.2);
        point.stopTime = Minutes(std::round(between(0, 12)));
        if (between(0, 1) < 0.6) {
            const double opens = 8 * 60 + km * 0.75 + between(-60, 30);
            point.opens = Minutes(std::clamp(opens, 0.0, 1440.0));
            point.closes = Minutes(std::clamp(opens + between(10, 80), 0.0, 1440.0));
        }
        request.route.points.push_back(point);
    }
    request.tank.capacity = Volume::fromLitres(40);
    request.tank.start.mean = Volume::fromLitres(between(10, 25));
    request.stopCost = between(0, 3);
    request.departure = Minutes(8 * 60);
    request.speed = Speed::fromKmPerHour(80);
    if (pouringTakesTime)
        request.pumpFlow = FlowRate::fromLitresPerHour(60 * between(1.5, 8)); // slow: it matters
    request.rates = RateModel::single(
        {Consumption::fromLitresPer100Km(10), Consumption::fromLitresPer100Km(spread ? 0.4 : 0)});
    request.tank.fullSd = Volume::fromLitres(spread ? 0.3 : 0.0);
    request.aim = between(0, 1) < 0.7 ? Aim::cost : Aim::time;
    return request;
}

} // namespace

class PlanHoursTest : public QObject {
    Q_OBJECT
    // Feasible where the oracle finds a plan, and as good to a share of it.
    static void findsTheOptimum(const Solved& found, const std::optional<double>& expected, double share, int day)
    {
        QVERIFY2(expected.has_value() == found.plan.feasible, qPrintable(QString("case %1").arg(day)));
        if (expected)
            QVERIFY2(std::fabs(found.objective - *expected) < share * std::max(1.0, *expected),
                     qPrintable(QString("case %1: found %2, expected %3")
                                    .arg(day)
                                    .arg(found.objective, 0, 'g', 12)
                                    .arg(*expected, 0, 'g', 12)));
    }

private slots:
    void equalsEveryCombinationTriedWithinTheHours_data()
    {
        QTest::addColumn<bool>("pouringTakesTime");
        QTest::addColumn<bool>("spread");
        QTest::newRow("stops take minutes") << false << false;
        QTest::newRow("litres take minutes as well") << true << false;
        QTest::newRow("litres take minutes, with spread") << true << true;
    }

    void equalsEveryCombinationTriedWhereOneMayWait()
    {
        std::mt19937 random(32);
        int feasible = 0, waited = 0;
        for (int i = 0; i < 300; ++i) {
            PlanRequest request = randomDay(random, false, i % 2 == 1);
            request.mostWait = Minutes(i % 3 == 0 ? 20 : 90);
            auto problem = makeProblem(request);
            QVERIFY(problem);
            problem->timetable->minutesPerLitre = 0; // the oracle's waits do not go by litres
            const auto expected = test::Exhaustive(*problem).optimum();
            const Solved found = solve(request, *problem);
            // 1e-6 a point is what breaks ties between waiting here and there.
            findsTheOptimum(found, expected, 1e-5, i);
            if (QTest::currentTestFailed())
                return;
            if (!expected)
                continue;
            ++feasible;
            waited += std::ranges::any_of(found.plan.stops, [](const PlannedStop& stop) {
                return stop.wait > Minutes{};
            });
        }
        QVERIFY2(feasible > 100 && waited > 30,
                 qPrintable(QString("%1 feasible, %2 waited").arg(feasible).arg(waited)));
    }

    void whoComesEarlyWaitsUntilItOpens()
    {
        PlanRequest request = test::longRoute(1, 1, 100);
        auto& points = request.route.points;
        points[0].fuel = FuelSource::none;
        points.insert(points.begin() + 1, points[1]);
        points[1].at = Distance::fromKm(100);
        points[1].fuel = FuelSource::pump;
        points[1].opens = Minutes(10 * 60);
        points[1].closes = Minutes(18 * 60);
        points[2].at = Distance::fromKm(300);
        request.speed = Speed::fromKmPerHour(100);
        request.departure = Minutes(8 * 60 + 15); // there at 09:15
        QVERIFY(!plan(request)->feasible);
        request.mostWait = Minutes(44);
        QVERIFY(!plan(request)->feasible);
        request.mostWait = Minutes(45);
        const auto best = plan(request);
        QVERIFY(best->feasible);
        QCOMPARE(best->stops.front().wait.count(), 45.0);
        // On at 10:00, after pouring; and whatever is waited is time.
        const double poured = pouringTime(request, best->bought).count();
        QVERIFY(std::fabs(best->passages[2].clock->count() - (12 * 60 + poured)) < 1e-6);
        QVERIFY(std::fabs(best->stopTime.count() - (45 + poured)) < 1e-6);
    }

    void idlingTakesTime()
    {
        PlanRequest request = test::longRoute(1, 1, 100);
        auto& points = request.route.points;
        points[0].fuel = FuelSource::none;
        points[0].idle = Minutes(120);
        points.insert(points.begin() + 1, points[1]);
        points[1].at = Distance::fromKm(100);
        points[1].fuel = FuelSource::pump;
        points[1].opens = Minutes(10 * 60 + 30);
        points[1].closes = Minutes(11 * 60 + 30);
        points[1].idle.reset();
        points[2].at = Distance::fromKm(300);
        request.speed = Speed::fromKmPerHour(100);
        request.departure = Minutes(8 * 60); // off at ten, there at eleven
        const auto best = plan(request);
        QVERIFY(best->feasible);
        QCOMPARE(best->passages[1].clock->count(), 11 * 60.0);
    }

    void fromMidnightToMidnightIsAlwaysOpen()
    {
        PlanRequest request = test::longRoute(2, 1, 100);
        request.tank.start.mean = Volume::fromLitres(18);
        request.route.points[0].fuel = FuelSource::none;
        request.route.points[1].at = Distance::fromKm(120);
        request.route.points[2].at = Distance::fromKm(240);
        request.route.points[1].opens = request.route.points[1].closes = Minutes(0);
        request.speed = Speed::fromKmPerHour(60);
        request.departure = Minutes(9 * 60);
        QVERIFY(plan(request)->feasible);
    }

    // Fourteen pumps, stop minutes with decimals, so that no two ways take the same time: there
    // is a plan by cost, so there is one by stops and time, and no worse than it says.
    void everyAimFindsAPlanThroughADayOfDecimals_data()
    {
        QTest::addColumn<int>("aim");
        QTest::addColumn<double>("mostWait");
        for (const double wait : {0.0, 60.0}) {
            QTest::addRow("cost, wait %g min", wait) << int(Aim::cost) << wait;
            QTest::addRow("stops, wait %g min", wait) << int(Aim::stops) << wait;
            QTest::addRow("time, wait %g min", wait) << int(Aim::time) << wait;
        }
    }

    void everyAimFindsAPlanThroughADayOfDecimals()
    {
        QFETCH(int, aim);
        QFETCH(double, mostWait);
        for (unsigned seed = 1; seed <= 4; ++seed) {
            PlanRequest request = test::longRoute(14, seed, 60);
            std::mt19937 random(seed);
            const auto between = [&](double low, double high) {
                return std::uniform_real_distribution<double>(low, high)(random);
            };
            for (RoutePoint& point : request.route.points) {
                point.stopTime = Minutes(between(3, 12));
                point.mostPurchase = Volume::fromLitres(14);
                const double there = 7 * 60 + point.at.km() / 1.2;
                point.opens = Minutes(std::fmod(there - between(0, 40), 1440));
                point.closes = Minutes(std::fmod(there + between(70, 150), 1440));
            }
            request.departure = Minutes(7 * 60);
            request.speed = Speed::fromKmPerHour(72);
            request.mostWait = Minutes(mostWait);
            request.aim = Aim(aim);
            const auto best = plan(request);
            QVERIFY(best && best->feasible);
            for (const PlannedStop& stop : best->stops) { // open, by the clock alone
                const RoutePoint& point = request.route.points[stop.point];
                const double clock = (*best->passages[stop.point].clock + stop.wait).count();
                QVERIFY(clock >= point.opens->count() - 1e-6 && clock <= point.closes->count() + 1e-6);
                QVERIFY(stop.wait.count() <= std::max(mostWait, kDawdle) + 1e-6);
            }
            PlanRequest anyTime = request;
            anyTime.departure.reset();
            const auto bound = plan(anyTime);
            if (aim == int(Aim::cost)) {
                QVERIFY(best->cost - best->tripGap <= bound->cost + 1e-6 || best->tripGap == 0);
                QVERIFY(best->cost >= bound->cost - 1e-6);
            }
        }
    }

    // The figures of "no plan" know that the pump is closed.
    void aClosedPumpIsNotCountedOn()
    {
        PlanRequest request = test::longRoute(1, 1, 100);
        auto& points = request.route.points;
        points[0].fuel = FuelSource::pump;
        points[0].opens = Minutes(60);
        points[0].closes = Minutes(120);
        points[1].at = Distance::fromKm(900);
        request.tank.start.mean = Volume::fromLitres(4);
        request.departure = Minutes(8 * 60);
        request.speed = Speed::fromKmPerHour(60);
        const auto none = plan(request);
        QVERIFY(!none->feasible);
        QVERIFY(std::fabs(none->shortfall->farthest.km() - 50) < 1e-6);
    }

    void equalsEveryCombinationTriedWithinTheHours()
    {
        QFETCH(bool, pouringTakesTime);
        QFETCH(bool, spread);
        std::mt19937 random(31);
        int feasible = 0;
        int changed = 0;
        for (int i = 0; i < 300; ++i) {
            PlanRequest request = randomDay(random, pouringTakesTime, spread);
            const auto problem = makeProblem(request);
            QVERIFY(problem);
            const auto expected = test::Exhaustive(*problem).optimum();
            findsTheOptimum(solve(request, *problem), expected, 1e-6, i);
            if (QTest::currentTestFailed())
                return;
            if (!expected)
                continue;
            ++feasible;
            request.departure.reset();
            changed += solve(request, *makeProblem(request)).objective < *expected - 1e-6;
        }
        QVERIFY2(
            feasible > 60 && changed > 15,
            qPrintable(QString("%1 feasible, %2 changed by hours").arg(feasible).arg(changed)));
    }

    void hoursMaySpanMidnight()
    {
        PlanRequest request = test::longRoute(2, 1, 100);
        request.tank.start.mean = Volume::fromLitres(18);
        request.route.points[0].fuel = FuelSource::none;
        request.route.points[0].stopTime = Minutes(0);
        request.route.points[1].opens = Minutes(22 * 60);
        request.route.points[1].closes = Minutes(2 * 60);
        request.route.points[1].at = Distance::fromKm(120);
        request.route.points[2].at = Distance::fromKm(240);
        request.speed = Speed::fromKmPerHour(60);
        request.departure = Minutes(23 * 60); // there at 01:00
        QVERIFY(plan(request)->feasible);
        request.departure = Minutes(6 * 60);
        QVERIFY(!plan(request)->feasible);
        request.departure = Minutes(20 * 60); // at 22:00 sharp
        QVERIFY(plan(request)->feasible);
    }

    void aStopFoundClosedOnArrivalIsAvoided()
    {
        PlanRequest request = test::longRoute(20, 6, 40);
        request.speed = Speed::fromKmPerHour(60);
        request.departure = Minutes(8 * 60);
        const auto open = plan(request);
        const std::size_t first = open->stops.front().point;
        request.route.points[first].opens = Minutes(23 * 60);
        request.route.points[first].closes = Minutes(23 * 60 + 30);
        const auto closed = plan(request);
        for (const PlannedStop& stop : closed->stops)
            QVERIFY(stop.point != first);
        QVERIFY(closed->cost > open->cost);
        QVERIFY(closed->notes.empty()); // exact: nothing to confess
    }

    // Forty points with hours and different stop minutes: many sums, still exact
    // (no note says otherwise).
    void aLongDayWithHoursEverywhereIsExact()
    {
        PlanRequest request = test::withRisk(test::longRoute(40, 3, 30));
        std::mt19937 random(5);
        for (std::size_t i = 0; i < request.route.points.size(); ++i) {
            RoutePoint& point = request.route.points[i];
            point.stopTime = Minutes(3 + random() % 5);
            const double there = 6 * 60 + point.at.km();
            point.opens = Minutes(std::fmod(there - 30 + double(random() % 60), 1440));
            point.closes = Minutes(std::fmod(there + 60 + double(random() % 60), 1440));
        }
        request.departure = Minutes(6 * 60);
        request.speed = Speed::fromKmPerHour(60);
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        QVERIFY(best->notes.empty());
    }

    void hoursWithoutADepartureAreSaidNotToBeLookedAt()
    {
        PlanRequest request = test::longRoute(20, 6, 40);
        request.route.points[4].opens = Minutes(8 * 60);
        QVERIFY(english(plan(request)->notes.at(0)).find("departure") != std::string::npos);
    }
};

UNDERMARK_TEST(PlanHoursTest)
#include "plan_hours_test.moc"
