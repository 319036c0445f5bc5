// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/coverage.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <random>
#include <vector>

using namespace undermark;

class CoverageTest : public QObject {
    Q_OBJECT

private slots:
    // Closed form: width, plus 2/alpha times the miss.
    void intervalScoreIsWidthPlusThePenaltyOfAMiss()
    {
        QCOMPARE(intervalScore(90, 110, 100, 0.8), 20.0);
        QVERIFY(std::abs(intervalScore(90, 110, 87, 0.8) - (20 + 3 * 2 / 0.2)) < 1e-9);
        QVERIFY(std::abs(intervalScore(90, 110, 111, 0.5) - (20 + 1 * 2 / 0.5)) < 1e-9);
    }

    // Promises made for noise half as large, and for noise twice as large, hold
    // their level in the long run.
    void promisesHoldTheirLevelWhateverTheNoise()
    {
        for (const double wrong : {0.6, 2.0}) {
            std::mt19937_64 random(7);
            std::normal_distribution<double> noise(0, wrong);
            // Normal tables.
            constexpr std::array kQuantile{-2.326348, -1.644854, -1.281552, -0.674490,
                                           0.674490,  1.281552,  1.644854,  2.326348};
            PromiseFactors factors;
            std::array<double, 8> below{};
            constexpr int kWarmUp = 500, kCount = 8000;
            for (int i = 0; i < kWarmUp + kCount; ++i) {
                const double y = noise(random);
                std::array<bool, 8> hit{};
                for (std::size_t k = 0; k < hit.size(); ++k) {
                    hit[k] = y <= kQuantile[k] * factors[k];
                    below[k] += i >= kWarmUp && hit[k] ? 1.0 / kCount : 0;
                }
                factors.observe(hit);
            }
            for (std::size_t k = 0; k < below.size(); ++k) {
                const double p = kPromises[k];
                QVERIFY2(std::abs(below[k] - p) < 2.6 * std::sqrt(p * (1 - p) / kCount),
                         qPrintable(QString::number(below[k])));
            }
        }
    }

    void promisesStayInOrder()
    {
        PromiseFactors factors;
        for (int i = 0; i < 1000; ++i)   // the inner ones always missed, the outer never
            factors.observe({false, false, false, true, false, true, true, true});
        for (std::size_t k = 5; k < 8; ++k) {
            QVERIFY(factors[k] >= 0.76 * factors[k - 1]);
            QVERIFY(factors[7 - k] >= 0.76 * factors[8 - k]);
        }
    }

    void betweenPromisesAValueLiesOnTheStraightLine()
    {
        const std::array<double, 8> given{1, 2, 3, 4, 5, 6, 7, 8};
        QCOMPARE(valueAt(given, -5), 1.0);
        QCOMPARE(valueAt(given, 5), 8.0);
        QVERIFY(std::abs(valueAt(given, 0) - 4.5) < 1e-12);
        QVERIFY(std::abs(valueAt(given, 1.6449) - 7) < 1e-12);
    }
};

UNDERMARK_TEST(CoverageTest)
#include "coverage_test.moc"
