// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/trend.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <numbers>
#include <random>

using namespace undermark;

class TrendTest : public QObject {
    Q_OBJECT

    static Instant day(double n) { return Instant(std::chrono::seconds(std::llround(n * 86400))); }

    static Circumstances at(double when, std::optional<double> pace = std::nullopt)
    {
        Circumstances c;
        c.begin = day(when);
        c.litresPerDay = pace;
        return c;
    }

private slots:
    void learnsTheSeason()
    {
        Trend trend;
        std::mt19937_64 random(2);
        std::normal_distribution<double> noise(0, 0.04);
        double when = 18000;
        for (int i = 0; i < 300; ++i, when += 9)
            trend.observe(at(when), 0.08 * std::cos(2 * std::numbers::pi * when / 365.2425) + noise(random),
                          0.0016);
        const double winter = std::round(when / 365.2425) * 365.2425;
        const double swing = trend.predict(at(winter), 0.0016).location
            - trend.predict(at(winter + 182), 0.0016).location;
        QVERIFY2(swing > 0.08 && swing < 0.18, qPrintable(QString::number(swing)));
    }

    void aFastPaceTellsOfLongRoads()
    {
        Trend trend;
        std::mt19937_64 random(3);
        std::normal_distribution<double> noise(0, 0.04);
        for (int i = 0; i < 200; ++i) {
            const double pace = std::exp(1 + noise(random) * 20);
            trend.observe(at(18000 + 7 * i, pace), -0.06 * std::log(pace) + noise(random), 0.0016);
        }
        const auto law = [&](double pace) { return trend.predict(at(19500, pace), 0.0016); };
        QVERIFY(law(1).location > law(8).location + 0.06);
        // Not knowing it costs certainty.
        QVERIFY(trend.predict(at(19500), 0.0016).scale > law(std::exp(1)).scale);
        // Beyond what was seen it says no more.
        QCOMPARE(law(1e-9).location, law(1e-6).location);
    }

    // What a long holiday drive saved is not expected of the errands after it.
    void whatThePaceExplainedIsNotCarriedOn()
    {
        Trend trend;
        std::mt19937_64 random(5);
        std::normal_distribution<double> noise(0, 0.02);
        for (int i = 0; i < 300; ++i) {
            const double pace = (i / 3) % 2 ? 20 : 3;   // three fast ones, three slow ones
            trend.observe(at(18000 + 7 * i, pace), -0.06 * std::log(pace / 7.7) + noise(random), 0.0004);
        }
        for (int i = 0; i < 3; ++i)
            trend.observe(at(20100 + i, 20), -0.06 * std::log(20 / 7.7), 0.0004);
        const double slow = trend.predict(at(20110, 3), 0.0004).location;
        QVERIFY2(std::abs(slow - -0.06 * std::log(3 / 7.7)) < 0.01, qPrintable(QString::number(slow)));
    }

    void followsTheLastStretchesButNotOneOddOne()
    {
        Trend trend;
        for (int i = 0; i < 30; ++i)
            trend.observe(at(18000 + 7 * i), i % 2 ? 0.05 : -0.05, 0.0025);
        const double before = trend.predict(at(18300), 0.0025).location;
        trend.observe(at(18300), 1.5, 0.0025);
        QVERIFY(trend.predict(at(18300), 0.0025).location - before < 0.06);
        for (int i = 0; i < 15; ++i)
            trend.observe(at(18300 + 7 * i), 0.15, 0.0025);
        QVERIFY(trend.predict(at(18400), 0.0025).location > 0.08);
    }

    void learnsHowNoisyTheCarIs()
    {
        Trend trend;
        std::mt19937_64 random(4);
        std::normal_distribution<double> noise(0, 0.10);
        for (int i = 0; i < 300; ++i)
            trend.observe(at(18000 + 7 * i), noise(random), 0.0025);   // told 0.05
        QVERIFY(trend.noiseFactor() > 2.5 && trend.noiseFactor() < 5);
    }

    void paceCountsTheDayItself()
    {
        QCOMPARE(litresPerDay(Volume::fromLitres(40), day(10), day(10)), 40.0);
        QCOMPARE(litresPerDay(Volume::fromLitres(40), day(10), day(19)), 4.0);
        QCOMPARE(litresPerDay(Volume::fromLitres(40), day(10), day(4)), 40.0);   // dates went back
    }
};

UNDERMARK_TEST(TrendTest)
#include "trend_test.moc"
