// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/noise_split.h"
#include "tests/support/simulated_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class NoiseSplitTest : public QObject {
    Q_OBJECT

    // What is learnt of stretches of known noise, half of them a fifth as long.
    static NoiseSplit learnt(double click, double road, double s, bool shortOnes)
    {
        std::mt19937_64 random(7);
        NoiseSplit split;
        for (int i = 0; i < 400; ++i) {
            const double size = shortOnes && i % 2 == 0 ? 0.2 : 1;
            const double variance =
                2 * std::pow(click / size, 2) + s * s * (1 - road + road / size);
            split.observe(std::sqrt(variance) * test::normal(random), 0, s * s, size, 2);
        }
        return split;
    }

private slots:
    void shortStretchesTellClickAndRoadApart()
    {
        const double s = 0.06;
        const auto share = [s](const NoiseSplit& split) { return split.roadVariance(s * s) / (s * s); };
        const NoiseSplit allRoad = learnt(0.006, 1.0, s, true), noRoad = learnt(0.006, 0.05, s, true);
        QVERIFY(share(allRoad) > 0.6);
        QVERIFY(share(noRoad) < 0.35);
        QVERIFY(learnt(0.027, 0.05, s, true).clickVariance() > 2 * noRoad.clickVariance());
    }

    void alikeTanksLeaveThePrior()
    {
        const double s2 = 0.06 * 0.06;
        const NoiseSplit prior, tanks = learnt(0.018, 0.5, 0.06, false);
        QVERIFY(std::abs(tanks.roadVariance(s2) / prior.roadVariance(s2) - 1) < 0.15);
    }

    // On a usual stretch the variance is s^2, whatever the split; shorter ones add road only.
    void aUsualStretchHasTheScaleItself()
    {
        const NoiseSplit split = learnt(0.018, 0.2, 0.06, true);
        const double s2 = 0.05 * 0.05;
        QVERIFY(std::abs(split.variance(s2, 1) / s2 - 1) < 1e-12);
        QVERIFY(std::abs(split.variance(s2, 0.5) - split.variance(s2, 1) - split.roadVariance(s2)) < 1e-12);
    }

    void theRoadNeverFallsSilent()
    {
        QVERIFY(NoiseSplit().roadVariance(1e-8) > 3e-4);
    }
};

UNDERMARK_TEST(NoiseSplitTest)
#include "noise_split_test.moc"
