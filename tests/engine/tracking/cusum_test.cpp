// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/cusum.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace undermark;

class CusumTest : public QObject {
    Q_OBJECT
private slots:
    // Two-sided, allowance .5, threshold 4: run lengths 168, 26.6, 8.38, 3.34
    // at shifts 0, .5, 1, 2 (Lucas & Crosier 1982, Technometrics 24, 199).
    void runsAsLongAsThePublishedTable_data()
    {
        QTest::addColumn<double>("shift");
        QTest::addColumn<double>("published");
        QTest::newRow("0") << 0.0 << 167.684;
        QTest::newRow("0.5") << 0.5 << 26.630;
        QTest::newRow("1") << 1.0 << 8.383;
        QTest::newRow("2") << 2.0 << 3.343;
    }

    void runsAsLongAsThePublishedTable()
    {
        QFETCH(double, shift);
        QFETCH(double, published);
        std::mt19937_64 random(20260401);
        std::normal_distribution<double> value(shift, 1.0);
        constexpr int kRuns = 20000;
        double sum = 0.0, squares = 0.0;
        for (int run = 0; run < kRuns; ++run) {
            Cusum cusum(0.5, 4.0);
            int length = 1;
            while (cusum.add(value(random)) == 0)
                ++length;
            sum += length;
            squares += double(length) * length;
        }
        const double mean = sum / kRuns;
        const double error = std::sqrt((squares / kRuns - mean * mean) / kRuns);
        QVERIFY2(std::abs(mean - published) < 4.0 * error + 0.001,
                 qPrintable(QString("%1 against %2").arg(mean).arg(published)));
        QVERIFY(std::abs(cusumRunLength(0.5, 4.0, shift) / published - 1.0) < 0.04);
    }

    void theThresholdGivesTheWantedRunLength()
    {
        for (const double wanted : {168.0, 1000.0, 30000.0})
            QVERIFY(std::abs(cusumRunLength(0.5, cusumThreshold(0.5, wanted), 0.0) / wanted - 1.0)
                    < 1e-9);
    }

    void itTellsTheDirection()
    {
        Cusum up(0.5, 4.0), down(0.5, 4.0);
        int alarmUp = 0, alarmDown = 0;
        for (int i = 0; i < 10; ++i) {
            alarmUp += up.add(1.0);
            alarmDown += down.add(-1.0);
        }
        QCOMPARE(alarmUp, 2);     // 10 values of 0.5 over the allowance: past 4 at the last two
        QCOMPARE(alarmDown, -2);
    }
};

UNDERMARK_TEST(CusumTest)
#include "cusum_test.moc"
