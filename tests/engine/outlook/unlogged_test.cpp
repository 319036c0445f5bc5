// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/normal_law.h"
#include "engine/outlook/outlook.h"
#include "engine/tables/fill_log.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

Instant daysIn(double days) { return Instant(std::chrono::seconds(std::llround(days * 86400))); }

constexpr int kLastDay = 80;

// Every tenth day a full fill after 450 km, give or take; the last one on day 80.
VehicleLog fillsOnly()
{
    VehicleLog log;
    log.vehicle.value.capacity = Volume::fromLitres(55);
    log.vehicle.value.zeroMark = Volume::fromLitres(6);
    for (const char* mode : kStandardModes)
        log.modes.push_back({{}, {}, Mode{mode, std::nullopt}});
    double km = 10'000;
    for (int day = 0; day <= kLastDay; day += 10) {
        Fill fill;
        fill.time = daysIn(day);
        fill.volume = Volume::fromLitres(36);
        fill.odometer = Distance::fromKm(km);
        km += day % 20 == 0 ? 400 : 500;
        log.fills.push_back({{}, {}, fill});
    }
    return log;
}

// The same, with every evening's kilometres told.
VehicleLog fillsAndTrips()
{
    VehicleLog log = fillsOnly();
    for (int day = 0; day < kLastDay; ++day) {
        Trip trip;
        trip.time = daysIn(day + 0.9);
        trip.distance = Distance::fromKm(day % 20 < 10 ? 40 : 50);
        trip.mode = kOpenRoad;
        log.trips.push_back({{}, {}, trip});
    }
    return log;
}

Outlook askedAt(const CarKnowledge& car, double day, Question question = {})
{
    question.now.begin = daysIn(day);
    return outlook(car, question).value();
}

Distance sureToDry(const Outlook& now) { return distances(now.toDry).p99; }

bool saysDays(const Outlook& now, int days)
{
    return std::ranges::any_of(now.warnings, [&](const Sentence& warning) {
        return english(warning).starts_with(std::to_string(days) + " days without a record");
    });
}

} // namespace

// The log stops where somebody wrote last, the car does not.
class UnloggedTest : public QObject {
    Q_OBJECT

private slots:
    void onTheDayOfTheRecordNothingIsTakenOff()
    {
        const CarKnowledge car = learn(fillsOnly()).value();
        const Outlook then = askedAt(car, kLastDay);
        const Outlook atNight = askedAt(car, kLastDay + 0.99);
        QVERIFY(!atNight.unlogged && atNight.warnings.empty());
        QCOMPARE(atNight.law.usable, then.law.usable);
        QVERIFY(atNight.law.driven.empty() || atNight.law.driven[0].length == Distance());
    }

    void withoutTodayNothingIsTakenOff()
    {
        QVERIFY(!outlook(learn(fillsOnly()).value(), {})->unlogged);
    }

    void eachDayLowersTheLevelAndWhatIsSure()
    {
        const CarKnowledge car = learn(fillsOnly()).value();
        const Outlook full = askedAt(car, kLastDay);
        Outlook before = full;
        for (int days = 1; days <= 60; ++days) {
            const Outlook now = askedAt(car, kLastDay + days);
            QVERIFY2(now.usable.mean <= before.usable.mean, std::to_string(days).c_str());
            QVERIFY2(sureToDry(now) <= sureToDry(before), std::to_string(days).c_str());
            QVERIFY(distances(now.toDry).p50 <= distances(full.toDry).p50);
            before = now;
        }
        // About 45 km a day, so half a tank after five days.
        const Outlook week = askedAt(car, kLastDay + 5);
        QVERIFY(std::abs(week.unlogged->road->mean.km() - 225) < 15);
        QVERIFY(week.usable.sd > full.usable.sd && sureToDry(week) > Distance());
        // After three usual tanks everything may be gone.
        QCOMPARE(sureToDry(askedAt(car, kLastDay + 30)), Distance());
        QVERIFY(before.usable.mean < 0.02 * full.usable.mean);
    }

