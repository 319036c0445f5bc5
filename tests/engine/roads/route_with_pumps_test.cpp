// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/route_with_pumps.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;
using namespace std::chrono_literals;

namespace {

PumpAlong pumpAt(double km, const char* name, const char* hours = "")
{
    PumpAlong pump;
    pump.at = Distance::fromKm(km);
    pump.detour = Distance::fromKm(.4);
    pump.pump.name = name;
    pump.pump.position = {1, km};
    pump.hours = OpeningHours::parse(hours);
    return pump;
}

RouteFile road()
{
    RouteFile file;
    for (const auto& [km, mode] : {std::pair(0.0, "open-road"), std::pair(60.0, "motorway"), std::pair(120.0, "")}) {
        RoutePoint point;
        point.at = Distance::fromKm(km);
        point.name = "P" + std::to_string(int(km));
        point.mode = mode;
        file.route.points.push_back(point);
        file.positions.push_back({0, km});
    }
    return file;
}

// Monday, 23 March 2026; 60 km/h.
DriveClock clockAt(int hour, Distance from = {}, std::vector<ModeSpeed> modeSpeeds = {}, Minutes rest = {})
{
    PlanRequest way;
    way.route = road().route;
    way.route.points[1].rest = rest;
    way.departure = Minutes(60.0 * hour);
    way.speed = Speed::fromKmPerHour(60);
    way.modeSpeeds = std::move(modeSpeeds);
    return {2026y / 3 / 23, std::move(way), from};
}
const DriveClock kClock = clockAt(8);

} // namespace

class RouteWithPumpsTest : public QObject {
    Q_OBJECT
private slots:

    void pumpsStandInOrder()
    {
        const RouteWithPumps with = withPumps(road(), {pumpAt(10, "A"), pumpAt(60, "B"), pumpAt(90, "A"), pumpAt(120, "C")}, {});
        const auto& points = with.file.route.points;
        QCOMPARE(points.size(), std::size_t(7));
        const std::vector<std::string> names{"P0", "A km 10.0", "P60", "B", "A km 90.0", "C", "P120"};
        for (std::size_t i = 0; i < names.size(); ++i) {
            QCOMPARE(points[i].name, names[i]);
            QCOMPARE(with.file.positions[i].longitude, points[i].at.km());
        }
        QCOMPARE(points[1].mode, std::string("open-road"));
        QCOMPARE(points[4].mode, std::string("motorway"));
        QCOMPARE(int(points[3].fuel), int(FuelSource::pump));
        QCOMPARE(points[1].detour->km(), .4);
        QVERIFY(!points[1].opens);
        QVERIFY(checkRoute(with.file.route));
        QVERIFY(with.notes.empty());
    }

    void hoursOfTheDayOnWhichItIsPassed()
    {
        const RouteWithPumps with = withPumps(
            road(),
            {pumpAt(30, "Open", "Mo-Fr 06:00-20:00"), pumpAt(40, "Later", "Mo-Fr 09:00-20:00"),
             pumpAt(50, "Over", "Mo-Fr 06:00-08:30"), pumpAt(60, "Sunday", "Su 06:00-20:00"),
             pumpAt(70, "Always", "24/7"), pumpAt(80, "Silent")},
            kClock);
        const auto named = [&](const char* name) {
            const auto& points = with.file.route.points;
            const auto found = std::ranges::find(points, name, &RoutePoint::name);
            return found == points.end() ? nullptr : &*found;
        };
        QCOMPARE(named("Open")->opens->count(), 360.0);
        QCOMPARE(named("Open")->closes->count(), 1200.0);
        QCOMPARE(named("Later")->opens->count(), 540.0);
        QVERIFY(!named("Over"));
        QVERIFY(!named("Sunday"));
        QVERIFY(!named("Always")->opens && !named("Silent")->opens);
        QCOMPARE(with.notes.size(), std::size_t(3)); // two closed, one that tells no hours
        QCOMPARE(int(arrivalAt(pumpAt(40, "Later", "Mo-Fr 09:00-20:00"), kClock).state), int(OnArrival::closed));
        QCOMPARE(int(arrivalAt(pumpAt(30, "Silent"), kClock).state), int(OnArrival::unknown));
        // After a rest of a day it is Tuesday.
        const DriveClock rested = clockAt(8, {}, {}, Minutes(24 * 60));
        QCOMPARE(int(arrivalAt(pumpAt(90, "Tuesday", "Tu 06:00-20:00"), rested).state), int(OnArrival::open));
    }

    // By hand: 60 km at 60, then at 120 km/h behind a rest of half an hour; from km 30 half an hour less.
    void passedByThePlannersClock()
    {
        const auto passed = [](const DriveClock& clock, double km) { return clock.passing(Distance::fromKm(km)).count(); };
        QCOMPARE(passed(kClock, 30), 8 * 60 + 30.0);
        const std::vector<ModeSpeed> fast{{"motorway", Speed::fromKmPerHour(120)}};
        const DriveClock way = clockAt(8, {}, fast, Minutes(30));
        QCOMPARE(passed(way, 60), 9 * 60.0);
        QCOMPARE(passed(way, 100), 9 * 60 + 30 + 20.0);
        QCOMPARE(passed(clockAt(8, Distance::fromKm(30), fast, Minutes(30)), 100), 9 * 60 + 20.0);
        QCOMPARE(passed(clockAt(8, Distance::fromKm(30)), 10), 8 * 60.0);
    }

    // (2 x prior + open) / (2 + known)
    void chances()
    {
        const std::vector<PumpAlong> pumps{pumpAt(1, "a", "06:00-20:00"), pumpAt(2, "b", "10:00-20:00"), pumpAt(3, "c")};
        QVERIFY(std::fabs(chanceOfBeingOpen(pumps, kClock, Distance::fromKm(30)) - (1.8 + 1) / 4) < 1e-12);
        const DriveClock night = clockAt(1);
        QVERIFY(std::fabs(chanceOfBeingOpen(pumps, night, Distance::fromKm(3)) - 1.0 / 4) < 1e-12);
        QVERIFY(std::fabs(chanceOfBeingOpen({}, kClock, Distance()) - .9) < 1e-12);
    }
};

UNDERMARK_TEST(RouteWithPumpsTest)
#include "route_with_pumps_test.moc"
