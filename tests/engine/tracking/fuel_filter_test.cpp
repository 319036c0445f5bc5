// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/fuel_filter.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <array>
#include <cmath>
#include <random>

using namespace undermark;

class FuelFilterTest : public QObject {
    Q_OBJECT
    static constexpr std::array<double, 5> kUsed{.80, .90, .75, .85, .60};
    static constexpr std::array<double, 5> kRead{30.1, 27.6, 28.9, 26.2, 26.7};

    static FuelFilter start(double scaleSd)
    {
        return FuelFilter({Volume::fromLitres(30.0), Volume::fromLitres(2.0)},
                          {Fraction::fromRatio(1.0), Fraction::fromRatio(scaleSd)});
    }

private slots:
    // The numbers of this and the next two were calculated apart from the project from the
    // Kalman filter's equations.
    void withAKnownScaleItIsTheScalarFilter()
    {
        constexpr std::array<double, 5> kLevel{29.776050588, 28.377814986, 27.985320998,
                                               26.929873282, 26.396611611};
        FuelFilter filter = start(0.0);
        for (std::size_t i = 0; i < kUsed.size(); ++i) {
            const double stepVariance = std::pow(.03 * kUsed[i], 2) + .02 * .02;
            filter.predict(kUsed[i], {.levelL2 = stepVariance});
            filter.correct(kRead[i], 2.25);
            QVERIFY(std::abs(filter.levelL() - kLevel[i]) < 1e-9);
        }
        QVERIFY(std::abs(filter.levelVarianceL2() - .405702247) < 1e-9);
    }

    void withoutSlowErrorItIsTheTwoStateFilter()
    {
        FuelFilter filter = start(0.05);
        for (std::size_t i = 0; i < kUsed.size(); ++i) {
            filter.predict(kUsed[i], {.levelL2 = .02 * .02, .scale2 = 1e-6});
            filter.correct(kRead[i], 2.25);
        }
        QVERIFY(std::abs(filter.levelL() - 26.396499898) < 1e-9);
        QVERIFY(std::abs(filter.scale() - 1.000084220) < 1e-9);
        QVERIFY(std::abs(filter.levelVarianceL2() - .412331084) < 1e-9);
        QVERIFY(std::abs(filter.levelScaleCovariance() - -.004248504) < 1e-9);
        QVERIFY(std::abs(filter.scaleVariance() - .002479966) < 1e-9);
    }

    void settlesToTheSteadyStateOfTheRiccatiEquation()
    {
        FuelFilter filter = start(0.0);
        for (int i = 0; i < 5000; ++i) {
            filter.predict(0.0, {.levelL2 = 9.76e-4});
            filter.correct(30.0, 2.25);
        }
        QVERIFY(std::abs(filter.levelVarianceL2() - .046376039) < 1e-9);
        QVERIFY(std::abs(filter.levelVarianceL2() / 2.25 - .020611573) < 1e-9);
    }

    void aSlowErrorIsNotAveragedAway()
    {
        FuelFilter filter;
        filter.restartLevel(30.0, 0.5, 1.0);
        QCOMPARE(filter.levelVarianceL2(), 1.5);
        QCOMPARE(filter.readingVarianceL2(), 0.5);
        for (int i = 0; i < 1000; ++i)
            filter.correct(30.0, 0.5);   // no time passes: the error stays what it is
        QVERIFY(std::abs(filter.levelVarianceL2() - 1.0) < 1e-3);
        QVERIFY(filter.readingVarianceL2() < 1e-3);
    }

    void innovationsOfATrueModelPassTheChiSquareGates()
    {
        // Chi-squared, one degree of freedom: 95 % 3.841459, 99 % 6.634897, 99.9 %
        // 10.827566; the mean of 100 lies within .742 to 1.296 in 95 %
        // (tables of chi-squared).
        std::mt19937_64 random(11);
        std::normal_distribution<double> normal;
        FuelFilter filter({Volume::fromLitres(30.0), Volume::fromLitres(2.0)},
                          {Fraction::fromRatio(1.0), Fraction::fromRatio(0.05)});
        double level = 30.0 + 2.0 * normal(random), scale = 1.0 + 0.05 * normal(random);
        constexpr int kSteps = 200'000;
        int above95 = 0, above99 = 0, above999 = 0, inBand = 0;
        double sum = 0.0;
        for (int i = 1; i <= kSteps; ++i) {
            const double used = 0.8;
            level += -scale * used + 0.02 * normal(random);
            scale += 1e-3 * normal(random);
            filter.predict(used, {.levelL2 = 0.02 * 0.02, .scale2 = 1e-6});
            const double nis = filter.correct(level + 1.5 * normal(random), 2.25).nis();
            above95 += nis > 3.841459;
            above99 += nis > 6.634897;
            above999 += nis > 10.827566;
            sum += nis;
            if (i % 100 == 0) {
                inBand += sum / 100 > .742 && sum / 100 < 1.296;
                sum = 0.0;
            }
        }
        // Four standard deviations of each count.
        const auto near = [](int count, int of, double share) {
            return std::abs(count - share * of) < 4.0 * std::sqrt(of * share * (1.0 - share));
        };
        QVERIFY(near(above95, kSteps, .05));
        QVERIFY(near(above99, kSteps, .01));
        QVERIFY(near(above999, kSteps, .001));
        QVERIFY(near(inBand, kSteps / 100, .95));
    }

    void aBoundIsApproachedAndNeverPassed()
    {
        FuelFilter filter = start(0.05);
        for (int i = 0; i < 1000; ++i) {
            filter.pull(32.0, 1.0);
            QVERIFY(filter.levelL() <= 32.0);
        }
        QVERIFY(filter.levelL() > 31.999);
        QCOMPARE(filter.levelVarianceL2(), 4.0);   // the same thing told often is told once
        QCOMPARE(filter.scale(), 1.0);
    }
};

UNDERMARK_TEST(FuelFilterTest)
#include "fuel_filter_test.moc"
