// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/slosh.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class SloshTest : public QObject {
    Q_OBJECT
private slots:
    void blockMeansScatterAsMeasuredInOneCar()
    {
        // sd 5 % of scale, e-fold 4 s, means over 10 s scatter by 3.6 %: calculated from the
        // open drives that real_drives_test.cpp reads.
        const double sd = 5.0 * std::sqrt(blockMeanVariance(Seconds(10), Seconds(4)));
        QVERIFY(std::abs(sd - 3.6) < 0.05);
    }

    void theVarianceOfABlockMeanIsTheMeanOfTheAutocorrelation()
    {
        // The double integral of exp(-|s-t|/4) over a 30 s block, by midpoint sums.
        double sum = 0.0;
        constexpr int kSteps = 1500;
        for (int lag = 0; lag < kSteps; ++lag)
            sum += (lag == 0 ? 1.0 : 2.0) * (kSteps - lag) * std::exp(-lag * 30.0 / kSteps / 4.0);
        const double mean = sum / kSteps / kSteps;
        QVERIFY(std::abs(blockMeanVariance(Seconds(30), Seconds(4)) - mean) < 1e-4);
    }

    void anEmptyBlockIsOneReadingAndALongOneTwoTauOverT()
    {
        QCOMPARE(blockMeanVariance(Seconds(0), Seconds(4)), 1.0);
        QVERIFY(std::abs(blockMeanVariance(Seconds(0.01), Seconds(4)) - 1.0) < 1e-3);
        QVERIFY(std::abs(blockMeanVariance(Seconds(40000), Seconds(4)) - 2e-4) < 1e-7);
    }
};

UNDERMARK_TEST(SloshTest)
#include "slosh_test.moc"
