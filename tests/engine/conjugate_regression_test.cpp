// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/conjugate_regression.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <array>
#include <cmath>

using namespace undermark;

class ConjugateRegressionTest : public QObject {
    Q_OBJECT

    // Six stretches of checks.md: litres ~ N(rate * km, s2 * km).
    static ConjugateRegression afterSixStretches()
    {
        constexpr std::array kKm{12.0, 28.0, 11.2, 45.0, 18.5, 60.0};
        constexpr std::array kLitres{0.78, 1.62, 0.70, 2.34, 1.05, 3.05};
        ConjugateRegression model({0.06}, {0.05}, 2, 0.004);
        for (std::size_t i = 0; i < kKm.size(); ++i)
            model.observe(std::array{kKm[i]}, kLitres[i], kKm[i]);
        return model;
    }

    static bool near(double a, double b, double tolerance)
    {
        if (std::abs(a - b) <= tolerance)
            return true;
        qWarning("%.12g differs from %.12g", a, b);
        return false;
    }

private slots:
    // Source: checks.md, computed apart from the project from the formulas of
    // Murphy (2007).
    void givesThePosteriorOfThePublishedFormulas()
    {
        const ConjugateRegression model = afterSixStretches();
        QVERIFY(near(model.mean()[0], 0.055161787365, 1e-12));
        QVERIFY(near(model.relativeCovariance()[0], 0.005136106831, 1e-12));
        QVERIFY(near(model.shape(), 5, 0));
        QVERIFY(near(model.rate(), 0.006028618194, 1e-12));
    }

    void predictsByStudentsT()
    {
        const StudentT hundred = afterSixStretches().predict(std::array{100.0}, 100);
        QVERIFY(near(hundred.location, 5.516178737, 1e-9));
        QVERIFY(near(hundred.scale, 0.427199740, 1e-9));
        QCOMPARE(hundred.degreesOfFreedom, 10.0);
        QVERIFY(near(hundred.quantile(0.05), 4.741895816, 1e-8));
        QVERIFY(near(hundred.quantile(0.95), 6.290461657, 1e-8));
        const StudentT three = afterSixStretches().predict(std::array{300.0}, 300);
        QVERIFY(near(three.location, 16.548536210, 1e-9));
        QVERIFY(near(three.scale, 0.958677411, 1e-9));
    }

    // Source: checks.md, tables of Student's t.
    void quantilesAreThoseOfTheTables()
    {
        QVERIFY(near(StudentT{0, 1, 3}.quantile(0.95), 2.353363, 1e-6));
        QVERIFY(near(StudentT{0, 1, 3}.quantile(0.975), 3.182446, 1e-6));
        QVERIFY(near(StudentT{0, 1, 5}.quantile(0.95), 2.015048, 1e-6));
        QVERIFY(near(StudentT{0, 1, 5}.quantile(0.975), 2.570582, 1e-6));
        QVERIFY(near(StudentT{0, 1, 10}.quantile(0.95), 1.812461, 1e-6));
        QVERIFY(near(StudentT{0, 1, 10}.quantile(0.975), 2.228139, 1e-6));
    }

    void densityIsTheSlopeOfTheDistribution()
    {
        const StudentT law{3, 0.7, 6};
        for (double x : {1.0, 2.9, 3.0, 4.4}) {
            const double slope = (law.cdf(x + 1e-5) - law.cdf(x - 1e-5)) / 2e-5;
            QVERIFY(near(std::exp(law.logDensity(x)), slope, 1e-8));
        }
        QVERIFY(near(law.sd(), 0.7 * std::sqrt(6.0 / 4.0), 1e-15));
        QVERIFY(std::isinf(StudentT{0, 1, 2}.sd()));
    }

    // Every split of the evidence leads to the same posterior.
    void theOrderOfTheEvidenceDoesNotMatter()
    {
        const std::vector<double> identity{1, 0.2, 0.2, 2};
        ConjugateRegression forth({0.1, 0.2}, identity, 3, 2);
        ConjugateRegression back({0.1, 0.2}, identity, 3, 2);
        const std::array<std::array<double, 2>, 3> x{{{1, 0}, {0.5, 2}, {3, 1}}};
        const std::array y{0.4, 1.9, 1.2};
        const std::array w{1.0, 0.5, 2.0};
        for (std::size_t i = 0; i < 3; ++i) {
            forth.observe(x[i], y[i], w[i]);
            back.observe(x[2 - i], y[2 - i], w[2 - i]);
        }
        QVERIFY(near(forth.mean()[0], back.mean()[0], 1e-12));
        QVERIFY(near(forth.mean()[1], back.mean()[1], 1e-12));
        QVERIFY(near(forth.rate(), back.rate(), 1e-12));
        QVERIFY(near(forth.relativeCovariance()[1], back.relativeCovariance()[1], 1e-12));
    }

    void forgettingEverythingRestoresThePrior()
    {
        ConjugateRegression model = afterSixStretches();
        for (int i = 0; i < 100; ++i)
            model.forget(0.5);
        QVERIFY(near(model.mean()[0], 0.06, 1e-12));
        QVERIFY(near(model.relativeCovariance()[0], 0.05, 1e-12));
        QVERIFY(near(model.shape(), 2, 1e-12));
        QVERIFY(near(model.rate(), 0.004, 1e-12));
        ConjugateRegression atOnce = afterSixStretches();
        atOnce.forget(0);
        QVERIFY(near(atOnce.mean()[0], 0.06, 1e-12));
        QVERIFY(near(atOnce.rate(), 0.004, 1e-12));
    }

    void forgettingNothingChangesNothing()
    {
        ConjugateRegression model = afterSixStretches();
        model.forget(1);
        QVERIFY(near(model.mean()[0], 0.055161787365, 1e-12));
        QVERIFY(near(model.rate(), 0.006028618194, 1e-12));
    }
};

UNDERMARK_TEST(ConjugateRegressionTest)
#include "conjugate_regression_test.moc"
