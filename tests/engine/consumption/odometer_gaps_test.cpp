// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/odometer_gaps.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class OdometerGapsTest : public QObject {
    Q_OBJECT

    static Fill fill(int day, std::optional<double> odometer_km, std::optional<double> trip_km)
    {
        Fill fill;
        fill.time = Instant(std::chrono::days(20000 + day));
        fill.volume = Volume::fromLitres(40);
        if (odometer_km)
            fill.odometer = Distance::fromKm(*odometer_km);
        if (trip_km)
            fill.sinceLast = Distance::fromKm(*trip_km);
        return fill;
    }

    static std::vector<OdometerGap> gaps(const std::vector<Fill>& fills, const std::vector<Trip>& trips = {})
    {
        return odometerGaps(fills, intervalsFrom(fills, trips));
    }

private slots:
    void aLogThatJoinsUpHasNoGap()
    {
        QVERIFY(gaps({fill(0, 1000, {}), fill(1, 1500, 502), fill(2, 2000, 490)}).empty());
        QVERIFY(gaps({}).empty());
        QVERIFY(gaps({fill(0, {}, {})}).empty());   // the first fill has nothing to join
    }

    void aFillWithoutAnyDistanceIsAGap()
    {
        const auto found = gaps({fill(0, 1000, {}), fill(1, {}, {}), fill(2, 2000, {})});
        QCOMPARE(found.size(), std::size_t(2));
        QCOMPARE(found[0].fill, std::size_t(1));
        QVERIFY(found[0].kind == GapKind::distanceUnknown);
        QVERIFY(!found[0].unexplained);
    }

    void anOdometerAheadOfTheTripMeterLeavesKilometresUnaccountedFor()
    {
        const auto found = gaps({fill(0, 1000, {}), fill(1, 1900, 480)});
        QCOMPARE(found.size(), std::size_t(1));
        QVERIFY(found[0].kind == GapKind::metersDisagree);
        QCOMPARE(found[0].unexplained->km(), 420.0);
        QVERIFY(QString::fromStdString(english(found[0].text)).contains("forgotten"));
        QCOMPARE(gaps({fill(0, 1000, {}), fill(1, 1500, 980)})[0].unexplained->km(), -480.0);
    }

    void aSwappedDashIsAGapOnlyWithoutATripMeter()
    {
        Fill swapped = fill(1, 3, 500);
        swapped.odometerReset = true;
        QVERIFY(gaps({fill(0, 1000, {}), swapped}).empty());
        swapped.sinceLast.reset();
        QVERIFY(gaps({fill(0, 1000, {}), swapped})[0].kind == GapKind::distanceUnknown);
    }

    void anOdometerThatGoesBackwardIsASuspectFillInstead()
    {
        QVERIFY(gaps({fill(0, 1000, {}), fill(1, 900, {})}).empty());
    }

    void tripsLongerThanTheWayAreSaidAndNotScaledInSilence()
    {
        const std::vector<Fill> fills{fill(0, 1000, {}), fill(2, 1500, {})};
        const Trip trip{fills[0].time + std::chrono::hours(5), Distance::fromKm(620), kTown, {}, {}};
        const auto found = gaps(fills, {trip});
        QCOMPARE(found.size(), std::size_t(1));
        QVERIFY(found[0].kind == GapKind::tripsExceed);
        QCOMPARE(found[0].unexplained->km(), 120.0);
        QCOMPARE(found[0].fill, std::size_t(1));
    }
};

UNDERMARK_TEST(OdometerGapsTest)
#include "odometer_gaps_test.moc"
