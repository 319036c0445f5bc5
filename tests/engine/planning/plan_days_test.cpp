// SPDX-License-Identifier: GPL-3.0-or-later
//
// The clock of a way over several days: a speed for each mode, rests, due times.
#include "engine/planning/left_of_plan.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

RoutePoint place(double km, const char* name, const char* mode = "road")
{
    RoutePoint point;
    point.at = Distance::fromKm(km);
    point.name = name;
    point.mode = mode;
    return point;
}

// 16:00 off; 120 km of road at 60 km/h, 60 km of stage at 90 km/h, ten hours of rest, 90 km of road.
PlanRequest twoDays()
{
    PlanRequest request;
    request.route.points = {place(0, "start"), place(120, "stage", "stage"), place(180, "camp"), place(270, "end")};
    request.route.points[2].rest = Minutes(600);
    request.tank.capacity = Volume::fromLitres(40);
    request.tank.start.mean = Volume::fromLitres(35);
    request.rates = RateModel::single({Consumption::fromLitresPer100Km(10), Consumption()});
    request.aim = Aim::stops;
    request.speed = Speed::fromKmPerHour(60);
    request.modeSpeeds = {{"stage", Speed::fromKmPerHour(90)}};
    request.departure = Minutes(16 * 60);
    return request;
}

double clockAt(const Plan& plan, std::size_t point) { return plan.passages[point].clock->count(); }

} // namespace

class PlanDaysTest : public QObject {
    Q_OBJECT
private slots:
    void theClockKnowsSpeedsAndRests()
    {
        const auto days = plan(twoDays());
        QVERIFY(days && days->feasible);
        QVERIFY(std::fabs(clockAt(*days, 1) - 18 * 60) < 1e-9);
        QVERIFY(std::fabs(clockAt(*days, 2) - (18 * 60 + 40)) < 1e-9); // on arrival, before the rest
        QVERIFY(std::fabs(clockAt(*days, 3) - (28 * 60 + 40 + 90)) < 1e-9);
        QVERIFY(std::fabs((days->finish.mean - Volume::fromLitres(8)).litres()) < 1e-9); // a rest burns nothing
    }

    void dueTimesAreOfTheNearestDay()
    {
        PlanRequest request = twoDays();
        request.route.points[1].due = Minutes(18 * 60 + 10);
        request.route.points[3].due = Minutes(6 * 60); // of the next day: 06:10
        const auto days = plan(request);
        QVERIFY(std::fabs(days->passages[1].late->count() + 10) < 1e-9);
        QVERIFY(std::fabs(days->passages[3].late->count() - 10) < 1e-9);
        QVERIFY(!days->passages[2].late);
        QCOMPARE(days->notes.size(), std::size_t(1));
        QCOMPARE(english(days->notes[0]), std::string("late at end by 10 min"));
        request.departure.reset();
        QCOMPARE(english(plan(request)->notes[0]),
                 std::string("due times are not looked at: they need a departure and a speed"));
    }

    // A pump that is shut for the night sells again after the rest.
    void openingHoursKnowOfTheRest()
    {
        PlanRequest request = twoDays();
        request.tank.start.mean = Volume::fromLitres(25);
        RoutePoint pump = place(200, "pump");
        pump.fuel = FuelSource::pump;
        pump.opens = Minutes(5 * 60);
        pump.closes = Minutes(12 * 60);
        request.route.points.insert(request.route.points.begin() + 3, pump);
        QVERIFY(plan(request)->feasible);
        request.route.points[2].rest.reset(); // it would be passed at 19:00
        QVERIFY(!plan(request)->feasible);
    }

    // Planned on from anywhere, the clock is the same.
    void theClockGoesOn()
    {
        const PlanRequest request = twoDays();
        const auto days = plan(request);
        for (const double km : {30.0, 120.0, 150.0, 200.0}) {
            const auto left = leftOfPlan(request, *days, Distance::fromKm(km));
            const auto rest = plan(*left);
            const double late = clockAt(*rest, rest->passages.size() - 1) - clockAt(*days, 3);
            QVERIFY(std::fabs(std::remainder(late, 24 * 60)) < 1e-6);
        }
    }

    void aSpeedOfAModeNeedsTheOthers()
    {
        PlanRequest request = twoDays();
        request.speed.reset();
        QVERIFY(!plan(request));
        request.modeSpeeds.clear();
        QVERIFY(plan(request).has_value());
    }
};

UNDERMARK_TEST(PlanDaysTest)
#include "plan_days_test.moc"
