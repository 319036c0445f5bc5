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

    // Bands drawn for noise half as large, and for noise twice as large, cover
    // their level in the long run.
    void bandsCoverTheirLevelWhateverTheNoise()
    {
        for (const double wrong : {0.5, 2.0}) {
            std::mt19937_64 random(7);
            std::normal_distribution<double> noise(0, wrong);
            constexpr std::array kQuantile{0.674490, 1.281552, 1.644854};   // normal tables
            BandFactors factors;
            std::array<double, 3> covered{};
            constexpr int kWarmUp = 200, kCount = 4000;
            for (int i = 0; i < kWarmUp + kCount; ++i) {
                const double y = std::abs(noise(random));
                std::array<bool, 3> hit{};
                for (std::size_t k = 0; k < 3; ++k) {
                    hit[k] = y <= kQuantile[k] * factors[k];
                    covered[k] += i >= kWarmUp && hit[k] ? 1.0 / kCount : 0;
                }
                factors.observe(hit);
            }
            for (std::size_t k = 0; k < 3; ++k) {
                const double p = kBandLevels[k];
                const double sd = std::sqrt(p * (1 - p) / kCount);
                QVERIFY2(std::abs(covered[k] - p) < 2.6 * sd,
                         qPrintable(QString::number(covered[k])));
            }
        }
    }

    void bandsStayNested()
    {
        BandFactors factors;
        for (int i = 0; i < 1000; ++i)
            factors.observe({false, true, true});
        QVERIFY(factors[1] >= 0.55 * factors[0]);
        QVERIFY(factors[2] >= 0.80 * factors[1]);
    }
};

UNDERMARK_TEST(CoverageTest)
#include "coverage_test.moc"
