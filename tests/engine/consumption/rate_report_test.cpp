// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/rate_report.h"
#include "tests/support/simulated_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class RateReportTest : public QObject {
    Q_OBJECT

    static ConsumptionModel freshModel()
    {
        ConsumptionSetup setup;
        setup.modes = {{kTown, {}}, {kMotorway, {}}};
        return ConsumptionModel(setup);
    }

    static std::vector<Interval> tanks(std::size_t count)
    {
        std::mt19937_64 random(9);
        test::CarTruth car;
        car.tripsLogged = 1;
        const auto log = test::simulate(car, count, random);
        return intervalsFrom(log.fills, log.trips);
    }

private slots:
    void listsEveryModeAndTheUsualMixWithIntervals()
    {
        const RateReport report = reportRates(tanks(40), {}, freshModel());
        QCOMPARE(report.modes.size(), std::size_t(2));
        QCOMPARE(report.modes[0].mode, std::string(kTown));
        QVERIFY(report.usual.mode.empty());
        for (const RateLine& line : {report.modes[0], report.modes[1], report.usual}) {
            QVERIFY(line.low90 < line.rate.mean && line.rate.mean < line.high90);
            QVERIFY(line.rate.sd.litresPerKm() > 0);
        }
        QVERIFY(report.modes[0].share && report.modes[1].share && !report.usual.share);
        QVERIFY(report.idle.sd.litresPerHour() > 0);
    }

    void saysWhatTheLastFillsTaught()
    {
        auto stretches = tanks(20);
        stretches.back().burnt.mean = stretches.back().burnt.mean * 1.2;
        RateReportOptions options;
        options.lessons = 3;
        const RateReport report = reportRates(stretches, {}, freshModel(), options);
        QCOMPARE(report.lessons.size(), std::size_t(3));
        const Lesson& last = report.lessons.back();
        QCOMPARE(last.lastFill, stretches.back().lastFill);
        QVERIFY(last.burnt > last.expected);
        QVERIFY(last.usualAfter > last.usualBefore);
    }

    void whatIsKeptOutTeachesNothing()
    {
        const auto stretches = tanks(20);
        std::vector<Belief> beliefs(stretches.size(), Belief::open);
        beliefs.back() = Belief::leftOut;
        const RateReport report = reportRates(stretches, beliefs, freshModel());
        QVERIFY(!report.lessons.back().learnt);
        QVERIFY(report.lessons.back().usualAfter == report.lessons.back().usualBefore);
    }

    void narrowerIntervalsNeedMoreTanks()
    {
        const auto stretches = tanks(5);
        const auto needed = [&](double width) {
            RateReportOptions options;
            options.wantedWidth = Consumption::fromLitresPer100Km(width);
            return reportRates(stretches, {}, freshModel(), options).usual.tanksToNarrow;
        };
        QCOMPARE(needed(20).value(), 0);
        const auto some = needed(1.5);
        QVERIFY(some.has_value());
        QVERIFY(needed(1.2).value_or(1000) >= *some);
        QVERIFY(!needed(0.001));   // a level that walks sets a floor
    }

    void theForecastOfTanksNeededComesTrue()
    {
        const auto stretches = tanks(60);
        RateReportOptions options;
        options.wantedWidth = Consumption::fromLitresPer100Km(1.5);
        const std::span first(stretches.data(), 5);
        const int needed = reportRates(first, {}, freshModel(), options).usual.tanksToNarrow.value();
        const std::span then(stretches.data(), std::size_t(5 + 2 * needed + 3));
        const RateLine usual = reportRates(then, {}, freshModel(), options).usual;
        QVERIFY((usual.high90 - usual.low90).litresPer100Km() <= 1.5);
    }
};

UNDERMARK_TEST(RateReportTest)
#include "rate_report_test.moc"
