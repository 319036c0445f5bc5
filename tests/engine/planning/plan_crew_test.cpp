// SPDX-License-Identifier: GPL-3.0-or-later
//
// The crew's cans beside one's own, and places that sell on some days only.
#include "engine/planning/left_of_plan.h"
#include "engine/planning/search/timetable.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <functional>
#include <random>

using namespace undermark;
using namespace std::chrono_literals;

namespace {

constexpr double kRate_lPerKm = 0.1, kCan_l = 5;

// Places for cans only: no pump, exact litres.
PlanRequest cansOnly(const std::vector<double>& legs_km, const std::vector<FuelSource>& fuel)
{
    PlanRequest request;
    double at = 0;
    for (std::size_t i = 0; i <= legs_km.size(); ++i) {
        RoutePoint point;
        point.at = Distance::fromKm(at);
        point.name = std::to_string(i);
        point.fuel = i < fuel.size() ? fuel[i] : FuelSource::none;
        request.route.points.push_back(point);
        at += i < legs_km.size() ? legs_km[i] : 0;
    }
    request.tank.capacity = Volume::fromLitres(20);
    request.rates = RateModel::single({Consumption::fromLitresPerKm(kRate_lPerKm), Consumption()});
    request.aim = Aim::stops;
    request.canVolume = Volume::fromLitres(kCan_l);
    return request;
}

// The fewest stops of all ways to pour whole cans; nothing where none reaches the finish.
std::optional<int> fewestByTrying(const PlanRequest& request)
{
    const auto& points = request.route.points;
    std::optional<int> fewest;
    const std::function<void(std::size_t, double, int, int, int)> go = [&](std::size_t i, double level, int own, int crew, int stops) {
        if (i + 1 == points.size()) {
            fewest = std::min(fewest.value_or(stops), stops);
            return;
        }
        const double leg = kRate_lPerKm * (points[i + 1].at - points[i].at).km();
        const int most = points[i].fuel == FuelSource::can ? own : points[i].fuel == FuelSource::crew ? crew : 0;
        for (int cans = 0; cans <= most; ++cans) {
            const double after = level + cans * kCan_l;
            if (after > request.tank.capacity.litres() + 1e-9 || after < leg - 1e-9)
                continue;
            const bool isCrew = points[i].fuel == FuelSource::crew;
            go(i + 1, after - leg, own - (isCrew ? 0 : cans), crew - (isCrew ? cans : 0), stops + (cans > 0));
        }
    };
    go(0, request.tank.start.mean.litres(), request.cans, request.crewCans, 0);
    return fewest;
}

// Minute by minute, by the words: it opens at `opens` on each day from the first to the last.
double waitByCounting(const planning::Timetable::Window& hours, int clock)
{
    const double open = hours.closes > hours.opens ? hours.closes - hours.opens : hours.closes - hours.opens + 1440;
    for (int wait = 0; wait < 10 * 1440; ++wait)
        for (int day = -3; day <= 12; ++day) {
            const double opens = day * 1440 + hours.opens;
            if (day >= hours.firstDay && day <= hours.lastDay && clock + wait >= opens && clock + wait <= opens + open)
                return wait;
        }
    return std::numeric_limits<double>::infinity();
}

} // namespace

class PlanCrewTest : public QObject {
    Q_OBJECT
private slots:
    void cansOfBothKindsArePouredAsTriedInAllWays()
    {
        std::mt19937 random(16);
        const auto among = [&](int count) { return int(random() % unsigned(count)); };
        int feasible = 0, both = 0;
        for (int i = 0; i < 400; ++i) {
            std::vector<double> legs;
            std::vector<FuelSource> fuel{FuelSource::none};
            for (int k = 0; k < 6; ++k) {
                legs.push_back(20 + among(7) * 15);
                fuel.push_back(among(3) == 0 ? FuelSource::none : among(2) == 0 ? FuelSource::can : FuelSource::crew);
            }
            PlanRequest request = cansOnly(legs, fuel);
            request.tank.start.mean = Volume::fromLitres(8 + among(12));
            request.cans = among(5);
            request.crewCans = among(7);
            const auto found = plan(request);
            QVERIFY(found);
            const auto expected = fewestByTrying(request);
            QCOMPARE(found->feasible, expected.has_value());
            if (!expected)
                continue;
            QCOMPARE(int(found->stops.size()), *expected);
            const int own = cansPoured(request, *found, FuelSource::can), crew = cansPoured(request, *found, FuelSource::crew);
            QVERIFY(own <= request.cans && crew <= request.crewCans);
            ++feasible;
            both += own > 0 && crew > 0;
        }
        QVERIFY2(feasible > 60 && both > 15, qPrintable(QString("%1 feasible, %2 with both").arg(feasible).arg(both)));
    }

