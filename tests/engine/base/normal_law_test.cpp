// SPDX-License-Identifier: GPL-3.0-or-later
//
// Abramowitz and Stegun, Handbook of Mathematical Functions (1964), chapter 26: tables
// 26.1 (P and Z, 15 decimals), 26.2 (-log10 Q far out) and 26.5 (quantiles); all
// recomputed with 40 digits apart from the project.
#include "engine/base/normal_law.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

bool near(double a, double b, double relative)
{
    return std::abs(a - b) <= relative * std::abs(b);
}

} // namespace

class NormalLawTest : public QObject {
    Q_OBJECT
private slots:
    void densityAndProbabilityAreThoseOfTheTables()
    {
        QVERIFY(near(normalDensity(1.0), 0.241970724519143, 1e-14));
        QVERIFY(near(normalDensity(2.0), 0.053990966513188, 1e-13));
        QVERIFY(near(normalCdf(1.0), 0.841344746068543, 1e-15));
        QVERIFY(near(normalCdf(2.0), 0.977249868051821, 1e-15));
        QVERIFY(near(normalCdf(3.0), 0.998650101968370, 1e-15));
        QCOMPARE(normalCdf(0.0), 0.5);
    }

    void farTailsKeepTheirDigits()
    {
        const auto digits = [](double z) { return -std::log10(normalTail(z)); };
        QVERIFY(std::abs(digits(5.0) - 6.54265) < 5e-6);
        QVERIFY(std::abs(digits(10.0) - 23.11805) < 5e-6);
        QVERIFY(std::abs(digits(20.0) - 88.56010) < 5e-6);
        QVERIFY(std::abs(digits(30.0) - 197.30921) < 5e-6);
        QCOMPARE(normalCdf(-20.0), normalTail(20.0));
    }

    void theQuantileUndoesTheProbability()
    {
        QVERIFY(near(normalQuantile(0.99), 2.32635, 2e-6));
        QVERIFY(near(normalQuantile(0.999), 3.09023, 2e-6));
        QVERIFY(near(normalQuantile(0.99), kSureQuantile, 1e-15));
        for (const double z : {-37.0, -8.0, -1.0, -0.01, 0.0, 0.3, 2.0, 5.0})
            QVERIFY(std::abs(normalQuantile(normalCdf(z)) - z) < 1e-9);
    }

    void theHazardIsTheMeanBeyondAndHasNoStepWhereTheSeriesBegins()
    {
        QVERIFY(near(normalHazard(0.0), 0.797884560802865, 1e-14));   // sqrt(2 / pi)
        QVERIFY(near(normalHazard(2.0), 2.373215532822841, 1e-13));
        QVERIFY(near(normalHazard(24.999), 25.038874596961829, 1e-11));
        QVERIFY(near(normalHazard(25.0), 25.039873012057563, 1e-9));
        QVERIFY(near(normalHazard(100.0), 100.009998000999261, 1e-12));
    }
};

UNDERMARK_TEST(NormalLawTest)
#include "normal_law_test.moc"