    // A trip used up nearly all of the tank; by the log alone the next says it is dry.
    void aNearlyEmptyTankMayBeEmptyTheNextDay()
    {
        VehicleLog log = fillsOnly();
        Trip trip;
        trip.time = daysIn(kLastDay + 1);
        Question onOpenRoad;
        onOpenRoad.mode = kOpenRoad;
        const Outlook full = askedAt(learn(log).value(), kLastDay, onOpenRoad);
        trip.distance = (full.usable.mean - Volume::fromLitres(6)) / full.rate.mean;
        trip.mode = kOpenRoad;
        log.trips.push_back({{}, {}, trip});
        const Outlook next = askedAt(learn(log).value(), kLastDay + 2);
        QVERIFY(next.unlogged->mayBeAll);
        QVERIFY(english(next.warnings.at(0)).starts_with("A day without a record"));
        log.trips[0].value.distance = Distance::fromKm(900);
        QVERIFY(!askedAt(learn(log).value(), kLastDay + 2).unlogged);
    }

    void whatIsToldOfTodayTakesItAway()
    {
        const CarKnowledge car = learn(fillsOnly()).value();
        Question odometer, litres;
        odometer.odometer = *car.log.fills.back().value.odometer + Distance::fromKm(120);
        litres.usable = Estimate<Volume>{Volume::fromLitres(30), Volume()};
        for (const Question& question : {odometer, litres}) {
            const Outlook now = askedAt(car, kLastDay + 25, question);
            QVERIFY(!now.unlogged && now.warnings.empty());
            Question onTheDay = question;
            onTheDay.now.begin = daysIn(kLastDay);
            QCOMPARE(now.law.usable, outlook(car, onTheDay)->law.usable);
        }
    }

    // A tank takes ten days, and after nine it may be empty (the 99 % point).
    void aSilenceLongerThanUsualOrThanTheTankIsSaidAndTheOdometerAskedFor()
    {
        const CarKnowledge car = learn(fillsOnly()).value();
        QVERIFY(askedAt(car, kLastDay + 6).warnings.empty());
        const Outlook due = askedAt(car, kLastDay + 9);
        QVERIFY(due.unlogged->mayBeAll && !due.unlogged->longerThanUsual && saysDays(due, 9));
        const Outlook late = askedAt(car, kLastDay + 11);
        QVERIFY(saysDays(late, 11) && late.unlogged->longerThanUsual);
        QVERIFY(english(late.warnings[0]).find("tell the odometer") != std::string::npos);
    }

    // Told in the evening, so that each day's road is told for a tenth of the stretch too late.
    void whoLogsEveryTripHasDrivenNothingUntilTheSilenceIsLongerThanUsual()
    {
        const CarKnowledge car = learn(fillsAndTrips()).value();
        QVERIFY(askedAt(car, kLastDay + 1).unlogged->road->mean < Distance::fromKm(5));
        const Outlook week = askedAt(car, kLastDay + 8);
        QVERIFY(saysDays(week, 8));
        QVERIFY(std::abs(week.unlogged->road->mean.km() - 7 * 45) < 20);
    }

    void whoLogsTripsWhenFillingHasDrivenAllOfTheDaysSince()
    {
        VehicleLog log = fillsAndTrips();
        for (Entry<Trip>& trip : log.trips)
            trip.value.time = daysIn(10 * std::ceil(std::chrono::duration<double>(
                                              trip.value.time.time_since_epoch()).count() / 864000.0));
        const Outlook now = askedAt(learn(log).value(), kLastDay + 5);
        QVERIFY(std::abs(now.unlogged->road->mean.km() - 225) < 15);
    }

    void aPartialFillWithoutItsOdometerTellsNoRoad()
    {
        VehicleLog log = fillsOnly();
        Fill some;
        some.time = daysIn(kLastDay + 7);
        some.volume = Volume::fromLitres(10);
        some.extent = FillExtent::partial;
        log.fills.push_back({{}, {}, some});
        const Outlook now = askedAt(learn(log).value(), kLastDay + 7);
        QCOMPARE(now.unlogged->silence, std::chrono::days(7));
    }

    void whereNoStretchTellsHowFarTheCarGoesThatIsSaid()
    {
        VehicleLog log = fillsOnly();
        log.fills.erase(log.fills.begin(), log.fills.end() - 1);
        const CarKnowledge car = learn(log).value();
        const Outlook now = askedAt(car, kLastDay + 20);
        QVERIFY(saysDays(now, 20) && now.unlogged && !now.unlogged->road);
        QCOMPARE(now.law.usable, askedAt(car, kLastDay).law.usable);
    }