    void whatIsPouredIsNotThereAgainOnTheWay()
    {
        PlanRequest request = cansOnly({100, 100, 100, 100}, {FuelSource::none, FuelSource::crew, FuelSource::can, FuelSource::crew});
        request.tank.start.mean = Volume::fromLitres(15);
        request.cans = 2;
        request.crewCans = 3;
        const auto whole = plan(request);
        QVERIFY(whole && whole->feasible);
        const auto left = leftOfPlan(request, *whole, Distance::fromKm(250));
        QVERIFY(left);
        QCOMPARE(left->cans, 2 - cansPoured(request, *whole, FuelSource::can, Distance::fromKm(250)));
        QCOMPARE(left->crewCans, 3 - cansPoured(request, *whole, FuelSource::crew, Distance::fromKm(250)));
        QVERIFY(left->cans + left->crewCans < 5);
        request.rules.zonesOnly = true; // the crew pours in no zone
        QVERIFY(!plan(request)->feasible);
    }

    void theCrewHasItsOwnTimetable()
    {
        PlanRequest request = cansOnly({60, 100}, {FuelSource::none, FuelSource::crew});
        request.tank.start.mean = Volume::fromLitres(10);
        request.crewCans = 2;
        request.speed = Speed::fromKmPerHour(60);
        request.departure = Minutes(8 * 60); // there at 09:00
        request.route.points[1].opens = Minutes(9 * 60 + 30);
        request.route.points[1].closes = Minutes(11 * 60);
        QVERIFY(!plan(request)->feasible);
        request.mostWait = Minutes(40);
        const auto waits = plan(request);
        QVERIFY(waits->feasible && std::abs(waits->stops[0].wait.count() - 30) < 1e-6);
        request.departure = Minutes(10 * 60 + 30);
        QVERIFY(!plan(request)->feasible); // it has gone
    }

    void aWindowOpensOnItsDaysOnly()
    {
        std::mt19937 random(27);
        for (int i = 0; i < 3000; ++i) {
            planning::Timetable table;
            table.onTheWay = {0};
            planning::Timetable::Window hours{double(random() % 1440), double(random() % 1440)};
            if (hours.opens == hours.closes)
                continue;
            if (random() % 3)
                hours.firstDay = double(random() % 4);
            if (random() % 3)
                hours.lastDay = std::max(hours.firstDay, 0.0) + double(random() % 3);
            table.hours = {hours};
            const int clock = int(random() % (5 * 1440));
            const double expected = waitByCounting(hours, clock);
            const double wait = table.waitAt(0, clock);
            QVERIFY2(wait == expected || std::abs(wait - expected) < 1e-6,
                     qPrintable(QString("%1 to %2, days %3 to %4, at %5: %6, counted %7").arg(hours.opens).arg(hours.closes)
                                    .arg(hours.firstDay).arg(hours.lastDay).arg(clock).arg(wait).arg(expected)));
        }
    }

    // A zone that is there on the second day only, by night reached too early.
    void aPlaceWithADate()
    {
        PlanRequest request = cansOnly({100, 100}, {FuelSource::none, FuelSource::zone});
        request.tank.start.mean = Volume::fromLitres(15);
        request.speed = Speed::fromKmPerHour(50);
        request.departure = Minutes(21 * 60); // there at 23:00
        request.departureDay = std::chrono::sys_days(2026y / 12 / 5);
        request.route.points[1].firstDay = request.route.points[1].lastDay = std::chrono::sys_days(2026y / 12 / 6);
        QVERIFY(!plan(request)->feasible);
        request.mostWait = Minutes(60);
        const auto waits = plan(request);
        QVERIFY(waits->feasible && std::abs(waits->stops[0].wait.count() - 60) < .5);
        request.mostWait = Minutes(30);
        request.route.points[1].firstDay = request.route.points[1].lastDay = std::chrono::sys_days(2026y / 12 / 5);
        QVERIFY(plan(request)->feasible);
        request.departureDay = std::chrono::sys_days(2026y / 12 / 4);
        QVERIFY(!plan(request)->feasible);
        request.departureDay = std::chrono::sys_days(2026y / 12 / 6);
        QVERIFY(!plan(request)->feasible); // it was yesterday
        request.departureDay.reset();
        const auto undated = plan(request);
        QVERIFY(undated->feasible);
        QVERIFY(english(undated->notes.at(0)).starts_with("dates are not looked at"));
        // On the way over midnight the day is another.
        request.departureDay = std::chrono::sys_days(2026y / 12 / 5);
        request.departure = Minutes(23 * 60 + 30);
        request.route.points[1].firstDay = request.route.points[1].lastDay = std::chrono::sys_days(2026y / 12 / 6);
        const auto over = plan(request);
        QVERIFY(over->feasible);
        const auto left = leftOfPlan(request, *over, Distance::fromKm(50));
        QVERIFY(left && left->departureDay == std::chrono::sys_days(2026y / 12 / 6));
        QVERIFY(std::abs(left->departure->count() - 30) < 1e-6);
        QVERIFY(plan(*left)->feasible);
    }
};

UNDERMARK_TEST(PlanCrewTest)
#include "plan_crew_test.moc"