    // An odometer typed with a digit too many says nothing of a day.
    void aDoubtedStretchDoesNotCount()
    {
        VehicleLog log = fillsOnly();
        Fill typo = log.fills.back().value;
        typo.time = daysIn(kLastDay + 10);
        typo.odometer = *typo.odometer + Distance::fromKm(4'500);
        log.fills.push_back({{}, {}, typo});
        const CarKnowledge car = learn(log).value();
        QVERIFY(!car.consumption.flags.empty());
        const auto unlogged = askedAt(car, kLastDay + 14).unlogged;
        QVERIFY(unlogged->road->mean < Distance::fromKm(230));
        QVERIFY(std::abs(unlogged->road->mean.km() - 4 * 45) < 5); // as without it
    }

    // Of shape 1 the gamma law is the exponential one: with mean m held to L the mean is
    // m (1 - exp(-L / m)), the 99 % point m ln 100.
    void ofShapeOneTheRoadIsExponential()
    {
        const DailyRoad daily{40, 1 / (1 + 10 / 200.0), 10, 200, 0};
        const Estimate<Distance> free = roadOf(10, daily, Distance::fromKm(1e5));
        QVERIFY(std::abs(free.mean.km() - 400) < 1e-6);
        QVERIFY(std::abs(free.mean.km() + kSureQuantile * free.sd.km() - 400 * std::log(100)) < 1e-6);
        const Estimate<Distance> held = roadOf(10, daily, Distance::fromKm(300));
        QVERIFY(std::abs(held.mean.km() - 400 * (1 - std::exp(-300.0 / 400))) < 1e-6);
        QVERIFY(std::abs(held.mean.km() + kSureQuantile * held.sd.km() - 300) < 1e-6);
    }

    void theRoadIsHeldToTheTank()
    {
        const DailyRoad daily{40, 0.25, 10, 200, 0};
        const Estimate<Distance> gone = roadOf(1000, daily, Distance::fromKm(600));
        QVERIFY(gone.mean <= Distance::fromKm(600) && gone.mean > Distance::fromKm(595));
        QCOMPARE(roadOf(5, daily, Distance()).mean, Distance());
    }

    // Real logs (shared/data/SOURCES.md): on every day between two fills, the kilometres since
    // the first of them, even over the days, against the law learnt from the fills before it.
    // What is even is the mean, which in a law that leans this way is more than half reach.
    void onRealLogsTheRoadStaysWithinItsSurePoint_data()
    {
        QTest::addColumn<QString>("log");
        for (const char* name : {"fills_2012_2018.csv", "logs/minivan_fills.csv", "logs/wagon_fills.csv"})
            QTest::newRow(name) << name;
    }
    void onRealLogsTheRoadStaysWithinItsSurePoint()
    {
        QFETCH(QString, log);
        const std::string file = UNDERMARK_SHARED_DATA "/" + log.toStdString();
        if (!std::filesystem::exists(file))
            QSKIP("the shared open data is not beside the checkout");
        const std::vector<Interval> stretches = intervalsFrom(readFillLog(file).value().rows, {});
        const Distance far = Distance::fromKm(1e6);
        int days = 0, withinSure = 0, withinEven = 0;
        for (std::size_t i = 10; i < stretches.size(); ++i) {
            const auto daily = dailyRoad(std::span(stretches).first(i), {});
            const int length = int(daysBetween(stretches[i].begin, stretches[i].end));
            for (int day = 1; day <= length; ++day, ++days) {
                const Estimate<Distance> road = roadOf(day, *daily, far);
                const Distance real = stretches[i].distance * (double(day) / length);
                withinSure += real <= road.mean + kSureQuantile * road.sd;
                withinEven += real <= road.mean;
            }
        }
        const double sure = double(withinSure) / days, even = double(withinEven) / days;
        const std::string found = "within: " + std::to_string(sure) + ", " + std::to_string(even);
        qInfo("%d days, %s", days, found.c_str());
        QVERIFY2(sure >= 0.985, found.c_str());
        QVERIFY2(even >= 0.5 && even < 0.8, found.c_str());
    }
};

UNDERMARK_TEST(UnloggedTest)
#include "unlogged_test.moc"
